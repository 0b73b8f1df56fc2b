"""The reference says what the code does."""

from __future__ import annotations

import json

import fastjsonschema
import pytest
import yaml

from scantling.formula import FUNCTIONS
from tests.docs.examples import ROOT
from tools import reference


@pytest.mark.parametrize(
    ("path", "text"), list(reference.made_files()), ids=lambda value: getattr(value, "name", "")
)
def test_made_parts_are_current(path, text):
    """What is committed is what `make docs` writes."""
    assert path.read_text("utf-8") == text, "run make docs"


def test_every_form_is_in_the_reference():
    """Each form of plan and shop file has its table on a page."""
    pages = "".join(path.read_text("utf-8") for path in (ROOT / "docs" / "reference").glob("*.md"))
    for name in reference.FORMS:
        assert f"<!-- made: form {name} -->" in pages
    assert all(f"`{function.pattern}`" in pages for function in FUNCTIONS.values())


def test_a_page_cannot_ask_for_what_nothing_makes():
    """A misspelt mark is an error, not an empty table."""
    with pytest.raises(ValueError, match="form prat"):
        reference.made("form prat")


class Editor(yaml.SafeLoader):
    """Reads a file as an editor does that checks it by the schema: numbers and yes are no text, days are."""


Editor.yaml_implicit_resolvers = {
    letter: [one for one in resolvers if not one[0].endswith(":timestamp")]
    for letter, resolvers in yaml.SafeLoader.yaml_implicit_resolvers.items()
}


def front_matters() -> list[tuple[str, str]]:
    """Return which schema each file of the demo catalog follows, and what is written in it."""
    plans = sorted((ROOT / "plans").glob("*/plan.md"))
    shop = (ROOT / "plans" / "shop.yml").read_text("utf-8")
    return [("shop", shop), *(("plan", path.read_text("utf-8").split("---\n")[1]) for path in plans)]


@pytest.mark.parametrize(("name", "text"), front_matters(), ids=lambda value: value[:30].splitlines()[0])
def test_the_demo_follows_the_schemas(name, text):
    """A general validator finds nothing in the demo files that the schemas forbid, and a slip at once."""
    schema = json.loads((ROOT / "docs" / "reference" / f"{name}.schema.json").read_text("utf-8"))
    validate = fastjsonschema.compile(schema)
    data = yaml.load(text, Editor)

    validate(data)
    with pytest.raises(fastjsonschema.JsonSchemaValueException, match="tilte"):
        validate({**data, "tilte": "Bench"})


@pytest.mark.parametrize("name", ["plan", "shop"])
def test_schemas_know_the_keys_of_the_demo(name):
    """Every key that the demo catalog uses at the top is in the schema."""
    schema = json.loads((ROOT / "docs" / "reference" / f"{name}.schema.json").read_text("utf-8"))
    if name == "shop":
        files = [(ROOT / "plans" / "shop.yml").read_text("utf-8")]
    else:
        files = [path.read_text("utf-8").split("---\n")[1] for path in (ROOT / "plans").glob("*/plan.md")]
    assert files
    for text in files:
        assert set(yaml.load(text, yaml.BaseLoader)) <= set(schema["properties"])
