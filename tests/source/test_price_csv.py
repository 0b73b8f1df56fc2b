"""A store's price list becomes prices of our own articles, or a list of what is wrong with it."""

from __future__ import annotations

import pytest

from scantling.fault import Faulty
from scantling.measure import Money
from scantling.shop import read_shop
from scantling.source import (
    load_shop,
    price_text,
    read_price_csv,
    read_price_file,
    render_concise,
    unknown_told,
    with_prices,
    write_price_file,
)
from tests.support.workshop import shop_data

HOW = {"item": "Article", "price": "Price", "articles": {"stud 8": "2x4, 8 ft", "glue": "wood glue"}}
SHOP = read_shop(
    shop_data(**{"price lists": {"yard": HOW, "mill": {**HOW, "separator": ";", "decimal": ","}}})
)


def read(text: str | bytes, name: str = "yard"):
    """Return what a price list says."""
    data = text if isinstance(text, bytes) else text.encode()
    return read_price_csv("yard.csv", data, SHOP.price_lists[name], "$")


def test_prices_are_found_by_their_columns():
    """Columns may stand in any order, and others between them."""
    listed = read("Price,Unit,Article\n4.99,piece,stud 8\n6.10,bottle,glue\n")

    assert listed.prices == {"2x4 | 8 ft": Money(499), "wood glue": Money(610)}
    assert listed.diagnostics == ()


def test_what_is_on_one_side_only_is_told():
    """Articles that the shop file does not know, and those that the list has not."""
    listed = read("Article,Price\nstud 8,4.99\nlintel,80.00\n")

    assert unknown_told(listed, "yard.csv") == [
        "yard.csv: not in the shop file: 'lintel'",
        "yard.csv: not on the list: 'glue'",
    ]


@pytest.mark.parametrize(
    ("name", "row", "cents"),
    [
        ("yard", "stud 8,$4.99", 499),
        ("yard", 'stud 8,"1,204.50"', 120450),
        ("yard", "stud 8,5", 500),
        ("yard", "stud 8,5.1", 510),
        ("yard", "stud 8,4.99 USD", 499),
        ("mill", "stud 8;4,99", 499),
        ("mill", "stud 8;1.204,50", 120450),
        ("mill", "stud 8;1 204,50", 120450),
    ],
)
def test_prices_as_stores_write_them(name, row, cents):
    """Signs, thousands and either decimal sign are read without a float."""
    head = "Article;Price" if name == "mill" else "Article,Price"

    assert read(f"{head}\n{row}\n", name).prices["2x4 | 8 ft"] == Money(cents)


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("Article,Cost\nstud 8,4.99\n", "yard.csv:1:1: price-list there is no column 'Price'"),
        ("Article;Price\nstud 8;4.99\n", "yard.csv:1:1: price-list there is no column 'Article'"),
        ("Article,Price\nstud 8,-4.99\n", "yard.csv:2:8: price-list a price below nothing"),
        ("Article,Price\nstud 8,€4.99\n", "yard.csv:2:8: price-list this price is in €"),
        ("Article,Price\nstud 8,4.99 EUR\n", "yard.csv:2:8: price-list this price is in EUR"),
        ("Article,Price\n", "yard.csv:1:1: price-list no article of this list is one"),
        ("Article,Price\nlintel,80.00\n", "yard.csv:1:1: price-list no article of this list is one"),
        ('Article,Price\nstud 8,"4,99"\n', "yard.csv:2:9: price-list '4,99' is no price"),
        ("Article,Price\nstud 8,cheap\n", "yard.csv:2:8: price-list 'cheap' is no price"),
        ("Article,Price\nstud 8\n", "yard.csv:2:1: price-list this line has too few columns"),
        (
            "Article,Price\nstud 8,4.99\nglue,6\nstud 8,5.20\n",
            "yard.csv:4:8: price-list 'stud 8' has another price in line 2",
        ),
    ],
)
def test_what_is_wrong_is_told_with_line_and_column(text, told):
    """Each fault of a list points at its cell."""
    listed = read(text)

    assert any(line.startswith(told) for line in render_concise(listed.diagnostics).splitlines())


def test_all_faults_of_a_list_are_told_at_once():
    """Two bad prices are two faults."""
    assert len(read("Article,Price\nstud 8,-1\nglue,much\n").diagnostics) == 2


def test_a_list_in_another_encoding_is_told_where():
    """A letter of cp1252 in a list said to be UTF-8 is found, with the mend."""
    listed = read("Article,Price\nÉtai,4.99\n".encode("cp1252"))

    assert "2:1" in render_concise(listed.diagnostics)
    assert "cp1252" in listed.diagnostics[0].help


def test_an_article_that_the_shop_does_not_sell_is_a_fault_of_the_shop_file():
    """The mapping itself is checked when the shop file is read."""
    with pytest.raises(Faulty) as raised:
        read_shop(shop_data(**{"price lists": {"yard": {**HOW, "articles": {"stud": "2x4, 9 ft"}}}}))

    fault = raised.value.faults[0]
    assert (fault.code, fault.place.path[-1]) == ("unknown-name", "stud")
    assert "2x4, 8 ft" in fault.help


TEXT = """# our yard
kerf: 1/8 in   # a thin blade
prices of: 2026-09-01
lumber:
  2x4: {lengths: {8 ft: 4.28, 10 ft: {price: 5.98, since: 2026-01-05}}}  # studs
hardware:
  wood glue:
    price: "6.00"
"""


def test_only_the_letters_of_the_prices_change(tmp_path):
    """Comments, spacing and the rest of the shop file stay as they are."""
    path = tmp_path / "shop.yml"
    path.write_text(TEXT)
    source = load_shop(path)

    text = with_prices(
        source, {"2x4 | 8 ft": Money(519), "2x4 | 10 ft": Money(700), "wood glue": Money(5)}, "2026-10-01"
    )

    expected = TEXT.replace("4.28", "5.19").replace("5.98", "7.00").replace('"6.00"', "0.05")
    assert text == expected.replace("2026-09-01", "2026-10-01")
    path.write_text(text)
    assert load_shop(path).shop is not None


def test_a_record_is_one_line_a_fact(tmp_path):
    """What is written is read again, and a second writing changes nothing."""
    from tests.report.test_prices import FIRST

    assert write_price_file(tmp_path, FIRST)
    assert read_price_file(tmp_path) == FIRST
    assert not write_price_file(tmp_path, FIRST)
    assert '\n  "2x4 | 8 ft": [428, "2026-09-01"],\n' in price_text(FIRST)


@pytest.mark.parametrize("text", ["", "{", "[]", '{"day": 1}', "\udcff"])
def test_a_damaged_record_is_no_record(tmp_path, text):
    """A record that cannot be read is as none."""
    (tmp_path / "prices.json").write_text(text, errors="surrogateescape")

    assert read_price_file(tmp_path) is None
