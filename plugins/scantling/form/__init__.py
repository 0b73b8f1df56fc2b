"""Forms: what may be written in a plan or a shop file, told once.

A form lists the fields of one kind of record, each with a kind of value and its meaning. The
same form reads a record, names every fault in it, writes its part of the format reference and
its part of the JSON Schema, so that these cannot drift apart.
"""

from scantling.form.form import Field, Form, describe, schema
from scantling.form.kinds import (
    AREA,
    CONDITION,
    COUNT,
    FORMULA,
    LENGTH,
    LENGTH_FORMULA,
    MONEY,
    NUMBER,
    Choice,
    Date,
    EitherOf,
    Formulas,
    Kind,
    ListOf,
    Named,
    Raw,
    ReadBy,
    Record,
    Text,
    Words,
    YesNo,
)

__all__ = [
    "AREA",
    "CONDITION",
    "COUNT",
    "FORMULA",
    "LENGTH",
    "LENGTH_FORMULA",
    "MONEY",
    "NUMBER",
    "Choice",
    "Date",
    "EitherOf",
    "Field",
    "Form",
    "Formulas",
    "Kind",
    "ListOf",
    "Named",
    "Raw",
    "ReadBy",
    "Record",
    "Text",
    "Words",
    "YesNo",
    "describe",
    "schema",
]
