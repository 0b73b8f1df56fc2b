"""Command line, built page and browser give the same words."""

from __future__ import annotations

import html
import json
import re
from urllib.parse import parse_qsl

import pytest

from scantling.calculators import SLUGS, Answer, calculator, calculators, run, run_example
from scantling.checks import CHECKS
from scantling.cli import main
from scantling.measure import Length, Money
from scantling.pages.calculator_fragment import answer_html, calculator_fragment
from scantling.pages.calculator_pages import calculator_pages
from scantling.pages.choices import Choices
from scantling.pages.linked_plan import Ladder, LinkedPlan
from scantling.pages.live.session import Session
from tests.support.calculating import INCHES

EVERY = pytest.mark.parametrize("slug", SLUGS)


def words(fragment):
    """Return what a person reads of a piece of HTML."""
    return html.unescape(re.sub(r"<[^>]*>", " ", fragment)).replace("\N{NO-BREAK SPACE}", " ")


@EVERY
def test_the_command_line_prints_the_answers_text(slug, capsys):
    """`scantling calc` prints what the answer says, word for word."""
    inputs = [f"{name}={text}" for name, text in calculator(slug).example.inputs.items()]

    assert main(["calc", slug, *inputs]) == 0
    assert capsys.readouterr().out == run_example(slug).to_text()

    assert main(["calc", slug, *inputs, "--json"]) == 0
    assert json.loads(capsys.readouterr().out) == run_example(slug).to_data()


@EVERY
def test_page_and_browser_show_the_same_words_as_the_terminal(slug):
    """Figures, cells and sum stand in the page; the browser's piece differs in addresses only."""
    answer = run_example(slug)
    page = answer_html(answer, lambda drawing: drawing.file)
    question = {"ask": "calculate", "calculator": slug, "chosen": dict(calculator(slug).example.inputs)}
    live = json.loads(Session().answer(json.dumps(question)))

    seen = words(page)
    for shown in answer.shown():
        assert shown.name in seen
        assert shown.shop in seen
        assert shown.aside in seen
    assert all(cell in seen for table in answer.result.tables for row in answer.cells(table) for cell in row)
    assert all(line in seen for line in answer.working())
    assert live["ok"]
    strip = re.compile(r' src="[^"]*"')
    assert strip.sub("", live["fragments"]["answer"]) == strip.sub("", page)


def test_the_fragment_by_name_is_the_same():
    """Build and browser may ask by name and texts alone."""
    by_name = calculator_fragment(
        "strips", {}, display=INCHES, currency="$", address=lambda drawing: drawing.file
    )

    assert "Strips from one board" in words(by_name)


def test_what_is_wrong_is_told_at_its_field_in_the_browser():
    """A fault comes back with the name of its field, in sentences."""
    question = {"ask": "calculate", "calculator": "strips", "chosen": {"kerf": "2 in", "board": "plank"}}

    answer = json.loads(Session().answer(json.dumps(question)))

    assert not answer["ok"]
    assert {fault["control"] for fault in answer["faults"]} == {"input kerf", "input board"}
    assert any(fault["help"] == "The nearest that works is 1/2 in." for fault in answer["faults"])


@pytest.mark.parametrize(
    "chosen", [None, [], "x", {"opening": 3}, {"opening": "9" * 5000}, {"units": "furlongs"}]
)
def test_a_strange_question_is_answered(chosen):
    """Whatever a page sends, an answer comes back and nothing is broken."""
    question = {"ask": "calculate", "calculator": "equal-spaces", "chosen": chosen}

    answer = json.loads(Session().answer(json.dumps(question)))

    assert "broken" not in [fault["code"] for fault in answer.get("faults", [])]


def test_an_unknown_calculator_is_refused():
    """A name that is none of ours is a fault, not a crash."""
    answer = json.loads(Session().answer(json.dumps({"ask": "calculate", "calculator": "<b>"})))

    assert [fault["code"] for fault in answer["faults"]] == ["unknown-calculator"]


def test_what_a_reader_types_is_escaped():
    """A tag that is typed where words are shown again comes out as letters."""
    answer = run("fractions", {"sum": "(1 in)"}).calculator
    typed = Answer(answer, (("sum", "<img src=x>"),), *_good("fractions"))

    page = answer_html(typed, lambda drawing: drawing.file)

    assert "<img src=x>" not in page
    assert "&lt;img src=x&gt;" in page


def _good(slug):
    """Return what a good answer was reckoned from."""
    good = run(slug, {})
    return good.given, good.result


WIDTH = Ladder("width", Length(48), ((Length(36), Money(6120)), (Length(48), Money(107490))))
PLANS = (
    LinkedPlan("bench", "A *bench*", ("bench", "slats", "2x4"), (WIDTH,)),
    LinkedPlan("case", "Case", ("drawers",)),
)


@pytest.fixture(scope="module")
def finished():
    """Return the pages without a shop and with two plans."""
    return calculator_pages(None, PLANS, Choices(engine="abc"))


def test_there_is_a_page_for_each_and_a_list_by_question(finished):
    """Every calculator has a page and its question stands in the list, linked."""
    index, *pages = finished.pages

    assert [page.path for page in pages] == [f"calculators/{slug}/index.md" for slug in SLUGS]
    for one in calculators():
        assert f"[{one.question}]({one.slug}/index.md)" in index.markdown
    assert index.in_nav


def test_drawings_lie_beside_their_page(finished):
    """Each picture that a page shows is a file beside it."""
    files = {file.path for file in finished.files}

    for page in finished.pages[1:]:
        folder = page.path.rpartition("/")[0]
        assert {f"{folder}/{name}" for name in re.findall(r'src="([^"]+)"', page.markdown)} <= files


def test_plans_that_ask_the_question_are_linked(finished):
    """A plan with slats is linked from what spaces slats, one with drawers from the drawer."""
    pages = {page.path.split("/")[1]: page.markdown for page in finished.pages[1:]}

    assert "../../plans/bench/index.md" in pages["slats"]
    assert "../../plans/case/index.md" in pages["drawer"]
    assert "../../plans/bench/index.md" not in pages["drawer"]


def test_costs_of_a_plan_can_be_put_into_the_fields(finished):
    """The page about another size lists what plans cost, with links that the calculator understands."""
    (page,) = [page for page in finished.pages if page.path == "calculators/scale-plan/index.md"]
    (link,) = re.findall(r'href="(\?[^"]+)"', page.markdown)
    typed = dict(parse_qsl(html.unescape(link)[1:]))

    assert "36 in for $61.20, 48 in for $1,074.90" in html.unescape(page.markdown)
    assert run("scale-plan", {**typed, "wanted": "42 in"}).result.figure("cost").value == Money(56805)


def test_no_line_of_a_page_ends_its_block_early(finished):
    """HTML blocks of the pages hold no empty line, which would end them for some hosts."""
    for page in finished.pages:
        for block in page.markdown.split("\n\n"):
            assert block.count("<div") == block.count("</div>"), page.path
            assert block.count("<section") == block.count("</section>"), page.path


@EVERY
def test_the_checks_that_it_names_are_there(slug):
    """A check named on a calculator's page is one that plans are checked with."""
    assert set(calculator(slug).checks) <= {check.name for check in CHECKS}


def test_a_picture_tells_its_board_feet_as_the_answer_does():
    """What is read out for the picture is a number of the answer, not a bare fraction."""
    assert "are 46.88 board feet" in run_example("board-feet").scene().told
