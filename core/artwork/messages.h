// SPDX-License-Identifier: MIT
#pragma once

#include "core/units/values.h"

namespace sp::artwork {

#define SP_ARTWORK_FAULTS(X)                                                                                           \
    X(EmptyFile, Missing)                                                                                              \
    X(ZipFile, Foreign)                                                                                                \
    X(Bitmap, Foreign)                                                                                                 \
    X(Pdf, Foreign)                                                                                                    \
    X(PostScriptFile, Foreign)                                                                                         \
    X(BinaryDxf, Foreign)                                                                                              \
    X(Dwg, Foreign)                                                                                                    \
    X(Metafile, Foreign)                                                                                               \
    X(ProgramsOwnFile, Foreign)                                                                                        \
    X(NoDrawing, Foreign)                                                                                              \
    X(NotSvg, Foreign)                                                                                                 \
    X(GarbledSvg, Damaged)                                                                                             \
    X(Garbled, Damaged)                                                                                                \
    X(GarbledPack, Damaged)                                                                                            \
    X(FileTooLarge, TooLarge)                                                                                          \
    X(UnpacksTooLarge, TooLarge)                                                                                       \
    X(TooManyOutlines, TooLarge)                                                                                       \
    X(TooManyCorners, TooLarge)                                                                                        \
    X(TooManyRepeats, TooLarge)                                                                                        \
    X(TooManySegments, TooLarge)                                                                                       \
    X(NestedTooDeep, TooLarge)                                                                                         \
    X(StyleSheetTooInvolved, TooLarge)                                                                                 \
    X(EndlessEntities, TooLarge)                                                                                       \
    X(DiscsByTheHundred, TooLarge)                                                                                     \
    X(StonesFarApart, OutOfRange)                                                                                      \
    X(NoStones, Missing)                                                                                               \
    X(StoneWithoutSize, OutOfRange)                                                                                    \
    X(PitchBelowDiameter, OutOfRange)                                                                                  \
    X(TooManyStones, TooLarge)                                                                                         \
    X(NarrowerThanAStone, Missing)                                                                                     \
    X(BeyondAKilometre, OutOfRange)                                                                                    \
    X(ShapesTooInvolved, TooLarge)                                                                                     \
    X(AreaNotFound, Failed)                                                                                            \
    X(NoArea, Missing)                                                                                                 \
    X(NotAScale, Invalid)                                                                                              \
    X(ScaleOutOfRange, OutOfRange)

// First what was left out of a drawing, in the order of its English words, in which it is told; then what is said of a
// file without stones, warnings, and how an estimate set its stones.
#define SP_ARTWORK_NOTES(X)                                                                                            \
    X(EntityNotRead)                                                                                                   \
    X(BeyondAllMeasure)                                                                                                \
    X(BitmapInside)                                                                                                    \
    X(CopyInsideItself)                                                                                                \
    X(CopyOfNothing)                                                                                                   \
    X(CutLine)                                                                                                         \
    X(DottedLine)                                                                                                      \
    X(DrawnTwice)                                                                                                      \
    X(Ellipse)                                                                                                         \
    X(EmbeddedPage)                                                                                                    \
    X(FaultyEntity)                                                                                                    \
    X(Hidden)                                                                                                          \
    X(MarkersOnALine)                                                                                                  \
    X(Mesh)                                                                                                            \
    X(NotPainted)                                                                                                      \
    X(NotRound)                                                                                                        \
    X(OnThePaperSheet)                                                                                                 \
    X(OpenLine)                                                                                                        \
    X(OtherEntities)                                                                                                   \
    X(OtherElements)                                                                                                   \
    X(PartOfAnotherFile)                                                                                               \
    X(PatternInside)                                                                                                   \
    X(PointWithoutSize)                                                                                                \
    X(Ring)                                                                                                            \
    X(LineAroundStones)                                                                                                \
    X(Script)                                                                                                          \
    X(PlaceNotRead)                                                                                                    \
    X(FaultyShape)                                                                                                     \
    X(SplineNotRead)                                                                                                   \
    X(Stone)                                                                                                           \
    X(Text)                                                                                                            \
    X(Tilted)                                                                                                          \
    X(TooLarge)                                                                                                        \
    X(TooSmall)                                                                                                        \
    X(UnknownElement)                                                                                                  \
    X(NoOutlines)                                                                                                      \
    X(OutlinesThereAre)                                                                                                \
    X(CountOf)                                                                                                         \
    X(TurnTextIntoOutlines)                                                                                            \
    X(PlaceStonesOverBitmap)                                                                                           \
    X(DrawStonesAsCircles)                                                                                             \
    X(TurnDotsIntoOutlines)                                                                                            \
    X(TurnPatternsIntoOutlines)                                                                                        \
    X(TurnMarkersIntoOutlines)                                                                                         \
    X(DrawCirclesOnPoints)                                                                                             \
    X(ExplodeHatches)                                                                                                  \
    X(SaveAtTrueSize)                                                                                                  \
    X(StyleRulesNotRead)                                                                                               \
    X(StyleSheetElsewhere)                                                                                             \
    X(TextElsewhere)                                                                                                   \
    X(GradientsStandFor)                                                                                               \
    X(ShapesCountedWhole)                                                                                              \
    X(TransformsNotRead)                                                                                               \
    X(NarrowPieces)                                                                                                    \
    X(AlongTheOutline)                                                                                                 \
    X(TooNarrowForRows)                                                                                                \
    X(SquareRows)                                                                                                      \
    X(StaggeredRows)                                                                                                   \
    X(SquareRowsTurned)                                                                                                \
    X(StaggeredRowsTurned)                                                                                             \
    X(RowsAsFitEachPiece)                                                                                              \
    X(OutlineThenRows)                                                                                                 \
    X(OutlineThenLines)                                                                                                \
    X(OutlineWhereNarrow)                                                                                              \
    X(AlongLines)                                                                                                      \
    X(RowsAlongLinesToo)                                                                                               \
    X(RowsMayDiffer)                                                                                                   \
    X(StretchesMayDiffer)                                                                                              \
    X(NarrowPartsMayHold)                                                                                              \
    X(NothingMayDiffer)                                                                                                \
    X(LinesNotSet)                                                                                                     \
    X(ColourHidden)

SP_FAULTS(Artwork, SP_ARTWORK_FAULTS)
SP_NOTES(Artwork, SP_ARTWORK_NOTES)

} // namespace sp::artwork
