"""Requests that replies tell people to spell one way: switches, the clock, the gym, plates, a coach left, extra sets.

line = ("summary" | "digest" | "reactions") ("on" | "off")
     | "forget" WORD | "zone" PLACE | "leave coach" | "stop reminders"
     | "my gym" [":" WORDS] | "plates" [LOAD] | "warm up" [LIFT] | "best" LIFT
     | "plan" (["as"] "text" | "from" DAY) | "help plan" | "check" ("with" | "without") WORDS
     | ("more" | "less") MUSCLE | ["+" | "-"] N "sets" MUSCLE | NAME ":" any of the last two
     | "rack taken" | "no barbell" | "only dumbbells today"

One line, a few words; what is not spelt so goes on to the phrases of every language.
"""

from __future__ import annotations

import re
from dataclasses import replace

from engine.catalogue.catalogue import Catalogue
from engine.reading.requests.part_read import UNCLEAR
from engine.reading.values import Act, Context
from engine.values.ids import ExerciseName
from engine.values.muscles import Muscle

LONGEST = 90
SWITCH = re.compile(r"(summary|digest|reactions) (on|off)")
ZONE = re.compile(r"(?:my )?(?:time ?zone|zone|clock)(?: is)?:? ([^\d]{2,40})")
LEAVE = re.compile(r"/?(?:leave|stop|remove|quit|drop)(?: (?:my|the))? coach(?:ing)?|/leave")
STOP_REMINDERS = re.compile(
    r"(?:stop|no|no more|cancel)(?: (?:the|my|all))? reminders?|reminders? off|turn (?:off )?reminders?(?: off)?"
)
FORGET = re.compile(r"forget ([^\d]{1,40})")
POINTING = frozenset(
    ("the", "that", "it", "last", "this", "my", "about", "what", "everything", "me", "set", "those", "them")
)
"""Words behind "forget" that point at sets, not at a word that was taught."""
DAYS = frozenset(("today", "tonight", "now"))
"""Words that end no name: "forget curls today" leaves them out."""
GYM = re.compile(r"(?:my )?gym(?:(?: is| has|:) ?(.{1,80}))?")
EQUIPMENT = re.compile(r"my (plates|bar|dumbbells|kettlebells|stack|collars)(?: are| is)?:? (.{1,60})")
PLATES = re.compile(r"/?(?:what |which )?plates(?: for)?(?: (\d[\d.,]{0,7} ?(?:kg|lb|lbs)?))?")
WARM_UP = re.compile(
    r"/?(?:(?:what'?s |what is |show )?(?:me )?(?:my |the |a )?)warm[ -]?up(?: for)?(?: ([^\d]{2,50}))?"
)
BEST = re.compile(r"(?:best|(?:(?:what'?s |what is )?my )?(?:e|est\.? ?)?1 ?rm(?: for| on| of)?) ([^\d]{2,50})")
WARM_UP_TO = re.compile(
    r"warm[ -]?ups?(?: to| for| at)? (\d[\d.,]{0,5}) ?(kg|lbs?)?(?:(?: for| on| of)?(?: the)? ([^\d]{2,50}))?"
)
PLAN = re.compile(
    r"(?:show (?:me )?|send (?:me )?|print |give me )?(?:my |the )?plan "
    r"(?:(?:as |in )?(?:a |plain )?(text|words|message)|(all|whole|from [a-z]{3,12}|starts? [a-z]{3,12}))"
)
PLAN_HELP = re.compile(r"help (?:plan|plans|progression)|plan help|how do i (?:write|make|send) a plan")
CHECK = re.compile(r"check (?:my |the )?(?:plan )?((?:with|without) .{2,50})")
FEWER_OR_MORE = re.compile(r"(?:more|less|fewer) .{2,40}")
SETS_OF = re.compile(r"[+-]? ?\d{1,2}(?: more| fewer| less)? sets?(?: of| for| to)? .{2,40}|.{2,40} [+-]\d{1,2}")
SETS_OF_A_LIFT = re.compile(
    r"([+-]) ?(\d{1,2}) sets?(?: of| for| to| on)? ([^\d]{2,40})|([^\d]{2,40}) ([+-]) ?(\d{1,2}) sets?"
)
TAKEN = re.compile(
    r"(?:the )?(?:\w{3,12} )?(?:rack|machine|bench|bar|barbell|cables?|station) (?:is |are )?"
    r"(?:taken|busy|occupied|in use)"
    r"|no (?:rack|barbell|machine|bench|cables?|dumbbells)(?: free)?"
    r"|someone(?: is|'s) (?:on|in) the (?:rack|machine|bench)"
)
EQUIPMENT_FOUND = r"(dumbbells|barbells?|machines|cables|kettlebells|bands)(?: only)?(?: today| here| tonight| now)*"
ONLY_HAVE = re.compile(
    r"(?:i |we |ive |i've )?(?:only|just)(?: have| got| have got)? " + EQUIPMENT_FOUND + "|"
    r"(?:i |we |ive |i've )?(?:have|got|have got) (?:only|just|nothing but) " + EQUIPMENT_FOUND
)
GROUPS = ("arms", "legs", "shoulders", "back", "delts", "core", "traps")


def spelt(cleaned: str, context: Context, catalogue: Catalogue) -> Act | None:
    """The intent of a line spelt as a reply told; None for anything else."""
    said = " ".join(cleaned.casefold().strip(" .!?").split())
    if not said or len(said) > LONGEST or "\n" in cleaned.strip():
        return None
    found = (
        _settings(said, cleaned) or _gym(said, context, catalogue) or _plan(said) or _sets_of_a_muscle(said, cleaned)
    )
    return found or _sets_of_a_lift(said, context, catalogue)


