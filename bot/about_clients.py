"""A coach's words about a client: a question with her name behind it, and lines that are hers and not his own.

A coach never records sets for a client: what stands in a log was told by the one who lifted it.
"""

from __future__ import annotations

import re

from bot.coachs_clients import (
    client_addressed,
    client_behind,
    client_mistyped,
    client_named,
    client_within,
    clients_amid,
    clients_of,
)
from bot.context import context_of
from bot.intents import note_to
from bot.intents.adjust import OF_A_CLIENT, ask_of
from bot.proposals import BEGINS_A_CHANGE
from bot.replies.coaching import (
    kept_about,
    no_request_of,
    not_yours,
    not_yours_to_change,
    to_whom,
    which_client,
)
from bot.talk import keep
from bot.turn import Turn
from bot.words import behind_name
from engine.reading import read
from engine.reading.corrections.nothing_changed import LOAD_OR_REPS, UNCLEAR, WEIGHT_OF_THE_BAR
from engine.reading.values import Act, Asked, Correction, Doubt, Logged, NoSets, Outcome
from engine.reading.words.cues import any_cued
from engine.reading.words.kinds import K
from engine.reading.words.phrasebook import phrasebook
from engine.reading.words.token_walk import KNOWN
from engine.values.sets import SetDone
from storage.records import Person, Role

HEADS = {"digest ": "digest", "digest for ": "digest", "plan for ": "plan_for", "note to ": "note_to"}
TELLING = {
    **dict.fromkeys(("note for ", "tell ", "message ", "msg ", "message to "), True),
    **dict.fromkeys(("note ", "send ", "write ", "text ", "dm ", "write to ", "send to "), False),
}
"""What begins words to a client, and whether they are to her without a colon as well: "note ann is tired" is a note
about her.
"""


def told_by_name(turn: Turn) -> Act | None:
    """What a coach asks of a client of hers, whatever else the name means: "digest max", "may: +2 sets side delts"."""
    text = turn.inbound.text.strip().removeprefix("/")
    said = text.casefold()
    for head in (head for head in HEADS if said.startswith(head)):
        if client_named(turn, text[len(head) :])[0] is not None:
            return Act(HEADS[head], text=text[len(head) :])
    if any(person.name.casefold() == said for person in clients_of(turn)):
        return Act("digest", text=text)
    if "\n" not in text and client_addressed(turn, text)[0] is not None:
        return Act("adjust", text=text)
    return _to_her_coach(turn, text)


def _to_her_coach(turn: Turn, text: str) -> Act | None:
    """ "tell kit the gym was packed", from a client of Kit's."""
    for head in (head for head, plainly in TELLING.items() if plainly and text.casefold().startswith(head)):
        rest = text[len(head) :].strip()
        if any(behind_name(rest, name) is not None for name in note_to.coaches_of(turn)):
            return Act("note_to", text=rest)
    return None


def about_client(turn: Turn, outcome: Outcome) -> Outcome | None:
    """The outcome where a coach spoke of a client; None where that was answered already."""
    if Role.COACH not in turn.me.roles or not clients_of(turn):
        return outcome
    if (
        _puts_hers_right(turn, outcome)
        or _is_of_her_sets(turn, outcome)
        or _tells_her(turn)
        or _changes_hers(turn, outcome)
        or _of_nobody(turn, outcome)
    ):
        return None
    return _with_her_name_in_it(turn, outcome)


def _of_nobody(turn: Turn, outcome: Outcome) -> bool:
    """Whether the words are to or about a client whom he does not have, "digest ben", "ben: week"; it is answered."""
    text = turn.inbound.text.strip()
    of_a_plan = isinstance(outcome, Act) and outcome.name in OF_A_PLAN and text.casefold().startswith(PLAN_FOR)
    if "\n" in text or not (of_a_plan or (isinstance(outcome, NoSets) and not outcome.unread)):
        return False
    heads = [head for head in (*HEADS, *(one for one, plainly in TELLING.items() if plainly))]
    head = next((head for head in sorted(heads, key=len, reverse=True) if text.casefold().startswith(head)), "")
    who, colon, words = text[len(head) :].partition(":")
    whom = who.split()[0] if head and who.split() else who.strip()
    asks = isinstance(read(words, context_of(turn), turn.catalogue), Act) if colon and not head else bool(head)
    known = client_named(turn, whom)[0] is not None or _is_no_name(turn, whom.casefold())
    if not asks or known or not whom.isalpha() or client_within(turn, text)[0] is not None:
        return False
    example = f"{head}{{}}" if head else f"{{}}: {words.strip()}"
    turn.say(which_client(example, [one.name for one in clients_of(turn)], whom))
    return True


