"""Which facts of a room could be changed by whoever is handed them."""

import dataclasses
import importlib
import pkgutil


def changeable(room: str) -> list[str]:
    """Dataclasses of a room's modules that are not frozen."""
    package = importlib.import_module(f"hatchkit.{room}")
    modules = [importlib.import_module(one.name) for one in pkgutil.iter_modules(package.__path__, f"hatchkit.{room}.")]
    kinds = {one for module in modules for one in vars(module).values() if isinstance(one, type)}
    return sorted(
        one.__qualname__ for one in kinds if dataclasses.is_dataclass(one) and not one.__dataclass_params__.frozen
    )