def _settings(said: str, cleaned: str) -> Act | None:
    if found := SWITCH.fullmatch(said):
        return Act("settings", text=f"{found[1]} {found[2]}")
    if found := ZONE.fullmatch(said):
        return Act("settings", text=f"zone {cleaned.strip()[-len(found[1]) :]}")
    if LEAVE.fullmatch(said):
        return Act("accept", text="leave coach")
    if STOP_REMINDERS.fullmatch(said):
        return Act("remind", text="stop")
    return forgets(cleaned) or (Act("erase") if said == "/deletedata" else None)


def forgets(cleaned: str) -> Act | None:
    """A taught word taken back; also where a lift of that name was just logged, whose sets another word deletes."""
    found = FORGET.fullmatch(" ".join(cleaned.casefold().strip(" .!?").split()))
    told = found[1].split() if found else []
    return Act("forget", text=" ".join(told)) if told and told[0] not in POINTING and told[-1] not in DAYS else None


def _gym(said: str, context: Context, catalogue: Catalogue) -> Act | None:
    if (found := GYM.fullmatch(said)) and said.startswith(("my gym", "gym:")):
        return Act("gym", text=found[1] or "")
    if found := EQUIPMENT.fullmatch(said):
        return Act("gym", text=f"{found[1]} {found[2]}")
    if found := PLATES.fullmatch(said):
        return Act("plates", text=found[1] or "")
    if found := WARM_UP.fullmatch(said):
        return _of_lift("warmup", found[1], context, catalogue)
    if (found := WARM_UP_TO.fullmatch(said)) and (found[3] or context.doing is None):
        asked = _of_lift("warmup", found[3], context, catalogue)
        return replace(asked, text=found[1].replace(",", ".")) if asked is not None else None
    if found := BEST.fullmatch(said):
        return _of_lift("best", found[1], context, catalogue)
    if found := ONLY_HAVE.fullmatch(said):
        return _with_only((found[1] or found[2]).rstrip("s"), context, catalogue)
    return _taken(said, context) if TAKEN.fullmatch(said) else None


def _taken(said: str, context: Context) -> Act:
    """The lift in hand on something else; where the bench is taken, the planned bench press."""
    benches = [one.exercise for one in context.plan if "bench" in one.exercise]
    if "bench" in said.split() and benches and "bench" not in (context.doing or ""):
        return Act("swap", exercise=benches[0])
    return Act("swap", exercise=context.doing)


def _with_only(kind: str, context: Context, catalogue: Catalogue) -> Act:
    """The first lift on for today that needs something else, for something that this kind of equipment does."""
    lifts = [one.exercise for one in context.plan]
    known = [(lift, catalogue.get(lift)) for lift in lifts]
    other = next((lift for lift, one in known if one is not None and one.equipment.value != kind), None)
    return Act("swap", exercise=other or context.doing, text=f"only {kind}")


def _of_lift(name: str, words: str | None, context: Context, catalogue: Catalogue) -> Act | None:
    """The intent with the lift that the words name; None where they name none, or several that nothing tells apart."""
    if words is None:
        return Act(name)
    owners = catalogue.closest(words)
    planned: list[ExerciseName] = [one.exercise for one in context.plan if one.exercise in owners]
    fits = [context.taught[words]] if words in context.taught else planned or list(owners)
    return Act(name, exercise=fits[0]) if len(fits) == 1 else None


def _plan(said: str) -> Act | None:
    if found := PLAN.fullmatch(said):
        return Act("plan", text="text" if found[1] else found[2])
    if PLAN_HELP.fullmatch(said):
        return Act("help", text="plan")
    found = CHECK.fullmatch(said)
    return Act("check", text=found[1]) if found else None


def _sets_of_a_muscle(said: str, cleaned: str) -> Act | None:
    """Extra sets for a muscle: one's own, or a client's whose name stands before a colon."""
    who, colon, what = said.partition(":")
    what = what.strip() if colon else said
    if not (FEWER_OR_MORE.fullmatch(what) or SETS_OF.fullmatch(what)) or not _names_a_muscle(what):
        return None
    if len([word for word in what.split() if word[0].isdigit()]) > 1 or TIMES.search(what):
        return None  # "3 sets of 8 with 40, lower back tweaked": sets that were done
    if not colon:
        return Act("more", text=said)
    return Act("adjust", text=cleaned.strip()) if 0 < len(who.split()) <= 2 else None


def _sets_of_a_lift(said: str, context: Context, catalogue: Catalogue) -> Act | None:
    """ "-1 set squat": of the log or of the plan nobody can say; what to send for either."""
    found = SETS_OF_A_LIFT.fullmatch(said)
    if found is None:
        return None
    sign, count, words = found[1] or found[5], found[2] or found[6], found[3] or found[4]
    named = _of_lift("", words, context, catalogue)
    if named is None or named.exercise is None:
        return None
    lift, change = named.exercise, f"{sign}{count}"
    shown = f"what if {change} {'set' if change[1:] == '1' else 'sets'} {lift} shows the plan with it"
    taken = f"delete last {lift} set takes one out of the log" if change[0] == "-" else "log a set and it counts"
    return Act(UNCLEAR, text=f"{taken}; {shown}")


TIMES = re.compile(r"\d ?[x×*] ?\d")
"""A sign of sets: "back ext 3x15 +25" asks for nothing."""


def _names_a_muscle(said: str) -> bool:
    words = said.split()
    return any(muscle.value in said for muscle in Muscle) or any(group in words for group in GROUPS)