PLAN_FOR = "plan for "


def _is_no_name(turn: Turn, word: str) -> bool:
    """A word that means something, or a lift: "digest of the week", "plan for squats". Small words, and those for parts
    of the body in some language, are names as well: "Ben".
    """
    meaning = KNOWN[word].meaning
    means = meaning is not None and meaning.kind not in (K.FILLER, K.HEADING)
    return means or any_cued([word], NO_NAMES) or bool(turn.catalogue.owners(word))


NO_NAMES = frozenset(("tome", "week", "day", "workout", "we", "of", "the", "an", "that", "those", "all", "every"))


def _with_her_name_in_it(turn: Turn, outcome: Outcome) -> Outcome | None:
    """A question with a client's name in it is about her; other words are a note of the coach's, and said to be."""
    asks = isinstance(outcome, Act) and outcome.name in (*OF_A_CLIENT, *OF_A_PLAN)
    if not asks and not (isinstance(outcome, NoSets) and not outcome.unread):
        return outcome
    client, words = client_within(turn, turn.inbound.text.strip())
    if client is None or not words:
        return outcome
    asked = read(words.rstrip("?.!"), context_of(turn), turn.catalogue)
    if isinstance(asked, Act) and (asked.name in OF_A_CLIENT or asked.name in OF_A_PLAN):
        return Act("adjust", text=f"{client.name}: {words}")
    if asks:
        return outcome
    if turn.inbound.text.rstrip().endswith("?") or _begins_with_asking(turn.inbound.text):
        turn.say(no_request_of(client.name, words, turn.inbound.text))
    else:
        keep(turn)
        turn.say(kept_about(client.name, words))
    return None


def _begins_with_asking(text: str) -> bool:
    """ "is ann ok", without a question mark."""
    return text.split()[0].casefold() in phrasebook().cues["asking"] | ASKING


ASKING = frozenset(("is", "are", "does", "do", "did", "has", "have", "can", "will", "was", "show"))
OF_A_PLAN = frozenset(("plan", "lighten"))


def _is_of_her_sets(turn: Turn, outcome: Outcome) -> bool:
    """Whether sets were told with a client's name in front, and no colon, or with "for ann" behind: "ann squat 3x5 85",
    "squat 3x5 85 for ann"; it is answered.
    """
    behind, told = client_behind(turn, turn.inbound.text) if isinstance(outcome, Logged | Asked) else (None, "")
    if behind is None and isinstance(outcome, Logged | Asked):
        behind = _named_behind_numbers(turn) if isinstance(outcome, Logged) else None
        behind = behind or _told_beside_his_own(turn, outcome)
    if behind is not None and not BEGINS_A_CHANGE.match(told):
        turn.say(not_yours(behind.name))
        return True
    unknown = isinstance(outcome, Asked) and outcome.doubt in (Doubt.UNKNOWN_NAME, Doubt.WHOSE)
    if unknown and isinstance(outcome, Asked) and (within := client_within(turn, outcome.typed)[0]) is not None:
        turn.say(not_yours(within.name))  # "log ann bench 3x8 60"
        return True
    client, words = client_named(turn, turn.inbound.text) if unknown else (None, "")
    whole = client is not None and turn.inbound.text.strip().casefold().startswith(f"{client.name.casefold()} ")
    if client is None or not whole or not words:
        return False
    turn.say(not_yours(client.name))
    return True


def _puts_hers_right(turn: Turn, outcome: Outcome) -> bool:
    """Whether a client's sets are to be put right, "tove's squat was 90 not 85", "change tove's squat to 90"; it is
    answered, and his own stand. A name behind the numbers, "no, 97.5, tove talked to me", leaves them his own.
    """
    text = turn.inbound.text.strip()
    nothing_read = isinstance(outcome, Asked) and not outcome.readings
    corrects = isinstance(outcome, Correction) or (isinstance(outcome, NoSets) and bool(outcome.unread))
    client, words = client_within(turn, text) if (corrects or nothing_read) and "\n" not in text else (None, "")
    if client is None or not words:
        return False
    # Where no sets of his own stand, "90 not 85" reads as numbers too many.
    told = nothing_read or isinstance(outcome, Correction)
    if not told and not _is_correction(read(words, context_of(turn), turn.catalogue)):
        return False
    named = text.casefold().index(client.name.casefold())
    number = next((at for at, sign in enumerate(text) if sign.isdigit()), len(text))
    if named > number:
        return False
    turn.say(not_yours_to_change(client.name, words))
    return True


