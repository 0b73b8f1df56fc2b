"""Words of the trade that a plan file chooses from: joints, work, ends, edges, shelves of a shop."""

from __future__ import annotations

from scantling.words.language import Told

TRADE: dict[str, Told] = {
    "groove": "Nut",
    "dado": "Quernut",
    "rabbet": "Falz",
    "notch": "Ausklinkung",
    "half-lap": "Überblattung",
    "pocket holes": "Taschenlöcher",
    "holes": "Bohrungen",
    "shelf pin holes": "Bodenträgerlöcher",
    "taper": "Verjüngung",
    "curve": "Bogen",
    "roundover": "Abrundung",
    "chamfer": "Fase",
    "pocket screws": "Taschenlochschrauben",
    "screws": "Schrauben",
    "brads and glue": "Stifte und Leim",
    "nails": "Nägel",
    "glue": "Leim",
    "bolts": "Schraubbolzen",
    "dowels": "Dübel",
    "square": "rechtwinklig",
    "mitre": "Gehrung",
    "bevel": "Schrägschnitt",
    "long 1": "lange Kante 1",
    "long 2": "lange Kante 2",
    "short 1": "kurze Kante 1",
    "short 2": "kurze Kante 2",
    "width": "Breite",
    "depth": "Tiefe",
    "height": "Höhe",
    "Lumber": "Schnittholz",
    "Hardwood": "Laubholz",
    "Sheet goods": "Plattenware",
    "Fence pickets": "Zaunlatten",
    "Trim": "Leisten",
    "Hardware": "Beschläge und Schrauben",
    "Finish and supplies": "Oberfläche und Verbrauchsmaterial",
}
