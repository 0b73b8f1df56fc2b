"""A formula as a tree; each node keeps which characters it was written with."""

from __future__ import annotations

from dataclasses import dataclass

from scantling.formula.value import Value


@dataclass(frozen=True, slots=True)
class Node:
    """Some characters of a formula that mean something together."""

    start: int
    end: int


@dataclass(frozen=True, slots=True)
class Literal(Node):
    """A value as it stands: `48 in`, `3`, `yes`, `"from offcuts"`."""

    value: Value


@dataclass(frozen=True, slots=True)
class Name(Node):
    """A named size, derived length or a part's measure: `width`, `side strip.length`."""

    name: str


@dataclass(frozen=True, slots=True)
class Step(Node):
    """One operator and what stands right of it, in a chain."""

    operator: str
    operand: Node


@dataclass(frozen=True, slots=True)
class Chain(Node):
    """Operators of the same rank, from left to right: `a + b - c`.

    Kept flat, so that a long sum is no deep tree.
    """

    first: Node
    steps: tuple[Step, ...]


@dataclass(frozen=True, slots=True)
class Comparison(Node):
    """Two values compared."""

    operator: str
    left: Node
    right: Node


@dataclass(frozen=True, slots=True)
class Prefix(Node):
    """A minus or a `not` and what it stands before."""

    operator: str
    operand: Node


@dataclass(frozen=True, slots=True)
class Choice(Node):
    """`if ... then ... else ...`."""

    condition: Node
    then: Node
    otherwise: Node


@dataclass(frozen=True, slots=True)
class Call(Node):
    """A function and what it is given."""

    function: str
    arguments: tuple[Node, ...]


def children(node: Node) -> tuple[Node, ...]:
    """Return the nodes right below a node, in written order."""
    match node:
        case Chain():
            return (node.first, *(step.operand for step in node.steps))
        case Comparison():
            return (node.left, node.right)
        case Prefix():
            return (node.operand,)
        case Choice():
            return (node.condition, node.then, node.otherwise)
        case Call():
            return node.arguments
        case _:
            return ()


def walk(tree: Node) -> list[Node]:
    """Return all nodes of a tree, each before those below it, in written order."""
    found: list[Node] = []
    waiting = [tree]
    while waiting:
        node = waiting.pop()
        found.append(node)
        waiting.extend(reversed(children(node)))
    return found