def _is_correction(outcome: Outcome) -> bool:
    """Whether the words put sets right, or begin to."""
    return isinstance(outcome, Correction) or (isinstance(outcome, NoSets) and outcome.why in CHANGING_NOTHING)


CHANGING_NOTHING = (UNCLEAR, LOAD_OR_REPS, WEIGHT_OF_THE_BAR)


def _named_behind_numbers(turn: Turn) -> Person | None:
    """ "bench 3x8 60 ann"; "bench 3x8 60 with ann" is his own."""
    sets, _, name = turn.inbound.text.strip().rstrip(".!").rpartition(" ")
    named = [one for one in clients_of(turn) if one.name.casefold() == name.casefold()]
    return named[0] if named and sets[-1:].isdigit() else None


def _told_beside_his_own(turn: Turn, outcome: Logged | Asked) -> Person | None:
    """ "squat 3x5 100 ann did 3x5 60": the client whose sets would be saved among his; not where they were left out."""
    for client, front, behind in clients_amid(turn, turn.inbound.text):
        if not _leads_to_numbers(turn, behind) or not any(map(str.isdigit, front)) or _in_company(front):
            continue
        hers = END_OF_CLAUSE.search(behind)
        rest = behind[hers.start() :].lstrip(")]") if hers is not None else ""
        if _sets_of(read(f"{front}{rest}", context_of(turn), turn.catalogue)) == _sets_of(outcome):
            return None
        turn.about = client.id
        return client
    return None


END_OF_CLAUSE = re.compile(r"[,;)\]\n]")


def _sets_of(outcome: Outcome) -> list[tuple[SetDone, ...]]:
    if isinstance(outcome, Logged):
        return [outcome.sets]
    return [one.sets for one in outcome.readings] if isinstance(outcome, Asked) else []


def _leads_to_numbers(turn: Turn, words: str) -> bool:
    """Whether a number stands behind the name, with nothing but what was done between: "did 3x5 60", "bench 3x5 60"."""
    verbs = words.lstrip(" :,").split()[:MOST_VERBS]
    number = next((at for at, word in enumerate(verbs) if word[:1].isdigit()), None)
    return number is not None and all(_is_done(turn, word) for word in verbs[:number])


MOST_VERBS = 4
"""Words up to the number, "did bench press 3x5". Common practice, no source."""


def _is_done(turn: Turn, word: str) -> bool:
    return any_cued([word.casefold()], DOING) or bool(turn.catalogue.owners(word.casefold()))


DOING = frozenset(("theydo", "auxthey"))


def _in_company(front: str) -> bool:
    """ "squat 3x5 100 with ann, 3x5 90": his own."""
    before = KNOWN[front.split()[-1].casefold()].meaning
    return before is not None and before.kind is K.WITH


def _tells_her(turn: Turn) -> bool:
    """Whether words to a client were told without "note to": they are sent where that is clear, and asked where not."""
    text = turn.inbound.text.strip()
    for head in (head for head in TELLING if text.casefold().startswith(head)):
        rest = text[len(head) :].lstrip()
        client, words = client_named(turn, rest)
        if client is None or not rest.casefold().startswith(client.name.casefold()):
            continue
        if rest[len(client.name) :].startswith(":") or TELLING[head]:
            note_to.note_to(turn, Act("note_to", text=rest))
        else:
            turn.say(to_whom(client.name, words))
        return True
    return False


def _changes_hers(turn: Turn, outcome: Outcome) -> bool:
    """Whether a change of the plan was told with "for ann" behind it, or her name mistyped in front; it is answered."""
    text = turn.inbound.text.strip()
    client, words = client_behind(turn, text)
    if client is not None and BEGINS_A_CHANGE.match(words):
        ask_of(turn, client, words)
        return True
    mistyped = client_mistyped(turn, text) if isinstance(outcome, NoSets | Asked) else ""
    if mistyped:
        words = text.partition(":")[2].strip()
        turn.say(which_client(f"{{}}: {words}", [one.name for one in clients_of(turn)], mistyped))
    return bool(mistyped)
