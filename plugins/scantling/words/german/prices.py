"""Words of the page of prices, and of what a change of prices did."""

from __future__ import annotations

from scantling.words.language import Told

PRICES: dict[str, Told] = {
    "Prices": "Preise",
    "What all plans cost together": "Was alle Pläne zusammen kosten",
    "What all plans cost together, from {first} to {last}.": "Was alle Pläne zusammen kosten, vom {first} bis zum {last}.",
    "What changed since {day}": "Was sich seit {day} geändert hat",
    "What each plan costs": "Was jeder Plan kostet",
    "The list": "Die Liste",
    "before": "früher",
    "What wood and hardware cost on {day}, and what that does to each plan.": "Was Holz und Beschläge am {day} kosten und was das für jeden Plan heißt.",
    "Every plan here is reckoned with these prices of {day}.": "Jeder Plan hier ist mit diesen Preisen vom {day} gerechnet.",
    "Every plan here is reckoned with these prices.": "Jeder Plan hier ist mit diesen Preisen gerechnet.",
    " Yours will differ: a plan's page lets you put them in.": " Andernorts gelten andere: Auf der Seite eines Plans lassen sie sich eintragen.",
    "Plan": "Plan",
    "Before": "Vorher",
    "Now": "Jetzt",
    "Article": "Artikel",
    "Price": "Preis",
    "Since": "Seit",
    "all plans together": "alle Pläne zusammen",
    "it costs nothing now": "es kostet jetzt nichts",
    "about ten times more than before": "etwa zehnmal so viel wie vorher",
    "about ten times less than before": "etwa ein Zehntel von vorher",
    "about a hundred times more than before: cents for whole money?": "etwa hundertmal so viel wie vorher: Cent statt ganzer Beträge?",
    "about a hundred times less than before: cents for whole money?": "etwa ein Hundertstel von vorher: Cent statt ganzer Beträge?",
    "the last record": "der letzten Aufzeichnung",
    "No price has changed since {since}.": "Seit {since} hat sich kein Preis geändert.",
    "{count} prices changed since {since}:": (
        "Seit {since} hat sich {count} Preis geändert:",
        "Seit {since} haben sich {count} Preise geändert:",
    ),
    " since {day}": " seit {day}",
    "{name}: new, {after}": "{name}: neu, {after}",
    "{name}: gone, {after}": "{name}: entfallen, {after}",
    "{name}: no longer on the list (was {before})": "{name}: nicht mehr auf der Liste (zuletzt {before})",
    "{name}: {before} before, {after} now ({moved})": "{name}: vorher {before}, jetzt {after} ({moved})",
    "{name}: {before}{since}, now {after}": "{name}: {before}{since}, jetzt {after}",
    "    buys {after} × {name} where it was {before}": "    kauft {after} × {name}, bisher {before}",
    "  look again: {name}: {why}": "  noch einmal ansehen: {name}: {why}",
    "  no longer sold: {name}, which {plans} bought": "  nicht mehr zu haben: {name}, gebraucht von {plans}",
    "all plans together: {before} before, {after} now": "alle Pläne zusammen: vorher {before}, jetzt {after}",
}
