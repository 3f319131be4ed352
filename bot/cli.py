"""The command line: chat, read, replay, serve."""

from __future__ import annotations

import argparse
import os
import sys
from collections.abc import Sequence
from dataclasses import replace

DESCRIPTION = "Chalkwire logs the sets you text and answers with what to lift next and why."


def main(argv: Sequence[str] | None = None) -> int:
    """The exit status of one command."""
    arguments = list(sys.argv[1:] if argv is None else argv)
    # Reading starts in a fraction of the time that the database and the chat library take: nothing else is imported.
    if arguments[:1] == ["read"]:
        from bot import read_command

        return read_command.run(arguments[1:])
    options = _parser().parse_args(arguments)
    try:
        status: int = options.run(options)
    except KeyboardInterrupt:
        return 130
    except BrokenPipeError:
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
        return 0
    return status


def _parser() -> argparse.ArgumentParser:
    parser = argparse.ArgumentParser(prog="chalkwire", description=DESCRIPTION)
    commands = parser.add_subparsers(required=True, metavar="COMMAND")
    _add_chat(commands)
    _add_read(commands)
    _add_replay(commands)
    _add_serve(commands)
    return parser


def _add_read(commands: argparse._SubParsersAction[argparse.ArgumentParser]) -> None:
    commands.add_parser("read", help="how would this message be read? (chalkwire read --help)", add_help=False)


def _add_chat(commands: argparse._SubParsersAction[argparse.ArgumentParser]) -> None:
    chat = commands.add_parser("chat", help="talk to it in this terminal")
    chat.add_argument("--as", dest="name", default="me", metavar="NAME", help="be this person (a coach, say)")
    chat.add_argument("--db", metavar="URL", help="SQLAlchemy URL or SQLite file; default: the user's data directory")
    chat.add_argument(
        "--demo", action="store_true", help="an invented athlete a few weeks into a plan; nothing is kept"
    )
    chat.set_defaults(run=_chat)


def _add_replay(commands: argparse._SubParsersAction[argparse.ArgumentParser]) -> None:
    replay = commands.add_parser("replay", help="play a transcript with its own clock and print every reply")
    replay.add_argument("file", metavar="FILE", help="the transcript")
    replay.add_argument("--db", metavar="URL", help="the database to play on; default: a fresh one in memory")
    replay.add_argument("--jsonl", action="store_true", help="one JSON line for each outgoing message")
    replay.add_argument("--sets", metavar="FILE", help="at the end, write one JSON line for each set that stands")
    replay.add_argument("--pictures", metavar="DIR", help="write pictures and documents there")
    replay.set_defaults(run=_replay)


def _add_serve(commands: argparse._SubParsersAction[argparse.ArgumentParser]) -> None:
    serve = commands.add_parser("serve", help="run the Telegram bot (token in CHALKWIRE_TOKEN)")
    serve.add_argument("--db", metavar="URL", help="the database; default: CHALKWIRE_DB or the user's data directory")
    serve.set_defaults(run=_serve)


def _chat(options: argparse.Namespace) -> int:
    from bot import terminal

    return terminal.run(name=options.name, url=options.db, demo=options.demo)


def _replay(options: argparse.Namespace) -> int:
    from bot import replay

    return replay.run(options.file, options.db, jsonl=options.jsonl, sets=options.sets, pictures=options.pictures)


def _serve(options: argparse.Namespace) -> int:
    from bot import serve
    from bot.clock import machine_zone
    from bot.handle import Product
    from bot.product_settings import database_url

    settings = serve.ServeSettings(
        token=os.environ.get("CHALKWIRE_TOKEN", ""),
        database=database_url(options.db),
    )
    if api := os.environ.get("CHALKWIRE_TELEGRAM_API"):
        settings = replace(settings, api=api)
    return serve.run(settings, lambda database: Product(database, machine_zone()))
