"""What stands around the plans: pages at former addresses, pictures of links."""

from __future__ import annotations

PUBLISHING = {
    "This plan has moved: {plan}.": "Dieser Plan ist umgezogen: {plan}.",
    "Materials {cost}": "Material {cost}",
    "Materials from {cost}": "Material ab {cost}",
}
