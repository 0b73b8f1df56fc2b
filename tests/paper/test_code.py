"""The code on the cover, read by hands that did not write it."""

from __future__ import annotations

import pypdfium2
import zxingcpp

from tests.paper.test_typeset import LINK, printed


def test_another_hand_reads_the_code():
    """A general decoder (zxing-cpp) finds the address on the cover as another renderer (PDFium) shows it."""
    cover = pypdfium2.PdfDocument(printed())[0].render(scale=200 / 72).to_pil()
    found = zxingcpp.read_barcodes(cover)

    assert [(code.text, code.format) for code in found] == [(LINK, zxingcpp.BarcodeFormat.QRCode)]
