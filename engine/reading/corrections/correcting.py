"""A correction under way: its words without the slips around them, its pieces, and the sets that it may reach.

slip = "sorry" | "no" | "oops" | "*" in front;  "sorry" | "my bad" | "actually" | "*" behind;  "wrong" anywhere
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass, field, replace
from functools import lru_cache

from engine.catalogue.catalogue import Catalogue
from engine.reading.corrections.denied_first import with_denied_behind, without_denied_effort
from engine.reading.corrections.named_by_numbers import with_named_by_numbers
from engine.reading.corrections.remaining import with_remaining
from engine.reading.corrections.the_ones import with_ones
from engine.reading.days.dated import dated
from engine.reading.days.day_starts import DATE_KINDS
from engine.reading.marks.loads_lowered import without_loads_lowered
from engine.reading.marks.marks import without_asides
from engine.reading.marks.marks_in_remarks import mark_denied, with_efforts_told
from engine.reading.marks.places_counted import with_numbered_places, with_places_alone
from engine.reading.prepare import Prepared, prepare
from engine.reading.values import Context, Correction
from engine.reading.weighing.resolve import BASES
from engine.reading.words.cues import CUES_OF, any_cued, is_cued
from engine.reading.words.kinds import K
from engine.reading.words.lexicon import plain_word
from engine.reading.words.phrasebook import Phrasebook, phrasebook, spoken_words
from engine.reading.words.pieces import Piece, Role, is_one_word, kinds_of
from engine.reading.words.token_shapes import Shape
from engine.reading.words.tokens import Token
from engine.values.load import Basis, Load, Unit
from engine.values.sets import SetDone, SetRecord

MOST_WORDS, MOST_SLIPS, LONGEST_CUE = 14, 3, 5
STAR = "*"
UNITS = {K.KG: Unit.KG, K.LB: Unit.LB}
LOOSE = frozenset((K.COMMA, K.STOP, K.DASH, K.COLON))
OWN_CUES = ("mean", "make", "slip", "tail", "be", "wrongly", "swapped")
PLURALS = frozenset(("those", "were"))


@dataclass(slots=True)
class Told:
    """`words` and `pieces` are without the slips; `slipped`: there were some; `joined`: "and" stood in front;
    `blamed`: the first word is said to be wrong, "wrong log"; `retracted`: a no stands in front.
    """

    words: list[str]
    pieces: list[Piece]
    context: Context
    catalogue: Catalogue
    book: Phrasebook
    slipped: bool = False
    joined: bool = False
    blamed: bool = False
    retracted: bool = False
    changes: dict[int, tuple[SetRecord, SetDone]] = field(default_factory=dict)
    removed: list[SetRecord] = field(default_factory=list)
    added: list[SetDone] = field(default_factory=list)
    pointed: list[SetRecord] = field(default_factory=list)

    def starts(self, cue: str) -> int:
        """How many words of the beginning are this cue; 0 for none."""
        return cue_at(self.words, 0, self.book.cues.get(cue, frozenset()))

    def has(self, cue: str) -> bool:
        return any(cue_at(self.words, at, self.book.cues.get(cue, frozenset())) for at in range(len(self.words)))

    def kinds(self) -> frozenset[K]:
        return frozenset(piece.kind for piece in self.pieces)

    def numbers(self) -> list[Piece]:
        return [piece for piece in self.pieces if piece.kind is K.NUMBER]

    def unknown(self) -> int:
        """How many words have no meaning, the words of the correction itself aside."""
        own = {word for cue in OWN_CUES for phrase in self.book.cues[cue] for word in phrase.split()}
        return sum(1 for piece in self.pieces if piece.kind is K.PLAIN and plain_word(piece.text) not in own)

    @property
    def plural(self) -> bool:
        counts = any(piece.kind is K.COUNT and piece.text.endswith("s") for piece in self.pieces)
        timed = bool(self.context.recent) and self.context.recent[-1].done.seconds is not None  # "that was 50s"
        listed = not timed and any(piece.role is Role.PLURAL for piece in self.numbers())
        return counts or listed or any_cued(self.words, PLURALS)

    def of_others(self) -> bool:
        return any(word in self.book.cues["others"] and word != "they" for word in self.words)

    def now(self, record: SetRecord) -> SetDone:
        """The set as this correction leaves it so far."""
        return self.changes[record.id][1] if record.id in self.changes else record.done

    def set_to(self, record: SetRecord, done: SetDone) -> None:
        self.changes[record.id] = (record, done)

    def at_load(self, done: SetDone, new: Piece) -> SetDone:
        """The set at another load; the unit stays where none is told, and with no load yet it is as the lift has it."""
        old = done.load
        unit = new.unit or (old.unit if old else self.context.unit)
        sign = -1 if old is not None and old.amount < 0 < new.value else 1
        known = self.catalogue.get(done.exercise)
        basis = old.basis if old else BASES.get(known.loading, Basis.TOTAL) if known else Basis.TOTAL
        return replace(done, load=Load(sign * new.value, unit, basis))

    def correction(self) -> Correction | None:
        changed = tuple((record, done) for record, done in self.changes.values() if record.done != done)
        if not (changed or self.removed or self.added):
            return None
        return Correction(changed, tuple(self.removed), tuple(self.added))


def cue_at(words: list[str], at: int, cues: frozenset[str]) -> int:
    """How many words from this place on are one of the phrases; 0 for none."""
    for length in range(min(LONGEST_CUE, len(words) - at), 0, -1):
        if " ".join(words[at : at + length]) in cues:
            return length
    return 0


def told_of(prepared: Prepared, context: Context, catalogue: Catalogue) -> Told | None:
    """The message as a correction may be told; None for one that is too long, or of several lines."""
    book = phrasebook()
    spoken = spoken_words(prepared.tokens)
    if not spoken or len(spoken) > MOST_WORDS or "\n" in prepared.cleaned.strip():
        return None
    words = mended_words([word for word, _ in spoken], prepared.spoken, book)
    begin, end = _politeness(words, book)
    begin += _chatter(words[begin:end], book)
    first, last = _without_slips(words[begin:end], book)
    first, last = first + begin, last + begin
    dated_behind = not prepared.told.isdisjoint(PAST_DAYS)
    first += _taken_back(words[first:], spoken[first:], prepared.cleaned, book, dated=dated_behind)
    if first > begin and _denies(prepared, words, spoken, begin, first):
        first = begin
    stated = first + 1 < len(words) and words[first + 1] in book.cues["be"]  # "no weight was 85"
    if first > begin and not stated and _does_without(spoken[first - 1], spoken[first], prepared.cleaned):
        first = begin
    prepared = _without_a_no(prepared, spoken[first][1].start, words, context, catalogue)
    starred = _is_starred(prepared.cleaned)
    slipped = first > begin or last < end or starred
    between = _between(prepared, spoken, first, last, context)
    placed = without_loads_lowered(list(_with_second_places(between, prepared.cleaned)))
    pieces = with_places_alone(_in_full(placed, prepared.cleaned))
    if not pieces:
        return None
    judged = _without_misjudging(pieces, book)
    slipped = slipped or judged is not pieces
    judged = without_denied_effort(with_efforts_told(with_denied_behind(with_ones(judged, context))), context)
    if K.TIMES in prepared.told:
        judged = with_named_by_numbers(judged, context, asked=_asks(words, first, book))
    told = Told(words[first:last], judged, context, catalogue, book)
    told.joined = prepared.spoken[0].kind is K.AND or "andword" in CUES_OF[prepared.spoken[0].text]
    told.blamed = first > begin and _is_blaming(spoken[first - 1], spoken[first][1], prepared.cleaned)
    told.retracted = first > begin and words[begin] in book.cues["retracts"]
    told.slipped = slipped or _only_some_count(told) or told.has("wrongly") or told.has("swapped")
    return told


def _asks(words: list[str], first: int, book: Phrasebook) -> bool:
    """Whether something is asked for at the beginning, or a set is said not to count."""
    if cue_at(words, first, book.cues["delete"]) or cue_at(words, first, book.cues["make"]):
        return True
    return any(cue_at(words, at, book.cues["undone"]) for at in range(first, len(words)))


def _denies(prepared: Prepared, words: list[str], spoken: list[tuple[str, Token]], begin: int, first: int) -> bool:
    """Whether the no in front is no slip, and denies what stands behind it."""
    if _denies_a_mark(prepared, spoken[first - 1][1], spoken[first][1]):
        return True
    if first != begin + 1 or prepared.cleaned[spoken[begin][1].end : spoken[first][1].start].strip():
        return False
    return _denies_what_was(prepared, words, begin, first) or _denies_first(prepared, spoken[begin][1])


def _denies_first(prepared: Prepared, no: Token) -> bool:
    """ "no barbell, dumbbells": what it was not, ahead of what it was."""
    behind = [piece for piece in prepared.spoken if piece.start >= no.start]
    return with_denied_behind(behind) is not behind


def _denies_a_mark(prepared: Prepared, slip: Token, first: Token) -> bool:
    """ "no lift" is a phrase of its own, and "no failure on the last", "no proper warm up" deny a mark."""
    over = [piece for piece in prepared.spoken if piece.start < first.start < piece.end]
    said = [piece._replace(text=prepared.cleaned[piece.start : piece.end].lower()) for piece in over]
    if any(piece.kind in (K.MISS, K.RESERVE) or mark_denied(piece) is not None for piece in said):
        return True
    behind = [piece.kind for piece in prepared.spoken if piece.start >= first.start]
    glued = not prepared.cleaned[slip.end : first.start].strip()
    return glued and K.WARMUP in behind and set(behind[: behind.index(K.WARMUP)]) == {K.NOTE}


def _denies_what_was(prepared: Prepared, words: list[str], begin: int, first: int) -> bool:
    """ "no era calentamiento", "no eran kilos": such a verb is denied by the no, where no new number is told."""
    if K.NUMBER in prepared.told or not is_cued(words[first], DENIED_BEHIND):
        return False
    return "retracts" in CUES_OF[words[begin]]


DENIED_BEHIND = frozenset(("bedenied",))


def _does_without(slip: tuple[str, Token], word: tuple[str, Token], cleaned: str) -> bool:
    """ "no belt 110x3": right in front of what somebody may do without, the no is no slip."""
    glued = not cleaned[slip[1].end : word[1].start].strip()
    return glued and "retracts" in CUES_OF[slip[0]] and "donewithout" in CUES_OF[word[0]]


def _is_blaming(slip: tuple[str, Token], first: Token, cleaned: str) -> bool:
    """Whether "wrong" stands right in front of the word, as in "wrong log"; "wrong, log press" says what it was."""
    return "blames" in CUES_OF[slip[0]] and not cleaned[slip[1].end : first.start].strip()


def _without_a_no(prepared: Prepared, start: int, words: list[str], context: Context, catalogue: Catalogue) -> Prepared:
    """ "no squat was monday": the slip denies no squat, where the words go on to say what was."""
    straddled = any(piece.kind is K.NEVER and piece.start < start < piece.end for piece in prepared.spoken)
    if not straddled or phrasebook().cues["be"].isdisjoint(words):
        return prepared
    return prepare(" " * start + prepared.cleaned[start:], context, catalogue)


def _without_misjudging(pieces: list[Piece], book: Phrasebook) -> list[Piece]:
    """ "i miscounted, last was 8", "57.5, misread the stack": without the words that say so, and what they are of."""
    wrongly = {word for phrase in book.cues["misjudged"] for word in phrase.split()}
    said = [piece for piece in pieces if plain_word(piece.text) in wrongly]
    if not said:
        return pieces
    kept: list[Piece] = []
    for clause in _apart([piece for piece in pieces if piece not in said]):
        if not TELLING.isdisjoint([piece.kind for piece in clause]):
            kept += clause
    kept = kept[1:] if kept and kept[0].kind in LOOSE else kept
    return kept or pieces


def _apart(pieces: Iterable[Piece]) -> list[list[Piece]]:
    """The clauses, each with the sign that opens it."""
    found: list[list[Piece]] = [[]]
    for piece in pieces:
        if piece.kind in LOOSE:
            found.append([piece])
        else:
            found[-1].append(piece)
    return found


TELLING = frozenset((K.NUMBER, K.COUNT, K.NAME, K.EFFORT, K.LAST, K.FIRST, K.ORDINAL, K.MIDDLE, K.FROM_LAST, K.DATE,
                     K.KG, K.LB, K.FAILURE, K.WARMUP))  # fmt: skip


USED = frozenset(("had", "tookup", "takenaway"))
"""Words that corrections go by where they stand, and that are no slips of others."""


def mended_words(words: list[str], pieces: Iterable[Piece], book: Phrasebook) -> list[str]:
    unknown = {piece.text for piece in pieces if piece.kind is K.PLAIN and not is_cued(piece.text, USED)}
    unknown -= _words_of_slips()
    return [book.slips.near(word)[0] if word in unknown else word for word in words]


@lru_cache(maxsize=1)
def _words_of_slips() -> frozenset[str]:
    """The words of the clauses that blame herself: no slips of others."""
    return frozenset(word for clause in phrasebook().cues["slipclause"] for word in clause.split())


def _politeness(words: list[str], book: Phrasebook) -> tuple[int, int]:
    """Where the correction begins and ends in "can you delete set 2 please": asked kindly it is no slip yet."""
    asked = cue_at(words, 0, book.cues["polite"])
    start = asked if 1 < asked < len(words) else 0
    end = len(words)
    while end - 1 > start and words[end - 1] in book.cues["please"]:
        end -= 1
    return start, end


def _chatter(words: list[str], book: Phrasebook) -> int:
    """How many words of "lol the 4th only 6" say nothing."""
    at = 0
    while at + 1 < len(words) and words[at] in book.cues["chatter"]:
        if any(cue_at(words, at, book.cues[name]) for name in ("slip", "retake", "relisted")):
            break
        at += 1
    return at


def _without_slips(words: list[str], book: Phrasebook) -> tuple[int, int]:
    first, last = 0, len(words)
    clauses = book.cues["slipclause"]
    for _ in range(MOST_SLIPS):
        length = max(cue_at(words, first, cues) for cues in (book.cues["slip"], clauses))
        first += length if first + length < last else 0
    for length in (4, 3, 2, 1):
        tail = " ".join(words[last - length : last])
        if first < last - length and (tail in book.cues["tail"] or tail in clauses):
            return first, last - length
    return first, last


def _only_some_count(told: Told) -> bool:
    """ "only 4 counted", "only 4 were good": of the reps that were told, no new ones."""
    return told.has("only") and not told.book.cues["counted"].isdisjoint(told.words)


PAST_DAYS = DATE_KINDS - {K.TODAY, K.TOMORROW}


def _taken_back(
    words: list[str], spoken: list[tuple[str, Token]], cleaned: str, book: Phrasebook, *, dated: bool
) -> int:
    """How many words of "scratch that, 145", "ignore that, it was 4 sets" stand in front of what is told instead;
    `dated`: a day is told, which may be the one meant, "scratch that, it's for yesterday".
    """
    length = cue_at(words, 0, book.cues["retake"])
    if 0 < length < len(spoken) and spoken[length][1].shape is Shape.NUMBER:
        return length
    length = cue_at(words, 0, book.cues["takenback"])
    told = dated or Shape.NUMBER in [token.shape for _, token in spoken[length:]]
    if not (told and 0 < length < len(spoken)) or not book.cues["wrongly"].isdisjoint(words):
        return 0
    parted = bool(cleaned[spoken[length - 1][1].end : spoken[length][1].start].strip())
    verb = any(cue_at(words, length, book.cues[cue]) for cue in ("be", "make", "only", "mean"))
    return length if parted or verb else 0


def _is_starred(cleaned: str) -> bool:
    """ "*8" and "8*": the mark that chats use for a correction."""
    bare = cleaned.strip()
    return len(bare) > 1 and bare.count(STAR) == 1 and (bare[0] == STAR or bare[-1] == STAR)


def _between(
    prepared: Prepared, spoken: list[tuple[str, Token]], first: int, last: int, context: Context
) -> list[Piece]:
    start = spoken[first][1].start if first else 0
    end = spoken[last - 1][1].end if last < len(spoken) else len(prepared.cleaned)
    kept = with_numbered_places([piece for piece in prepared.spoken if start <= piece.start < end])
    if _is_starred(prepared.cleaned):
        kept = [piece for piece in kept if prepared.cleaned[piece.start] != STAR]
    while kept and kept[0].kind in LOOSE:
        kept.pop(0)
    days = with_remaining(dated(kept, kinds_of(kept), context), context)
    return with_remaining(without_asides(days, kinds_of(days)), context)


def _with_second_places(pieces: list[Piece], cleaned: str) -> Iterator[Piece]:
    """ "first was 7 second 6": the second set, and no seven seconds."""
    placed = False
    for at, piece in enumerate(pieces):
        word = cleaned[piece.start : piece.end].rpartition(" ")[2]
        behind = pieces[at + 1].kind if at + 1 < len(pieces) else None
        if placed and piece.role is Role.SECONDS and word.lower() == "second" and behind is K.NUMBER:
            yield piece._replace(role=Role.BARE, end=piece.end - len(word) - 1)
            yield piece._replace(kind=K.ORDINAL, start=piece.end - len(word), text=word, role=Role.BARE, told=2)
        else:
            yield piece
        placed = placed or piece.kind is K.FIRST


def _in_full(pieces: list[Piece], cleaned: str) -> list[Piece]:
    """The pieces with the whole phrase that each word stands for, and "second" as a place where nothing is counted."""
    out: list[Piece] = []
    for at, piece in enumerate(pieces):
        if piece.kind is K.SECONDS and piece.text == "second" and not (out and out[-1].kind is K.NUMBER):
            piece = piece._replace(kind=K.ORDINAL, told=2)
        if piece.kind is K.DENY and out and (out[-1].kind in ENDS_OF_A_NUMBER or _denies_a_number(pieces, at)):
            piece = piece._replace(kind=K.NOT)
        if piece.kind is K.RESERVE_LEFT and _tells_of_a_place(out, pieces[at + 1 : at + 3]):
            piece = piece._replace(kind=K.GOT)
        if piece.kind is K.ALTERED and "ofthose" in CUES_OF[cleaned[piece.start : piece.end].lower()]:
            piece = piece._replace(kind=K.FILLER)  # "all three of those were", "did 4 of those, not 3"
        if piece.kind not in AS_THEY_ARE and not is_one_word(piece):
            piece = piece._replace(text=cleaned[piece.start : piece.end].lower())
        out.append(piece)
    return out


def _tells_of_a_place(ahead: list[Piece], behind: list[Piece]) -> bool:
    """ "second had 7", "set 2 had 7 reps"; and not "last had 2 left"."""
    kinds = [piece.kind for piece in ahead[-2:]]
    placed = bool(kinds) and (kinds[-1] in PLACED or kinds == [K.SETS, K.NUMBER])
    return placed and [piece.kind for piece in behind] in ([K.NUMBER], [K.NUMBER, K.STOP], [K.NUMBER, K.COMMA])


PLACED = frozenset((K.ORDINAL, K.FIRST, K.LAST, K.MIDDLE, K.FROM_LAST))


def _denies_a_number(pieces: list[Piece], at: int) -> bool:
    """ "eran 4 reps, no 5", "eran 87,5 y no 90": between what was told and the number that it was not."""
    told = [piece.kind for piece in pieces[max(0, at - 3) : at]]
    while told and told[-1] in (K.COMMA, K.AND):
        told.pop()
    behind = pieces[at + 1].kind if at + 1 < len(pieces) else None
    return behind is K.NUMBER and bool(told) and told[-1] in (*ENDS_OF_A_NUMBER, K.REPS)


ENDS_OF_A_NUMBER = (K.NUMBER, K.KG, K.LB)
AS_THEY_ARE = frozenset((K.NUMBER, K.EFFORT, K.DATE, K.NAME))
