"""The site's own words, in English and in other languages. An author's words are never touched.

English stands in the code, where it is read; a language is a table from it. What is asked for with `say` is
told in the language that `speaking` has set for what runs within it, English otherwise.
"""

from scantling.words.language import ENGLISH, Language
from scantling.words.languages import LANGUAGES, language_of, spoken_by
from scantling.words.say import counted, mark, say, speaking, spoken

__all__ = [
    "ENGLISH",
    "LANGUAGES",
    "Language",
    "counted",
    "language_of",
    "mark",
    "say",
    "speaking",
    "spoken",
    "spoken_by",
]
