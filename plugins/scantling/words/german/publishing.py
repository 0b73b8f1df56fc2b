"""What stands around the plans: pages at former addresses, pictures of links."""

from __future__ import annotations

PUBLISHING = {
    "There is no page here": "Hier ist keine Seite",
    "It may have moved, or its address is mistyped.": "Vielleicht ist sie umgezogen, oder die Adresse ist vertippt.",
    "This plan has moved: {plan}.": "Dieser Plan ist umgezogen: {plan}.",
    "'{word}'": "„{word}“",
    "Nothing here is called {words} any more.": "{words} gibt es hier nicht mehr.",
    "Materials {cost}": "Material {cost}",
    "Materials from {cost}": "Material ab {cost}",
}
