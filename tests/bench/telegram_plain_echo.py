"""The plainest bot that the chat library's own documentation would lead to: polls, echoes, keeps nothing.

The yardstick of telegram_throughput.py; it loses what it holds when it is killed.
"""

from __future__ import annotations

import logging
import sys

from telegram import Update
from telegram.ext import Application, ContextTypes, MessageHandler, filters


async def echo(update: Update, context: ContextTypes.DEFAULT_TYPE) -> None:
    if update.message is not None and update.message.text is not None:
        await update.message.reply_text(f"heard: {update.message.text}")


def main(api: str, token: str) -> None:
    logging.basicConfig(level=logging.WARNING)
    application = Application.builder().token(token).base_url(f"{api}/bot").build()
    application.add_handler(MessageHandler(filters.TEXT & ~filters.COMMAND, echo))
    application.run_polling(allowed_updates=["message", "edited_message", "callback_query", "my_chat_member"])


if __name__ == "__main__":
    main(*sys.argv[1:])
