"""What is found at a size: by the checks, and by what keeps a plan from being fitted or cut."""

from __future__ import annotations

from scantling.words.language import Told

FINDINGS: dict[str, Told] = {
    # allow variation
    "a {stock} may be {varies} narrower than {widest}, and '{part}' takes its whole width": "{stock} kann {varies} schmaler sein als {widest}, und „{part}“ nimmt die ganze Breite",
    # fastener early
    "too early for {count} of '{ware}': '{first}' and '{second}' meet only in step {number}": "zu früh für {count} von „{ware}“: „{first}“ und „{second}“ treffen sich erst in Schritt {number}",
    # fastener edge
    "{last} along '{part}', which is {room}": "{last} entlang „{part}“, das {room} ist",
    "the last of these {kind} would be {there}": "{kind}: die letzte Stelle läge bei {there}",
    "within {nearest} of an edge of '{part}'": "näher als {nearest} an einer Kante von „{part}“",
    "these {kind} come {near}; {least} is the least": "{kind}: {near}; {least} sind das Mindeste",
    "'{first}' is {narrow} wide: a screw through it is within {half} of both edges and may split it": "„{first}“ ist {narrow} breit: eine Schraube hindurch liegt {half} von beiden Kanten und kann es spalten",
    # fastener length
    "'{name}' is no longer than '{first}' is thick ({thick}): it holds nothing": "„{name}“ ist nicht länger, als „{first}“ dick ist ({thick}): das hält nichts",
    "'{fastener}' is long for a pocket hole in '{first}', {thick} thick": "„{fastener}“ ist lang für ein Taschenloch in „{first}“, {thick} dick",
    "'{fastener}' is short for a pocket hole in '{first}', {thick} thick": "„{fastener}“ ist kurz für ein Taschenloch in „{first}“, {thick} dick",
    "'{name}' comes out of '{second}' by {bites}": "„{name}“ tritt um {bites} aus „{second}“ aus",
    "'{name}' bites only {bites} into '{second}'; {least} is wanted": "„{name}“ greift nur {bites} in „{second}“; nötig sind {least}",
    # finish order
    "'{first}' and '{second}' are glued in step {number}, after the finish: glue does not hold on it": "„{first}“ und „{second}“ werden in Schritt {number} geleimt, nach der Oberfläche: darauf hält Leim nicht",
    "'{name}' is closed in by step {number} without a finish, and shows a bare edge when it shrinks": "„{name}“ wird in Schritt {number} ohne Oberfläche eingeschlossen und zeigt eine rohe Kante, wenn es schwindet",
    # glue at hand
    "'{first}' and '{second}'": "„{first}“ und „{second}“",
    "{pair} are glued, but no step has the glue and '{fastener}' at hand together": "{pair} werden geleimt, aber kein Schritt hat Leim und „{fastener}“ zugleich zur Hand",
    "{pair} are glued, but no step from number {number} on needs any glue": "{pair} werden geleimt, aber ab Schritt {number} braucht kein Schritt Leim",
    # grain along
    "the grain of '{part}' runs along {length}, its short side; {width} lies across it": "die Faser von „{part}“ läuft entlang {length}, der kurzen Seite; {width} liegen quer dazu",
    # groove fits
    "this {kind} is {width} wide; '{first}' {said}: {stock} is {thick} thick": "{kind} ist {width} breit; „{first}“ {said}: {stock} ist {thick} dick",
    "this {kind} leaves {left} of '{part}', {whole} thick; a third of it should stay": "{kind} lässt {left} von „{part}“ stehen, das {whole} dick ist; ein Drittel sollte bleiben",
    "does not go in": "geht nicht hinein",
    "is loose by {width}": "sitzt um {width} locker",
    "'{first}' goes into a {how} of '{second}', which has none": "„{first}“ geht in „{second}“ ({how}), wo nichts dergleichen ist",
    "this join is {depth} deep, but the {how} of '{second}' is {there}": "diese Verbindung ist {depth} tief, in „{second}“ ({how}) sind es aber {there}",
    # hardware used
    "'{name}' is not on the materials list": "„{name}“ steht nicht auf der Materialliste",
    "more than": "mehr als",
    "fewer than": "weniger als",
    "no step says when '{ware}' is used": "kein Schritt sagt, wann „{ware}“ gebraucht wird",
    "the steps take {want} of '{ware}', {more} the {have} on the materials list": (
        "der Schritt braucht {want} von „{ware}“, {more} die {have} auf der Materialliste",
        "die Schritte brauchen {want} von „{ware}“, {more} die {have} auf der Materialliste",
    ),
    # made first
    "step {number} uses '{name}', which {what} step {later}": "Schritt {number} braucht „{name}“; dieses {what} Schritt {later}",
    "is cut from what '{offcut_of}' leaves; that is used only in": "kommt aus dem, was „{offcut_of}“ übrig lässt; das braucht erst",
    "'{part}' is glued up from {pieces}, but no step has glue before step {number} uses it": "„{part}“ wird aus {pieces} verleimt, aber kein Schritt hat Leim, bevor Schritt {number} es braucht",
    "is cut only in": "entsteht erst in",
    # parts used
    "no step uses '{part}' ({count} are cut)": (
        "kein Schritt braucht „{part}“ ({count} wird zugeschnitten)",
        "kein Schritt braucht „{part}“ ({count} werden zugeschnitten)",
    ),
    "the steps use {count} of '{part}', {more} the {wanted} that are cut": "die Schritte brauchen {count} von „{part}“, {more} die {wanted}, die zugeschnitten werden",
    # pocket covered
    "the pocket holes of '{first}' face '{part}', put in by step {number}, before their screws go in (step {driven})": "die Taschenlöcher von „{first}“ liegen vor „{part}“, das Schritt {number} einsetzt, bevor ihre Schrauben hineingehen (Schritt {driven})",
    # saying
    "{listed} and {listed2}": "{listed} und {listed2}",
    # shelf sag
    "{load} lb on the square foot": "{load} lb je Quadratfuß",
    "{load} kg on the square metre": "{load} kg je Quadratmeter",
    "'{part}' spans {span} and sags about {later} in the end, under {load}; cabinet shelves are allowed {allowed}": "„{part}“ überspannt {span} und biegt sich auf Dauer etwa {later} durch, unter {load}; Schrankböden sind {allowed} erlaubt",
    # shelf spacing
    "{gap} between shelves is little for books; 9 to 13 in is usual": "{gap} zwischen den Böden sind wenig für Bücher; üblich sind 9 bis 13 in",
    "{gap} between shelves is a lot for books; 9 to 13 in is usual": "{gap} zwischen den Böden sind viel für Bücher; üblich sind 9 bis 13 in",
    # shut out
    "'{name}' cannot go in any more: {holders} close its place from step {number} on": (
        "„{name}“ lässt sich nicht mehr einsetzen: {holders} schließt seinen Platz ab Schritt {number}",
        "„{name}“ lässt sich nicht mehr einsetzen: {holders} schließen seinen Platz ab Schritt {number}",
    ),
    # tip over
    ": empty, a pull of some {pull} at its top begins to tip it": ": leer beginnt ein Zug von etwa {pull} an der Oberkante es zu kippen",
    ": empty, some {load} on an open drawer begin to tip it": ": leer beginnen etwa {load} auf einer offenen Schublade es zu kippen",
    "{height} high and {depth} deep, it tips easily{estimate}; nothing here fastens it": "{height} hoch und {depth} tief, kippt es leicht{estimate}; nichts hier befestigt es",
    # use heights
    "{height} is low for {name}; {low} to {high} is usual": "{height} sind niedrig für {name}; üblich sind {low} bis {high}",
    "{height} is high for {name}; {low} to {high} is usual": "{height} sind hoch für {name}; üblich sind {low} bis {high}",
    # wood movement
    "'{part}' is solid and {width} wide: it swells and shrinks by about {more}": "„{part}“ ist massiv und {width} breit: es quillt und schwindet um etwa {more}",
    "{grown}, but is glued into '{second}'": "{grown}, ist aber in „{second}“ eingeleimt",
    "{grown}, but its grooves leave it {room} of room": "{grown}, aber seine Nuten lassen ihm nur {room} Platz",
    # carrying
    "part '{part}' is {length} long; at most {longest} can be carried": "Teil „{part}“ ist {length} lang; höchstens {longest} lassen sich befördern",
    "stock '{name}' is longer than the {longest_piece} that can be carried, and {first_cuts} cuts at the yard do not make it short enough for these parts": "„{name}“ ist länger als die {longest_piece}, die sich befördern lassen, und {first_cuts} Schnitte im Laden machen es für diese Teile nicht kurz genug",
    # fitting
    "part '{part}' ({length} x {width}) fits no stock of '{family}'": "Teil „{part}“ ({length} x {width}) passt auf nichts von „{family}“",
    "none of '{family}' is to be had for part '{part}'": "von „{family}“ ist nichts zu haben für Teil „{part}“",
    # for plan
    "{count} of {all} '{part}' do not fit the offcuts of '{host}'": "{count} von {all} „{part}“ passen nicht in die Reststücke von „{host}“",
    # shopping
    "there is not enough of '{family}' to cut {listed}": "es gibt nicht genug „{family}“, um {listed} zuzuschneiden",
    # fit check
    "{pair} stand {depth} deep in each other, but their {how} is {declared} deep": "{pair} stehen {depth} tief ineinander, ihre Verbindung ({how}) ist aber {declared} tief",
    "{names} are joined, but do not meet anywhere": "{names} sind verbunden, treffen sich aber nirgends",
    "two of '{first}' stand in each other, {depth} deep": "zwei von „{first}“ stehen {depth} tief ineinander",
    "'{first}' and '{second}' stand in each other, {depth} deep": "„{first}“ und „{second}“ stehen {depth} tief ineinander",
    "nothing": "nichts",
    "{names} have {joints} joints, but meet in {places}": "{names} haben {joints} Verbindungen, treffen sich aber an {places}",
    "the placed parts are {come_to} in {name}, but '{known}' is {named_size}": "die Teile an ihrem Platz ergeben {come_to} ({name}), „{known}“ ist aber {named_size}",
    "1 place": "1 Stelle",
    "{meetings} places": "{meetings} Stellen",
    "'{part}' is {thick} thick; a {kind} {deep} deep goes through it": "„{part}“ ist {thick} dick; {kind}, {deep} tief, geht hindurch",
    "'{first}' meets '{second}' when it slides out": "„{first}“ stößt an „{second}“, wenn es herausgleitet",
    "'{first}' meets '{second}' when it opens": "„{first}“ stößt an „{second}“, wenn es sich öffnet",
    # brace
    "the brace is too wide to be seated on the {side} of its opening": "die Strebe ist zu breit, um an den {side} ihrer Öffnung zu sitzen",
    "the brace is too wide for its opening": "die Strebe ist zu breit für ihre Öffnung",
    "the opening for the brace has no room": "die Öffnung für die Strebe hat keinen Raum",
    # fit hardware
    "the depth of this join": "die Tiefe dieser Verbindung",
    "the shop file has no {kind} of a length for this join": "der Laden führt keine passende Länge ({kind}) für diese Verbindung",
    "the shop file has no article '{name}'": "der Laden führt „{name}“ nicht",
    "the count of '{name}'": "die Anzahl von „{name}“",
    "the area of '{name}'": "die Fläche von „{name}“",
    "the length of '{name}'": "die Länge von „{name}“",
    "the shop file does not say what '{ware}' covers": "der Laden sagt nicht, für wie viel „{ware}“ reicht",
    "the shop file does not say how long '{ware}' is": "der Laden sagt nicht, wie lang „{ware}“ ist",
    "'{key}' of this join": "„{key}“ dieser Verbindung",
    "'{ware}' has no price": "„{ware}“ hat keinen Preis",
    "banded edges": "beschichtete Kanten",
    "the shop file has no edge banding": "der Laden führt keinen Kantenumleimer",
    # fit parts
    "the {side} of '{part}'": "das Maß „{side}“ von „{part}“",
    "'{name}' of '{part}'": "„{name}“ von „{part}“",
    "the {how} of '{part}'": "die Zahl der {how} von „{part}“",
    "the {side} end of '{part}'": "das {side} Ende von „{part}“",
    "whether '{part}' is there": "ob „{part}“ da ist",
    "the count of '{part}'": "die Anzahl von „{part}“",
    "{count} of '{part}' are more than {most}": "{count} von „{part}“ sind mehr als {most}",
    "'{part}' is glued up from nothing": "„{part}“ wird aus nichts verleimt",
    "'{part}' is {thick} thick, its stock {thick2}": "„{part}“ ist {thick} dick, sein Holz {thick2}",
    "'{part}' needs {want}, longer than any {stock} ({have})": "„{part}“ braucht {want}, länger als jedes {stock} ({have})",
    "'{part}' needs {want}, wider than any {stock} ({have})": "„{part}“ braucht {want}, breiter als jedes {stock} ({have})",
    "the {key} of '{part}' is above its width": "„{key}“ von „{part}“ ist größer als seine Breite",
    "'{part}' is glued up {have} thick, thinner than its {want}": "„{part}“ ist verleimt {have} dick, dünner als seine {want}",
    "'{part}' is glued up {have} wide, narrower than its {want}": "„{part}“ ist verleimt {have} breit, schmaler als seine {want}",
    # fit rest
    "the count of {kind}s": "die Anzahl ({kind})",
    "'{name}' of the {kind} in '{part}'": "„{name}“ von {kind} in „{part}“",
    "this condition": "diese Bedingung",
    # placement fit
    "'{name}' is placed {times}, but there are {count} of it": (
        "„{name}“ steht {times} an einem Platz, es gibt davon aber {count}",
        "„{name}“ steht {times} an einem Platz, es gibt davon aber {count}",
    ),
    "the {what} of '{part}' is {value}, not a length": "{what} von „{part}“ ist {value}, keine Länge",
    "the {count} of '{part}' cannot be shared out evenly over its places": "die {count} von „{part}“ lassen sich nicht gleichmäßig auf ihre Plätze verteilen",
    "once": "einmal",
    "{found} times": "{found}-mal",
    "{count} of '{part}' need {need}, but there is room for {room}": "{count} von „{part}“ brauchen {need}, es sind aber nur {room} Platz",
    # values
    "{what} comes to {value}, less than none": "{what} ergibt {value}, weniger als null",
    "{what} is {value}, not {expected}": "{what} ist {value}, nicht {expected}",
    "{what} has no unit": "{what} hat keine Einheit",
    "{what} comes to {shown} at this size": "{what} ergibt {shown} bei dieser Größe",
    "{what} comes to {shown} at this size, and the part measures {whole} there": "{what} ergibt {shown} bei dieser Größe, und das Teil misst dort {whole}",
    "{what} comes to {value}, no whole number": "{what} ergibt {value}, keine ganze Zahl",
    "{what} is no angle that an end can be cut at": "{what} ist kein Winkel, in dem sich ein Ende schneiden lässt",
}
