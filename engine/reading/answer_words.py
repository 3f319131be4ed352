"""Words that answer a question: which of the readings, which equipment, load or effort."""

from __future__ import annotations

LOAD_WORDS = frozenset(("load", "weight", "kilos", "kg", "gewicht", "peso", "poids", "вес", "vikt"))
EFFORT_WORDS = frozenset(("effort", "rpe", "rir", "intensity", "anstrengung", "esfuerzo"))

SHORT_FOR = {
    "dumbbell": {
        "db",
        "dbs",
        "dumbbells",
        "dumbells",
        "dumbel",
        "dumbels",
        "dumbles",
        "dumble",
        "kurzhantel",
        "mancuernas",
        "hantel",
    },
    "barbell": {"bb", "bar", "langhantel", "barra"},
    "cable": {"cables", "pulley", "kabel"},
    "machine": {"maschine"},
    "kettlebell": {"kb"},
    "ez bar": {"ez"},
}

PLACES = {
    **{word: place for place, words in enumerate(
        (("1", "first", "1st", "a", "erste", "primera", "première", "premier", "primeiro", "prima", "первый", "första"),
         ("2", "second", "2nd", "b", "two", "zweite", "segunda", "deuxième", "segundo", "seconda", "второй", "andra"),
         ("3", "third", "3rd", "c", "three", "dritte", "tercera", "troisième", "terceiro", "terza", "третий", "tredje"))
    ) for word in words},
    "last": -1,
}  # fmt: skip
PLACE_FILLERS = frozenset(
    (
        "the",
        "one",
        "option",
        "number",
        "reading",
        "please",
        "choice",
        "it",
        "is",
        "was",
        "die",
        "la",
        "le",
        "el",
        "o",
        "il",
    )
)

ANSWER_FILLERS = PLACE_FILLERS | frozenset(
    ("with", "that", "those", "were", "i", "mean", "meant", "sorry", "on", "of", "course", "a", "an", "its", "thats",
     "pls", "no", "oh", "yes", "yeah", "did", "used", "using", "in", "ones", "kind", "version", "variation", "type",
     "this", "they", "for")
)  # fmt: skip
