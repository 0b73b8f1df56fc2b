"""Write the model of each plan, or of those named, for the renderer to read."""

from __future__ import annotations

import json
import sys
from pathlib import Path

from scantling.source import read_catalog
from tools.renderings.models import model_of

PLANS = Path(__file__).resolve().parents[2] / "plans"


def main(folder: Path, names: list[str]) -> None:
    """Write a file a plan at its usual size."""
    folder.mkdir(parents=True, exist_ok=True)
    for source in read_catalog(PLANS).plans:
        if source.fitter is not None and (not names or source.slug in names):
            text = json.dumps(model_of(source.fitter))
            (folder / f"{source.slug}.json").write_text(f"{text}\n", "utf-8")


if __name__ == "__main__":
    if len(sys.argv) < 2:
        sys.exit("name the folder for the models, then the plans if not all of them")
    main(Path(sys.argv[1]), sys.argv[2:])
