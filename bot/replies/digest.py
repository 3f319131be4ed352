"""A coach's week: who needs a look and why, then everyone."""

from __future__ import annotations

from collections.abc import Sequence

from bot.messages import Button
from bot.replies.dates import day
from bot.replies.names import listed
from bot.replies.reply import Reply, row
from bot.replies.trouble import quoted
from bot.replies.week import THIS_WEEK, sessions_text, volume_json, week_so_far
from bot.week_values import Client, Week
from engine.progression.words import counted

LOOKED_AT = 6


def digest_card(clients: Sequence[Client]) -> Reply:
    """All clients of a coach, those who need a look first."""
    if not clients:
        return Reply("No clients yet. Send: invite")
    week = clients[0].week
    lines = [f"Week {week.first.isocalendar().week}, {len(clients)} {'client' if len(clients) == 1 else 'clients'}"]
    look = [client for client in clients if client.attention]
    if look:
        lines.append("Look first:")
        lines += [f"{client.name}: {'; '.join(client.attention)}" for client in look[:LOOKED_AT]]
        if len(look) > LOOKED_AT:
            lines.append(f"and {len(look) - LOOKED_AT} more")
    fine = [client for client in clients if not client.attention]
    if fine and len(fine) + len(look) <= LOOKED_AT:
        lines += [f"{client.name}: {_line(client.week)}" for client in fine]
    elif fine:
        lines.append(f"On plan: {listed([client.name for client in fine], 8)}")
    shown = (look or list(clients))[:3]
    buttons = [Button(client.name[:14], f"v1:client:{client.name[:16]}") for client in shown if client.name.isascii()]
    return Reply("\n".join(lines), (tuple(buttons),) if buttons else (), volume=_volume(clients))


def _line(week: Week) -> str:
    """One client's week in one line."""
    up = f", up: {listed([moved.exercise for moved in week.up], 2)}" if week.up else ""
    return f"{sessions_text(week)}, {counted(week.sets, 'set')}{up}"


def _volume(clients: Sequence[Client]) -> dict[str, object]:
    """One client's volume as it is; several clients' by name."""
    if len(clients) == 1:
        return volume_json(clients[0].week.volume)
    return {client.name: volume_json(client.week.volume) for client in clients}


def client_card(name: str, week: Week) -> Reply:
    """One client's week."""
    reply = week_so_far(week)
    lines = reply.text.split("\n")
    lines[0] = lines[0].replace(THIS_WEEK, f"{name}, week {week.first.isocalendar().week}")
    lines = [line for line in lines if not line.startswith("Pain noted")]
    lines += [f"Shared {day(note.on)}: {quoted(note.text, 60)}" for note in week.shared[:2]]
    if week.coming is not None and week.coming.on is not None:
        lines.append(f"Next: {day(week.coming.on)}, {week.coming.day.label}")
    return Reply("\n".join(lines), row(Button("All clients", "v1:digest")), volume=reply.volume)
