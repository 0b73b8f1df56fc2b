"""Problems shaped like small furniture: every answer is verified, none costs more than is known to do."""

from __future__ import annotations

import pytest

from scantling.cutting import Problem, cuts_in_order, replay
from tests.cutting.checking import generated, solved

CHUNK = 10
KNOWN = {
    "boards-0": 11481,
    "rips-1": 4138,
    "sheets-2": 11564,
    "boards-3": 12195,
    "rips-4": 5096,
    "sheets-5": 16680,
    "boards-6": 4638,
    "rips-7": 2505,
    "sheets-8": 8561,
    "boards-9": 7120,
    "rips-10": 6264,
    "sheets-11": 14410,
    "boards-12": 3302,
    "rips-13": 5434,
    "sheets-14": 8750,
    "boards-15": 10060,
    "rips-16": 4785,
    "sheets-17": 23328,
    "boards-18": 2228,
    "rips-19": 2065,
    "sheets-20": 22579,
    "boards-21": 2244,
    "rips-22": 4012,
    "sheets-23": 13677,
    "boards-24": 5315,
    "rips-25": 7452,
    "sheets-26": 15480,
    "boards-27": 9168,
    "rips-28": 4005,
    "sheets-29": 28444,
    "boards-30": 2879,
    "rips-31": 1697,
    "sheets-32": 2766,
    "boards-33": 9808,
    "rips-34": 4002,
    "sheets-35": 15402,
    "boards-36": 10361,
    "rips-37": 16214,
    "sheets-38": 17476,
    "boards-39": 2824,
    "rips-40": 4630,
    "sheets-41": 9397,
    "boards-42": 7085,
    "rips-43": 2917,
    "sheets-44": 6846,
    "boards-45": 9012,
    "rips-46": 1247,
}
"""The least cost that independent solvers found (column generation in HiGHS; an academic solver)."""


@pytest.mark.parametrize("first", range(0, 300, CHUNK))
def test_every_answer_can_be_cut_and_costs_no_more_than_is_known_to_do(first: int) -> None:
    """The verifier, which shares no code with the solver, accepts every answer; the cuts yield its pieces."""
    for seed in range(first, first + CHUNK):
        data = generated(seed)
        answer = solved(data)
        assert answer.cost <= KNOWN.get(data["name"], answer.cost)

        kerf = Problem.from_data(data).kerf
        for board in answer.boards:
            assert board.cuts is not None
            found = {
                leaf.piece: (leaf.x, leaf.y, leaf.length, leaf.width)
                for leaf in replay(board.cuts, kerf)
                if leaf.piece is not None
            }
            assert found == {
                number: (piece.x, piece.y, piece.length, piece.width)
                for number, piece in enumerate(board.pieces)
            }


@pytest.mark.parametrize(("shape", "least"), [(0, 97), (1, 75), (2, 75)])
def test_most_answers_are_proved_least(shape: int, least: int) -> None:
    """Of the first hundred answers of each kind of problem, so many are proved."""
    answers = [solved(generated(seed)) for seed in range(shape, 90, 3)]
    assert 100 * sum(answer.proved for answer in answers) >= least * len(answers)


@pytest.mark.parametrize("seed", [0, 1, 2, 5, 13, 17])
def test_cuts_are_numbered_so_that_each_panel_exists_before_it_is_cut(seed: int) -> None:
    """A panel is parted after the cut that made it, and the numbers have no gaps."""
    for board in solved(generated(seed)).boards:
        assert board.cuts is not None
        ordered = cuts_in_order(board.cuts)
        assert [cut.number for cut, _ in ordered] == list(range(1, len(ordered) + 1))

        for cut, panel in ordered:
            for part in (panel.freed, panel.rest):
                if part is not None and part.cut is not None:
                    assert part.cut.number > cut.number
