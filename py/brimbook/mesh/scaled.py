"""A model in millimeters, at the scale at which it is printed."""

from dataclasses import replace

from brimbook.mesh.model import Gap, Level, Model, Polygon, Room, Section


def scaled(model: Model, factor: float) -> Model:
    """The same model in millimeters, as large as it is printed [model].

    model: in the unit of its file [model].
    factor: millimeters that one unit of the file becomes: the unit times the scale of the print [mm per unit].
    """
    return replace(
        model, unit="mm", size=tuple(factor * side for side in model.size), surface=factor ** 2 * model.surface,
        solid=_levels(model.solid, factor), rooms=tuple(Room(_levels(room.levels, factor), factor ** 2 * room.surface) for room in model.rooms),
        gaps=tuple(Gap(*(factor * value for value in (gap.left, gap.front, gap.height, gap.around))) for gap in model.gaps),
        thinnest=model.thinnest and (factor * model.thinnest[0], factor * model.thinnest[1]),
        sections=tuple(Section(factor * each.height, _polygons(each.solid, factor), _polygons(each.rooms, factor))
                       for each in model.sections),
        cut=_polygons(model.cut, factor))


def _levels(levels: tuple[Level, ...], factor: float) -> tuple[Level, ...]:
    return tuple(Level(factor * level.height, factor ** 3 * level.volume, factor ** 2 * level.below, factor ** 2 * level.above)
                 for level in levels)


def _polygons(polygons: tuple[Polygon, ...], factor: float) -> tuple[Polygon, ...]:
    return tuple(tuple((factor * x, factor * y) for x, y in polygon) for polygon in polygons)
