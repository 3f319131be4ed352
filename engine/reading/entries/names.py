"""Which exercise a part of a message is about.

Order: what this athlete settled, the exercise in hand, the only owner on today's plan, the equipment that the
numbers tell
(26s are dumbbells; an empty bar is a barbell). What is left is asked.
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.catalogue.catalogue import Catalogue
from engine.reading.chunks.chunks import Chunks, numbers_in
from engine.reading.entries.entry import Entry
from engine.reading.entries.told_as_one import OF_CONTENT, WAY_BEHIND, abroad, of_the_lift, told_behind
from engine.reading.entries.way_in_hand import way_in_hand
from engine.reading.lexing.name_words import tells_a_pause
from engine.reading.marks.equipment_talk import is_followed_by_words, is_talked_of
from engine.reading.marks.grips import GRIPS, PARTING, is_a_grip, moved_alike
from engine.reading.values import Context
from engine.reading.words.ahead import kind_at
from engine.reading.words.cues import CUES_OF, is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import MOST_LOADED_REPS, Piece, Role, kinds_in_order, places_in
from engine.values.exercise import Equipment, Loading
from engine.values.ids import ExerciseName

EQUIPMENT = {
    K.DUMBBELL: (Equipment.DUMBBELL,),
    K.BARBELL: (Equipment.BARBELL,),
    K.CABLE: (Equipment.CABLE,),
    K.MACHINE: (Equipment.MACHINE, Equipment.SMITH_MACHINE),
    K.KETTLEBELL: (Equipment.KETTLEBELL,),
}
WORDS = {
    K.DUMBBELL: "dumbbell",
    K.BARBELL: "barbell",
    K.CABLE: "cable",
    K.MACHINE: "machine",
    K.KETTLEBELL: "kettlebell",
}

TELLING = frozenset((K.NOTE, K.VARIANT))
BARS = frozenset(
    ("smith", "smith machine", "ez", "ez bar", "trap bar", "hex bar", "safety bar", "ssb", "swiss bar", "landmine")
)
SHORT_WORDS = {K.DUMBBELL: "db", K.BARBELL: "bb", K.CABLE: "cable", K.MACHINE: "machine", K.KETTLEBELL: "kb"}
ALL_WORDS = frozenset((*WORDS.values(), *SHORT_WORDS.values(), "smith", "ez", "bar"))


def exercises_meant(entry: Entry, chunks: Chunks, context: Context, catalogue: Catalogue) -> tuple[ExerciseName, ...]:
    """The exercises that an entry may be about: one where that is settled, none where nothing tells."""
    if not entry.names:
        return _in_hand_with(_unnamed(entry, context), entry, chunks, catalogue)
    if is_a_grip(entry.phrase) and (doing := context.doing or _announced_alone(context)) is not None:
        return _with_grip(entry, doing, catalogue)
    said = _of_variant(entry, catalogue) if K.VARIANT in chunks.kinds else entry.names
    said = _told_behind(entry, said, catalogue) if chunks.notes else said
    _doubt_its_sets(entry, chunks, context, catalogue)
    names = _with_one_in_hand(_narrowed(said, context), context, catalogue)
    if chunks.body:
        names = _of_the_body(names, entry, chunks, catalogue)
    if chunks.equipment_open and chunks.equipment is not None:
        names = tuple(dict.fromkeys((*names, *of_equipment(names, chunks.equipment, entry.phrase, catalogue))))
    elif chunks.equipment is not None and not (chunks.assisted and _moves_the_body(names, catalogue)):
        names = _held(names, chunks.equipment, entry, chunks, catalogue)
    if K.EACH in chunks.kinds:
        names = _by_hands(names, entry, catalogue)
    if len(names) > 1:
        names = _by_numbers(_by_words(names, entry), chunks, context, catalogue)
    return names


def _told_behind(entry: Entry, said: tuple[ExerciseName, ...], catalogue: Catalogue) -> tuple[ExerciseName, ...]:
    """The lift known by the words behind its sets, where it is done with what was said."""
    last = entry.pieces[-1] if entry.pieces else None
    if last is None or last.kind not in OF_CONTENT or (last.kind is K.NOTE and not is_cued(last.text, WAY_BEHIND)):
        return said
    if last.kind is K.VARIANT and said != entry.names:
        return said
    behind = told_behind(entry, catalogue)
    if not behind or not _agree(behind, entry, catalogue):
        return said
    placed = K.NOT_DATE in [piece.kind for piece in entry.pieces[-FROM_WHERE:-1]]
    return tuple(dict.fromkeys((*said, *behind))) if placed else behind  # "bench 60 8 8 7 from the floor"


FROM_WHERE = 3
"""Pieces of "from the floor"."""


def _doubt_its_sets(entry: Entry, chunks: Chunks, context: Context, catalogue: Catalogue) -> None:
    """Marks sets that may be of another lift: with another grip, or in front of the name and of the lift in hand."""
    entry.doubtful = entry.doubtful or (len(chunks.found) > 1 and _changes_grip(entry, catalogue))
    of_another = entry.led_up_to and context.doing not in (None, *entry.names)
    entry.shared_in_doubt = entry.shared_in_doubt or of_another


def _changes_grip(entry: Entry, catalogue: Catalogue) -> bool:
    """ "close grip bench 60x8, wide 70x6": sets behind another grip, where a grip makes another lift of it."""
    parted = [at + 1 for at in places_in(PARTING, kinds_in_order(entry.pieces[:-1]))]
    gripped = [at for at in parted if not GRIPS.isdisjoint(CUES_OF[entry.pieces[at].text])]
    behind = {cue for at in gripped if _heads_sets(entry.pieces, at) for cue in GRIPS & CUES_OF[entry.pieces[at].text]}
    if not behind:
        return False
    ahead = [*entry.phrase.split(), *[piece.text for piece in entry.pieces[: parted[0]]]]
    before = {cue for word in ahead for cue in GRIPS & CUES_OF[word]}
    bare = " ".join(word for word in entry.phrase.split() if word != GRIP and GRIPS.isdisjoint(CUES_OF[word]))
    others = {catalogue.owners(bare), catalogue.owners(f"close grip {bare}")}
    return bool(before) and before != behind and len(others) > 1


def _heads_sets(pieces: Sequence[Piece], at: int) -> bool:
    """Whether a number stands behind the word there, or behind the one after it: "wide 70x6", "wide grip 70x6"."""
    kinds = [piece.kind for piece in pieces[at + 1 : at + 3]]
    return kinds[:1] == [K.NUMBER] or (kinds[1:] == [K.NUMBER] and kinds[0] in (K.NOTE, K.PLAIN))


GRIP = "grip"


def _announced_alone(context: Context) -> ExerciseName | None:
    return context.announced[0] if len(context.announced) == 1 else None


def _with_grip(entry: Entry, doing: ExerciseName, catalogue: Catalogue) -> tuple[ExerciseName, ...]:
    """ "close grip 50x10" behind a pulldown: the lift in hand with that grip, or the one that is named by it."""
    if moved_alike((doing,), entry.names, catalogue):
        return entry.names
    return tuple(dict.fromkeys((*(catalogue.owners(f"{entry.phrase} {doing}") or (doing,)), *entry.names)))


def _in_hand_with(
    names: tuple[ExerciseName, ...], entry: Entry, chunks: Chunks, catalogue: Catalogue
) -> tuple[ExerciseName, ...]:
    """ "then dumbbells 3x10 20" behind a bench press: the lift in hand, or the same with what is named now; "front
    80x5" behind a squat heads its sets, and is the front squat.
    """
    if len(names) == 1 and (unpaused := _unpaused(names[0], entry, chunks, catalogue)):
        return unpaused
    if len(names) == 1 and (way := way_in_hand(entry)) is not None:
        owners = _so_in_hand(way, names, catalogue)
        apart = len(chunks.found) == 1 and way.kind is not K.EACH
        alone = len(owners) == 1 and (way is entry.pieces[0] or apart)
        return owners if alone else tuple(dict.fromkeys((*names, *owners)))
    if chunks.equipment is None or len(names) != 1:
        return names
    return tuple(dict.fromkeys((*names, *of_equipment(names, chunks.equipment, names[0], catalogue))))


def _so_in_hand(way: Piece, names: tuple[ExerciseName, ...], catalogue: Catalogue) -> tuple[ExerciseName, ...]:
    if way.kind is K.DENY:
        return of_equipment(names, K.BARBELL, names[0], catalogue)
    return of_the_lift(way.text, names[0], catalogue)


def _unpaused(
    doing: ExerciseName, entry: Entry, chunks: Chunks, catalogue: Catalogue
) -> tuple[ExerciseName, ...] | None:
    """ "no pause 90x5" behind a paused bench press: the lift without its pause, or either where more sets are told;
    None where nothing denies the pause.
    """
    words = doing.split()
    bare = [word for word in words if not tells_a_pause(word)]
    if len(bare) in (0, len(words)):
        return None
    denied = [at for at in range(len(entry.pieces)) if _denies_a_pause(entry.pieces, at)]
    owners = catalogue.owners(" ".join(bare)) if denied else ()
    if not owners:
        return None
    alone = (denied[0] == 0 or len(chunks.found) == 1) and len(numbers_in(chunks)) > 1  # "5 no pause" has a load
    return owners if alone else tuple(dict.fromkeys((doing, *owners)))


def _denies_a_pause(pieces: Sequence[Piece], at: int) -> bool:
    """ "no pause", "unpaused", "touch and go", at the head of numbers or at the end of them."""
    alone = pieces[at].kind is K.NOTE and is_cued(pieces[at].text, UNPAUSED)
    denied = pieces[at].kind is K.DENY and kind_at(pieces, at + 1) is K.NOTE and tells_a_pause(pieces[at + 1].text)
    return alone or (denied and kind_at(pieces, at + 2) in BESIDE_A_WAY)


UNPAUSED = frozenset(("nopause", "usualway"))
BESIDE_A_WAY = frozenset((None, K.NUMBER, K.COMMA, K.COLON, K.STOP, K.LINE, K.CLOSE))


def _of_the_body(
    names: tuple[ExerciseName, ...], entry: Entry, chunks: Chunks, catalogue: Catalogue
) -> tuple[ExerciseName, ...]:
    """ "squats bw 3x20", "rows bodyweight 12 10": the lift of that name that is done with the body alone."""
    loaded = chunks.added or chunks.assisted or any(chunk.at for chunk in chunks.found)
    if loaded or any(number.role in LOADED or number.value > MOST_LOADED_REPS for number in numbers_in(chunks)):
        return names
    if any(catalogue.exercises[name].loading is Loading.BODY for name in names):
        return names
    free = tuple(name for name in names if catalogue.exercises[name].equipment in HELD)
    return catalogue.owners(f"bodyweight {_without_equipment(entry.phrase)}") or free or names


LOADED = frozenset((Role.LOAD, Role.PLURAL, Role.CHANGE))


def _moves_the_body(names: tuple[ExerciseName, ...], catalogue: Catalogue) -> bool:
    """ "dips 3x8 on the machine with 20 kg of help": the machine takes weight off, and makes no other lift of it."""
    return bool(names) and all(catalogue.exercises[name].loading is Loading.BODY for name in names)


def _by_hands(names: tuple[ExerciseName, ...], entry: Entry, catalogue: Catalogue) -> tuple[ExerciseName, ...]:
    """ "shrugs 30kg in each hand": the one of them that is done with something in each."""
    told = [piece.text.split() for piece in entry.pieces if piece.kind is K.EACH]
    each = [words for words in told if len(words) > 1]  # "linke hand abgerutscht" is a remark
    if not any("handword" in CUES_OF[word] for words in each for word in words):
        return names
    if len(names) == 1 and catalogue.exercises[names[0]].equipment is Equipment.BARBELL:
        held = of_equipment(names, K.DUMBBELL, entry.phrase, catalogue)
        if not held:  # "deadlift 3x5 40 per hand"
            entry.doubtful, entry.modified_by = True, entry.modified_by or " ".join(each[0])
        return held or names
    held = tuple(name for name in names if catalogue.exercises[name].loading is Loading.PER_HAND)
    return held or names


def _by_words(names: tuple[ExerciseName, ...], entry: Entry) -> tuple[ExerciseName, ...]:
    """ "calf raise 4x15 80 standing": a word that stands in the name of one of them alone."""
    told = {
        piece.text
        for at, piece in enumerate(entry.pieces)
        if piece.kind in TELLING and not (piece.kind is K.VARIANT and is_talked_of(entry.pieces, at))
    }
    fits = tuple(name for name in names if told & set(name.split())) if told else ()
    return fits if len(fits) == 1 else names


def _of_variant(entry: Entry, catalogue: Catalogue) -> tuple[ExerciseName, ...]:
    """ "curls on the ez bar" are ez-bar curls; a bar that no such lift is known for leaves it in doubt."""
    for at, piece in enumerate(entry.pieces):
        if piece.kind is not K.VARIANT:
            continue
        told = (entry.phrase, _without_equipment(entry.phrase), *entry.names)
        known = (catalogue.owners(f"{piece.text} {said}") for said in told)
        for owners in (*known, abroad(piece, entry, catalogue)):
            if owners and _agree(owners, entry, catalogue):
                if entry.modified_by in ("", piece.text):
                    entry.doubtful = False
                if is_talked_of(entry.pieces, at) and set(entry.names).isdisjoint(owners):  # "smith was free"
                    return tuple(dict.fromkeys((*entry.names, *owners)))
                return owners
        entry.doubtful = entry.doubtful or (piece.text in BARS and not _is_easy(piece, entry))
    return entry.names


def _agree(owners: tuple[ExerciseName, ...], entry: Entry, catalogue: Catalogue) -> bool:
    """ "single arm cable row" is no dumbbell row: the equipment that was said is that of the lift."""
    if ALL_WORDS.isdisjoint(entry.phrase.split()):
        return True
    said = {catalogue.exercises[name].equipment for name in entry.names}
    return all(catalogue.exercises[name].equipment in said for name in owners)


def _is_easy(piece: Piece, entry: Entry) -> bool:
    """ "squat 70 3x8 ez": behind the numbers of a lift that no such bar is for, the two letters say easy."""
    return piece.text == "ez" and entry.pieces[0] is not piece


def _held(
    names: tuple[ExerciseName, ...], told: K, entry: Entry, chunks: Chunks, catalogue: Catalogue
) -> tuple[ExerciseName, ...]:
    """Those of the lifts that are done with this equipment; all of them, in doubt, where words speak of it as in
    "pull ups 10 8 7 barbell felt slick".
    """
    held = of_equipment(names, told, entry.phrase, catalogue) or _as_well(names, chunks, catalogue)
    if held or not is_followed_by_words(entry.pieces, told):
        return held
    entry.doubtful = True
    return names


def _as_well(names: tuple[ExerciseName, ...], chunks: Chunks, catalogue: Catalogue) -> tuple[ExerciseName, ...]:
    """ "goblet squat with a kettlebell": one implement in the hand is as good as the other, and what a lift of the body
    is loaded with does not matter ("russian twists kb 16kg").
    """
    if chunks.equipment not in (K.DUMBBELL, K.KETTLEBELL) or len(names) != 1:
        return ()
    known = catalogue.exercises[names[0]]
    loaded = known.loading is Loading.BODY and any(one.role is Role.LOAD for one in numbers_in(chunks))
    return names if loaded or known.equipment in HELD else ()


def _unnamed(entry: Entry, context: Context) -> tuple[ExerciseName, ...]:
    """The lift in hand; beside the one done last where that is another, and only its load is near a number told."""
    doing = context.doing
    if doing is None and context.announced:
        return _narrowed(context.announced, context)
    if doing is None:
        return tuple(dict.fromkeys(slot.exercise for slot in context.plan))
    last = context.recent[-1] if context.recent else None
    if last is None or last.done.exercise == doing or last.done.load is None or last.done.load.amount <= 0:
        return (doing,)
    further = any(piece.kind is K.ANOTHER for piece in entry.pieces) and not context.named
    if further or any(piece.role is Role.CHANGE for piece in entry.pieces):
        return (doing, last.done.exercise)
    known = context.last.get(doing) or next((one.load for one in context.plan if one.exercise == doing), None)
    numbers = [piece for piece in entry.pieces if piece.kind is K.NUMBER and piece.unit in (None, last.done.load.unit)]
    of_the_last = known is not None and any(
        is_near(float(one.value), float(last.done.load.amount))
        and not is_near(float(one.value), float(known.amount), FAR_APART)
        for one in numbers
    )
    return (doing, last.done.exercise) if of_the_last else (doing,)


NEAR, FAR_APART = 1.35, 1.5
"""How many times one load is another at most, where both may be of one lift. Common practice, no source."""


def is_near(one: float, other: float, most: float = NEAR) -> bool:
    """Whether both loads may well be of one lift."""
    return one > 0 and other > 0 and max(one, other) / min(one, other) <= most


def narrowed(names: Sequence[ExerciseName], context: Context) -> tuple[ExerciseName, ...]:
    """The owners of a phrase that context leaves."""
    return _narrowed(tuple(names), context)


def _narrowed(names: tuple[ExerciseName, ...], context: Context) -> tuple[ExerciseName, ...]:
    if len(names) < 2:
        return names
    if context.doing in names:
        return (context.doing,)
    planned = tuple(dict.fromkeys(slot.exercise for slot in context.plan if slot.exercise in names))
    return planned or names


def _with_one_in_hand(
    names: tuple[ExerciseName, ...], context: Context, catalogue: Catalogue
) -> tuple[ExerciseName, ...]:
    """ "rows 65 9 9" while pendlay rows are in hand: one of those that it may be, although the word is of others."""
    doing = context.doing
    if len(names) < 2 or doing is None or doing in names or catalogue.owners(doing.rpartition(" ")[2]) != names:
        return names
    return (doing, *names) if moved_alike((doing,), names, catalogue) else names


def of_equipment(
    names: tuple[ExerciseName, ...], told: K, phrase: str, catalogue: Catalogue
) -> tuple[ExerciseName, ...]:
    """Those of the exercises that use this equipment, or the same lift done with it; empty where there is none."""
    fits = tuple(name for name in names if catalogue.exercises[name].equipment in EQUIPMENT[told])
    if fits:
        owned = catalogue.owners(f"{WORDS[told]} {phrase}") if len(names) > 1 else ()
        return owned or fits  # "machine press" is the chest's, although the press of the legs is a machine, too
    for word in (WORDS[told], SHORT_WORDS[told]):
        for said in (phrase, *names):
            if owners := catalogue.owners(f"{word} {_without_equipment(said)}"):
                if said in names and len(names) > 1:
                    return names  # "barbell split squat": that one of them is known with a bar does not tell which
                return (
                    tuple(name for name in owners if catalogue.exercises[name].equipment in EQUIPMENT[told]) or owners
                )
    return ()


def _without_equipment(phrase: str) -> str:
    return " ".join(word for word in phrase.split() if word not in ALL_WORDS)


def _by_numbers(
    names: tuple[ExerciseName, ...], chunks: Chunks, context: Context, catalogue: Catalogue
) -> tuple[ExerciseName, ...]:
    roles = {number.role for chunk in chunks.found for factor in chunk.factors for number in factor}
    if Role.PLURAL in roles and Role.METRES not in roles:  # "20m in 14s" tells a time
        return _in_the_hands(names, context, catalogue) or names
    wanted = (Equipment.BARBELL,) if chunks.barred or chunks.plates else ()
    fits = tuple(name for name in names if catalogue.exercises[name].equipment in wanted)
    return fits or names


def _in_the_hands(names: tuple[ExerciseName, ...], context: Context, catalogue: Catalogue) -> tuple[ExerciseName, ...]:
    """ "press 26s": the dumbbell lifts of that name, and those that the others of the name are with dumbbells."""
    found: list[ExerciseName] = []
    for name in names:
        if catalogue.exercises[name].equipment in HELD:
            found.append(name)
        else:
            found += of_equipment((name,), K.DUMBBELL, name, catalogue)
    fits = tuple(name for name in dict.fromkeys(found) if catalogue.exercises[name].equipment in HELD)
    return _narrowed(fits, context)


HELD = (Equipment.DUMBBELL, Equipment.KETTLEBELL)
