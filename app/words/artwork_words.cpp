// SPDX-License-Identifier: MIT
#include "app/words/sources.h"
#include "core/artwork/messages.h"

namespace sp::words {

Source sourceOf(artwork::Fault fault) {
    using enum artwork::Fault;
    switch (fault) {
    case EmptyFile: return {QT_TRANSLATE_NOOP("Artwork", "%1 is empty; save the artwork again.")};
    case ZipFile:
        return {QT_TRANSLATE_NOOP("Artwork",
                                  "%1 is a zip file, whatever its name says; unpack it and drop the drawing inside.")};
    case Bitmap:
        return {QT_TRANSLATE_NOOP("Artwork",
                                  "%1 is a bitmap (%2), and a bitmap cannot be counted; ask for the drawing as "
                                  "SVG, DXF or PLT.")};
    case Pdf:
        return {QT_TRANSLATE_NOOP("Artwork",
                                  "%1 is a PDF; open it in a drawing program, save the artwork as SVG and drop that.")};
    case PostScriptFile:
        return {QT_TRANSLATE_NOOP("Artwork",
                                  "%1 is PostScript (EPS); open it in a drawing program, save the artwork as "
                                  "SVG and drop that.")};
    case BinaryDxf: return {QT_TRANSLATE_NOOP("Artwork", "%1 is a binary DXF; save it as ASCII DXF and drop that.")};
    case Dwg: return {QT_TRANSLATE_NOOP("Artwork", "%1 is a DWG drawing; save it as ASCII DXF and drop that.")};
    case Metafile:
        return {QT_TRANSLATE_NOOP("Artwork",
                                  "%1 is a metafile (%2); open it in a drawing program, save the artwork as SVG "
                                  "and drop that.")};
    case ProgramsOwnFile:
        return {QT_TRANSLATE_NOOP("Artwork",
                                  "%1 is in a form that only the program which made it reads; open it there, "
                                  "save the artwork as SVG and drop that.")};
    case NoDrawing:
        return {QT_TRANSLATE_NOOP("Artwork",
                                  "%1 is none of SVG, DXF and PLT; save the artwork as one of these and drop that.")};
    case NotSvg:
        return {
            QT_TRANSLATE_NOOP("Artwork", "%1 is not an SVG drawing; save the artwork as SVG or DXF and drop that.")};
    case GarbledSvg:
        return {QT_TRANSLATE_NOOP(
            "Artwork", "%1 breaks off or is garbled at byte %2 (%3); save it again from the drawing program.")};
    case Garbled:
        return {QT_TRANSLATE_NOOP("Artwork",
                                  "%1 breaks off or is garbled at byte %2; save it again from the drawing program.")};
    case GarbledPack:
        return {QT_TRANSLATE_NOOP("Artwork", "%1 is compressed, and breaks off or is garbled; save it again from the "
                                             "drawing program.")};
    case UnpacksTooLarge:
        return {QT_TRANSLATE_NOOP("Artwork",
                                  "%1 unpacks to more than %2 MB, which is too large to be one design; split it "
                                  "into parts and count each.")};
    case FileTooLarge:
        return {QT_TRANSLATE_NOOP("Artwork",
                                  "%1 is too large to be one design (%2 MB); split it into parts and count each.")};
    case TooManyOutlines:
        return {QT_TRANSLATE_NOOP("Artwork", "%1 holds more than %2 outlines, which is more than one design can be; "
                                             "split it into parts and count each.")};
    case TooManyCorners:
        return {QT_TRANSLATE_NOOP("Artwork",
                                  "%1 has outlines of more than %2 corners in all; simplify its paths and try again.")};
    case TooManyRepeats:
        return {QT_TRANSLATE_NOOP("Artwork", "%1 repeats its parts more often than any one design does; expand it in a "
                                             "drawing program and save the parts that are needed.")};
    case TooManySegments:
        return {QT_TRANSLATE_NOOP(
            "Artwork", "%1 has far more lines and curves than one design does; simplify its paths and try again.")};
    case NestedTooDeep:
        return {QT_TRANSLATE_NOOP("Artwork",
                                  "%1 nests its groups more than %2 deep; ungroup the artwork and save it again.")};
    case StyleSheetTooInvolved:
        return {QT_TRANSLATE_NOOP("Artwork", "%1 has a style sheet too involved to follow; save it with colours on the "
                                             "shapes themselves and try again.")};
    case EndlessEntities:
        return {QT_TRANSLATE_NOOP(
            "Artwork", "%1 defines abbreviations that unfold without end; save it as plain SVG and try again.")};
    case DiscsByTheHundred:
        return {QT_TRANSLATE_NOOP(
            "Artwork", "The discs of %1 lie on one another by the hundred; remove the copies and try again.")};
    case StonesFarApart: return {QT_TRANSLATE_NOOP("Artwork", "The stones of %1 lie over %2 m; check the scale.")};
    case NoStones: return {QT_TRANSLATE_NOOP("Artwork", "%1 has no discs of a stone's size; %2. %3")};
    case StoneWithoutSize:
        return {QT_TRANSLATE_NOOP(
            "Artwork", "A stone needs a diameter and its distance from the edge cannot be negative; check both.")};
    case PitchBelowDiameter:
        return {QT_TRANSLATE_NOOP(
            "Artwork", "A pitch of %1 mm sets stones of %2 mm on top of each other; give at least their diameter.")};
    case TooManyStones:
        return {QT_TRANSLATE_NOOP("Artwork", "%1 would take more than %2 stones at this size; check the scale.")};
    case NarrowerThanAStone:
        return {QT_TRANSLATE_NOOP(
            "Artwork", "No part of %1 is wide enough for a stone of %2 mm; take a smaller stone or a larger size.")};
    case BeyondAKilometre:
        return {QT_TRANSLATE_NOOP("Artwork", "%1 reaches over a kilometre at this scale; check the scale.")};
    case ShapesTooInvolved:
        return {QT_TRANSLATE_NOOP(
            "Artwork",
            "The shapes of %1 are too involved to estimate (%2 corners); simplify the paths and try again.")};
    case AreaNotFound:
        return {QT_TRANSLATE_NOOP("Artwork",
                                  "The area of %1 could not be worked out (%2); simplify the paths and try again.")};
    case NoArea:
        return {QT_TRANSLATE_NOOP("Artwork", "%1 has no closed or filled shape to set stones on; close its outlines, "
                                             "or turn text into outlines, and try again.")};
    case NotAScale:
        return {QT_TRANSLATE_NOOP(
            "Artwork", "\"%1\" is not a scale; write 96 dpi, mm, in, or the millimetres one unit is, as in 0.2646.")};
    case ScaleOutOfRange:
        return {
            QT_TRANSLATE_NOOP("Artwork", "A scale of %1 makes the drawing absurdly small or large; check the number.")};
    }
    return {};
}

Source sourceOf(artwork::Note note) {
    using enum artwork::Note;
    switch (note) {
    case EntityNotRead: return {QT_TRANSLATE_NOOP("Artwork", "%1 not read")};
    case BeyondAllMeasure: return {QT_TRANSLATE_NOOP("Artwork", "beyond all measure")};
    case BitmapInside: return {QT_TRANSLATE_N_NOOP("Artwork", "bitmaps"), "bitmap"};
    case CopyInsideItself:
        return {QT_TRANSLATE_N_NOOP("Artwork", "copies of a part inside itself"), "copy of a part inside itself"};
    case CopyOfNothing:
        return {QT_TRANSLATE_N_NOOP("Artwork", "copies of a part that is not in the file"),
                "copy of a part that is not in the file"};
    case CutLine: return {QT_TRANSLATE_N_NOOP("Artwork", "cut lines or large shapes"), "cut line or large shape"};
    case DottedLine:
        return {QT_TRANSLATE_N_NOOP("Artwork", "dotted lines, their dots not counted"),
                "dotted line, its dots not counted"};
    case DrawnTwice: return {QT_TRANSLATE_NOOP("Artwork", "drawn twice")};
    case Ellipse: return {QT_TRANSLATE_N_NOOP("Artwork", "ellipses"), "ellipse"};
    case EmbeddedPage:
        return {QT_TRANSLATE_N_NOOP("Artwork", "embedded pages, not drawings"), "embedded page, not a drawing"};
    case FaultyEntity:
        return {QT_TRANSLATE_N_NOOP("Artwork", "entities with a mistake in them"), "entity with a mistake in it"};
    case Hidden: return {QT_TRANSLATE_NOOP("Artwork", "hidden")};
    case MarkersOnALine:
        return {QT_TRANSLATE_N_NOOP("Artwork", "lines with markers, the markers not counted"),
                "line with markers, the markers not counted"};
    case Mesh: return {QT_TRANSLATE_N_NOOP("Artwork", "meshes, not outlines"), "mesh, not an outline"};
    case NotPainted: return {QT_TRANSLATE_NOOP("Artwork", "not painted")};
    case NotRound: return {QT_TRANSLATE_NOOP("Artwork", "not round")};
    case OnThePaperSheet: return {QT_TRANSLATE_NOOP("Artwork", "on the paper sheet, not in the drawing")};
    case OpenLine: return {QT_TRANSLATE_N_NOOP("Artwork", "open lines"), "open line"};
    case OtherEntities: return {QT_TRANSLATE_N_NOOP("Artwork", "other entities not read"), "other entity not read"};
    case OtherElements: return {QT_TRANSLATE_N_NOOP("Artwork", "other unknown elements"), "other unknown element"};
    case PartOfAnotherFile:
        return {QT_TRANSLATE_N_NOOP("Artwork", "parts of another file, not opened"),
                "part of another file, not opened"};
    case PatternInside:
        return {QT_TRANSLATE_N_NOOP("Artwork", "shapes filled with a pattern, what it shows not counted"),
                "shape filled with a pattern, what it shows not counted"};
    case PointWithoutSize: return {QT_TRANSLATE_N_NOOP("Artwork", "points without a size"), "point without a size"};
    case Ring: return {QT_TRANSLATE_N_NOOP("Artwork", "rings of other discs"), "ring of another disc"};
    case LineAroundStones:
        return {QT_TRANSLATE_N_NOOP("Artwork", "round lines around stones"), "round line around stones"};
    case Script: return {QT_TRANSLATE_N_NOOP("Artwork", "scripts, never run"), "script, never run"};
    case FaultyShape:
        return {QT_TRANSLATE_N_NOOP("Artwork", "shapes with a mistake in them, read as far as they go"),
                "shape with a mistake in it, read as far as it goes"};
    case PlaceNotRead:
        return {QT_TRANSLATE_N_NOOP("Artwork", "discs whose place or size cannot be read"),
                "disc whose place or size cannot be read"};
    case SplineNotRead: return {QT_TRANSLATE_N_NOOP("Artwork", "splines not read"), "spline not read"};
    case Stone: return {QT_TRANSLATE_N_NOOP("Artwork", "stones"), "stone"};
    case Text: return {QT_TRANSLATE_N_NOOP("Artwork", "texts not turned to outlines"), "text not turned to outlines"};
    case Tilted: return {QT_TRANSLATE_NOOP("Artwork", "tilted out of the plane")};
    case TooLarge: return {QT_TRANSLATE_NOOP("Artwork", "too large")};
    case TooSmall: return {QT_TRANSLATE_NOOP("Artwork", "too small")};
    case UnknownElement: return {QT_TRANSLATE_N_NOOP("Artwork", "unknown elements %1"), "unknown element %1"};
    case NoOutlines: return {QT_TRANSLATE_NOOP("Artwork", "it has no outlines at all")};
    case OutlinesThereAre: return {QT_TRANSLATE_NOOP("Artwork", "what it has: %1")};
    case CountOf: return {QT_TRANSLATE_NOOP("Artwork", "%1 %2")};
    case TurnTextIntoOutlines:
        return {QT_TRANSLATE_NOOP("Artwork", "Turn the text into outlines of stones and save it again.")};
    case PlaceStonesOverBitmap:
        return {QT_TRANSLATE_NOOP("Artwork", "A bitmap cannot be counted; place stones over it as circles.")};
    case DrawStonesAsCircles:
        return {QT_TRANSLATE_NOOP("Artwork", "Draw its stones as circles, or estimate from its shape instead.")};
    case TurnDotsIntoOutlines:
        return {QT_TRANSLATE_NOOP("Artwork",
                                  "The dots of a dotted line are no outlines; turn its stroke into outlines, so "
                                  "that each dot is a circle, and save it again.")};
    case TurnPatternsIntoOutlines:
        return {QT_TRANSLATE_NOOP("Artwork", "What a pattern shows has no outlines of its own; expand the pattern into "
                                             "single objects and save it again.")};
    case TurnMarkersIntoOutlines:
        return {QT_TRANSLATE_NOOP("Artwork",
                                  "Markers on a line are no outlines; turn them into objects of their own and "
                                  "save it again.")};
    case DrawCirclesOnPoints:
        return {QT_TRANSLATE_NOOP("Artwork",
                                  "A point has no size; draw a circle as large as its stone on each point and "
                                  "save it again.")};
    case ExplodeHatches:
        return {QT_TRANSLATE_NOOP("Artwork", "A hatch has no outlines of its own; explode it, or draw the outline it "
                                             "fills, and save it again.")};
    case SaveAtTrueSize:
        return {QT_TRANSLATE_NOOP("Artwork", "Its discs are %1 to %2 mm across, stones %3 to %4 mm; save it at its "
                                             "true size, or estimate from its shape instead.")};
    case StyleRulesNotRead:
        return {QT_TRANSLATE_N_NOOP("Artwork", "%n style rules were not understood and left aside."),
                "%n style rule was not understood and left aside."};
    case StyleSheetElsewhere:
        return {
            QT_TRANSLATE_NOOP("Artwork", "The drawing asks for a style sheet in another file, which was not opened.")};
    case TextElsewhere:
        return {QT_TRANSLATE_NOOP("Artwork", "The drawing asks for text in another file, which was not opened.")};
    case GradientsStandFor:
        return {QT_TRANSLATE_N_NOOP("Artwork", "%n gradients stand for the colours of their middle."),
                "%n gradient stands for the colour of its middle."};
    case ShapesCountedWhole:
        return {QT_TRANSLATE_N_NOOP("Artwork", "%n shapes stand behind a clip path or mask and are counted whole."),
                "%n shape stands behind a clip path or mask and is counted whole."};
    case TransformsNotRead:
        return {QT_TRANSLATE_N_NOOP("Artwork",
                                    "%n transforms could not be read; what they move may stand in the wrong place."),
                "%n transform could not be read; what it moves may stand in the wrong place."};
    case NarrowPieces:
        return {QT_TRANSLATE_N_NOOP("Artwork", "%n of %2 separate pieces of %3 are narrower than a stone and hold "
                                               "none; take a smaller stone or a larger size."),
                "%n of %2 separate pieces of %3 is narrower than a stone and holds none; take a smaller stone or a "
                "larger size."};
    case AlongTheOutline: return {QT_TRANSLATE_NOOP("Artwork", "along the outline")};
    case TooNarrowForRows: return {QT_TRANSLATE_NOOP("Artwork", "along the outline, as it is too narrow for rows")};
    case SquareRows: return {QT_TRANSLATE_NOOP("Artwork", "square rows")};
    case StaggeredRows: return {QT_TRANSLATE_NOOP("Artwork", "staggered rows")};
    case SquareRowsTurned: return {QT_TRANSLATE_NOOP("Artwork", "square rows turned by %1 degrees")};
    case StaggeredRowsTurned: return {QT_TRANSLATE_NOOP("Artwork", "staggered rows turned by %1 degrees")};
    case RowsAsFitEachPiece: return {QT_TRANSLATE_NOOP("Artwork", "rows, those of each piece turned as fits it best")};
    case OutlineThenRows: return {QT_TRANSLATE_NOOP("Artwork", "along the outline, then %1")};
    case OutlineThenLines: return {QT_TRANSLATE_NOOP("Artwork", "along the outline, then in lines beside it")};
    case OutlineWhereNarrow: return {QT_TRANSLATE_NOOP("Artwork", "%1; along the outline where a piece is narrow")};
    case AlongLines: return {QT_TRANSLATE_NOOP("Artwork", "in a row along the lines")};
    case RowsAlongLinesToo: return {QT_TRANSLATE_NOOP("Artwork", "%1; in a row along the lines")};
    case RowsMayDiffer:
        return {QT_TRANSLATE_NOOP("Artwork", "Laid in other rows, the areas hold up to %1 fewer or %2 more.")};
    case StretchesMayDiffer:
        return {QT_TRANSLATE_N_NOOP("Artwork", "Each of %n stretches from corner to corner may take one more or less."),
                "The one stretch along the edge may take one more or less."};
    case NarrowPartsMayHold:
        return {QT_TRANSLATE_N_NOOP("Artwork", "%n narrow parts hold no stone; widened, they take up to %2."),
                "%n narrow part holds no stone; widened, it takes up to %2."};
    case NothingMayDiffer: return {QT_TRANSLATE_NOOP("Artwork", "There is no other way to lay them.")};
    case LinesNotSet:
        return {QT_TRANSLATE_N_NOOP("Artwork", "%n lines that end somewhere are not set with stones."),
                "%n line that ends somewhere is not set with stones."};
    case ColourHidden: return {QT_TRANSLATE_NOOP("Artwork", "Nothing of %1 is to be seen; other shapes lie on it.")};
    }
    return {};
}

} // namespace sp::words
