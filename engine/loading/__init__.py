"""What can really be loaded: bars, plates, dumbbell racks, stacks."""

from engine.loading.exercises import empty_bar, loadable_for
from engine.loading.gym import Bar, Gym, Plates, Stack, default_gym
from engine.loading.gym_words import GymRead, gym_in_words, read_gym
from engine.loading.loadable import Loadable
from engine.loading.plates import Loaded, PlateAnswer, plates_for
from engine.loading.ramp import WarmUp, warm_ups

__all__ = [
    "Bar",
    "Gym",
    "GymRead",
    "Loadable",
    "Loaded",
    "PlateAnswer",
    "Plates",
    "Stack",
    "WarmUp",
    "default_gym",
    "empty_bar",
    "gym_in_words",
    "loadable_for",
    "plates_for",
    "read_gym",
    "warm_ups",
]
