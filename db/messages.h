// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/message.h"

namespace sp::db {

// In the order of: anything of the book; files and folders; SQLite; opening a book; why a book is open for reading
// only; records and what lies beside them; fields; things of the book; quotes; actions.
#define SP_DB_FAULTS(X)                                                                                                \
    X(FigureTooLarge, Invalid)                                                                                         \
    X(NotFinished, Failed)                                                                                             \
    X(NotFinishedBecause, Failed)                                                                                      \
    X(NoRandomNumbers, Failed)                                                                                         \
    X(DiskFull, Full)                                                                                                  \
    X(DiskFullOrFailing, Full)                                                                                         \
    X(NotClosedProperly, ReadOnly)                                                                                     \
    X(FileNotWritable, ReadOnly)                                                                                       \
    X(FolderNotWritable, ReadOnly)                                                                                     \
    X(NotUsableHere, ReadOnly)                                                                                         \
    X(NotReadable, ReadOnly)                                                                                           \
    X(NotUsable, Failed)                                                                                               \
    X(NotReadOrWritten, Failed)                                                                                        \
    X(NotReadFromDisk, Failed)                                                                                         \
    X(MayBeDone, Failed)                                                                                               \
    X(Stopped, Failed)                                                                                                 \
    X(NoSuchBook, Missing)                                                                                             \
    X(FolderOrDevice, Foreign)                                                                                         \
    X(NoSuchFolder, Missing)                                                                                           \
    X(FileExists, Conflict)                                                                                            \
    X(NoPlainFile, Invalid)                                                                                            \
    X(ExportNeedsNewFolder, Conflict)                                                                                  \
    X(StaysABook, Conflict)                                                                                            \
    X(SecondName, Conflict)                                                                                            \
    X(UsedElsewhere, Busy)                                                                                             \
    X(BookDamaged, Damaged)                                                                                            \
    X(IndexDamaged, Damaged)                                                                                           \
    X(BackupDamaged, Damaged)                                                                                          \
    X(DamagedOrNoBook, Damaged)                                                                                        \
    X(ReadTooLong, Damaged)                                                                                            \
    X(TooLargeForBook, Invalid)                                                                                        \
    X(AlreadyHeld, Conflict)                                                                                           \
    X(ValueNotTaken, Invalid)                                                                                          \
    X(NotEnoughMemory, Failed)                                                                                         \
    X(SqliteTooOld, Failed)                                                                                            \
    X(SettingNotTaken, Failed)                                                                                         \
    X(LimitNotTaken, Failed)                                                                                           \
    X(NotSafeHere, Failed)                                                                                             \
    X(ColumnDamaged, Damaged)                                                                                          \
    X(OpenHere, Busy)                                                                                                  \
    X(EmptyFile, Foreign)                                                                                              \
    X(NoJobBook, Foreign)                                                                                              \
    X(OtherDatabase, Foreign)                                                                                          \
    X(AlteredElsewhere, Foreign)                                                                                       \
    X(WrittenOtherwise, Foreign)                                                                                       \
    X(BookTooNew, TooNew)                                                                                              \
    X(FormatUnknown, TooNew)                                                                                           \
    X(MostIsMissing, Damaged)                                                                                          \
    X(BeginningDamaged, Damaged)                                                                                       \
    X(EndIsMissing, Damaged)                                                                                           \
    X(StructureDamaged, Damaged)                                                                                       \
    X(NotCopiedWhole, Damaged)                                                                                         \
    X(BrokenReference, Damaged)                                                                                        \
    X(InNetworkFolder, ReadOnly)                                                                                       \
    X(InSyncedFolder, ReadOnly)                                                                                        \
    X(BookNotWritable, ReadOnly)                                                                                       \
    X(NoLockInFolder, ReadOnly)                                                                                        \
    X(HeldBy, ReadOnly)                                                                                                \
    X(HeldElsewhere, ReadOnly)                                                                                         \
    X(BookGone, ReadOnly)                                                                                              \
    X(BookReplaced, ReadOnly)                                                                                          \
    X(BookOverwritten, ReadOnly)                                                                                       \
    X(OlderSealBroken, ReadOnly)                                                                                       \
    X(OlderWithoutRoom, ReadOnly)                                                                                      \
    X(OlderWithoutBackup, ReadOnly)                                                                                    \
    X(RecordUnreadable, Damaged)                                                                                       \
    X(RecordKeyDamaged, Damaged)                                                                                       \
    X(RecordHoldsMore, Damaged)                                                                                        \
    X(RecordOfAnotherSort, Damaged)                                                                                    \
    X(RecordTooNew, TooNew)                                                                                            \
    X(RecordHoldsLater, TooNew)                                                                                        \
    X(RecordDamaged, Damaged)                                                                                          \
    X(ValueDamaged, Damaged)                                                                                           \
    X(HalfACertificate, Damaged)                                                                                       \
    X(DrawingDamaged, Damaged)                                                                                         \
    X(OrderNotAsListed, Damaged)                                                                                       \
    X(ShopNotAsKept, Damaged)                                                                                          \
    X(SealBroken, Damaged)                                                                                             \
    X(QuoteNotAsSealed, Damaged)                                                                                       \
    X(MovementMissing, Damaged)                                                                                        \
    X(PictureMisnamed, Invalid)                                                                                        \
    X(CountsUnreadable, Invalid)                                                                                       \
    X(NothingMoved, Invalid)                                                                                           \
    X(CostOfWhatGoesOut, Invalid)                                                                                      \
    X(KindOfOtherWay, Invalid)                                                                                         \
    X(ThingGone, NotFound)                                                                                             \
    X(NothingToRemove, NotFound)                                                                                       \
    X(NameOfAnother, Conflict)                                                                                         \
    X(OnlyRefersToNothing, Invalid)                                                                                    \
    X(RefersToNothing, Invalid)                                                                                        \
    X(CustomerTwice, Conflict)                                                                                         \
    X(SameCustomer, Invalid)                                                                                           \
    X(CustomerHasOpenJob, Conflict)                                                                                    \
    X(CustomerNotSettled, Conflict)                                                                                    \
    X(ErasedNotTidied, Failed)                                                                                         \
    X(MaterialOfDesign, Conflict)                                                                                      \
    X(MaterialOfKit, Conflict)                                                                                         \
    X(MaterialOfPacking, Conflict)                                                                                     \
    X(MaterialIsUsual, Conflict)                                                                                       \
    X(SupplierOfKit, Conflict)                                                                                         \
    X(DesignOfKit, Conflict)                                                                                           \
    X(PlannedBelowSold, Invalid)                                                                                       \
    X(MaterialGone, NotFound)                                                                                          \
    X(SupplierGone, NotFound)                                                                                          \
    X(CustomerGone, NotFound)                                                                                          \
    X(StoneGone, NotFound)                                                                                             \
    X(DesignOfDrawingGone, NotFound)                                                                                   \
    X(NoDrawing, NotFound)                                                                                             \
    X(DrawingEmpty, Invalid)                                                                                           \
    X(DrawingTooLarge, Invalid)                                                                                        \
    X(PictureTooLarge, Invalid)                                                                                        \
    X(NotOnShelf, Invalid)                                                                                             \
    X(ShelfTooFull, Invalid)                                                                                           \
    X(ReturnedForJob, Invalid)                                                                                         \
    X(CountOutOfRange, Invalid)                                                                                        \
    X(NoLongerOnShelf, Conflict)                                                                                       \
    X(QuoteUnknown, NotFound)                                                                                          \
    X(NoQuoteNumbered, NotFound)                                                                                       \
    X(QuoteGiven, Conflict)                                                                                            \
    X(QuoteChanged, Conflict)                                                                                          \
    X(QuoteReplaced, Conflict)                                                                                         \
    X(RevisedMeanwhile, Conflict)                                                                                      \
    X(RevisesLetGo, Conflict)                                                                                          \
    X(RevisesCollected, Conflict)                                                                                      \
    X(QuoteRefersToNothing, Invalid)                                                                                   \
    X(OrderStoneUnknown, Invalid)                                                                                      \
    X(NothingOnQuote, Invalid)                                                                                         \
    X(TotalTooLarge, Invalid)                                                                                          \
    X(EndsBeforeItBegins, Invalid)                                                                                     \
    X(PricesOfAnother, Invalid)                                                                                        \
    X(PricesMixedUp, Invalid)                                                                                          \
    X(ResultSealed, Conflict)                                                                                          \
    X(NotGivenYet, Invalid)                                                                                            \
    X(NoChoiceTaken, Invalid)                                                                                          \
    X(NoSuchChoice, Invalid)                                                                                           \
    X(StageCannotFollow, Invalid)                                                                                      \
    X(NoEnquiryAnyMore, Invalid)                                                                                       \
    X(ActionGivenUp, Failed)                                                                                           \
    X(CopyInAction, Busy)                                                                                              \
    X(PaymentMissing, NotFound)                                                                                        \
    X(PaymentTakenBack, Conflict)                                                                                      \
    X(PaymentSpent, Conflict)                                                                                          \
    X(BillDamaged, Damaged)                                                                                            \
    X(NotAgreedYet, Invalid)                                                                                           \
    X(NothingToInvoice, Invalid)                                                                                       \
    X(InvoicedAlready, Conflict)                                                                                       \
    X(CreditFirst, Conflict)                                                                                           \
    X(InvoiceStands, Conflict)                                                                                         \
    X(NoInvoice, Invalid)                                                                                              \
    X(CreditedAlready, Conflict)                                                                                       \
    X(ReceiptMade, Conflict)                                                                                           \
    X(NoReceiptFor, Invalid)                                                                                           \
    X(NoPaperNumbered, NotFound)                                                                                       \
    X(NothingToUndo, NotFound)                                                                                         \
    X(NothingToRedo, NotFound)                                                                                         \
    X(ChangedOtherwise, Conflict)

// Sorts of things; what undo calls a change; what a check finds, and where.
#define SP_DB_NOTES(X)                                                                                                 \
    X(Shop)                                                                                                            \
    X(Bench)                                                                                                           \
    X(Material)                                                                                                        \
    X(Supplier)                                                                                                        \
    X(Pack)                                                                                                            \
    X(Kit)                                                                                                             \
    X(Design)                                                                                                          \
    X(Customer)                                                                                                        \
    X(Adding)                                                                                                          \
    X(Removing)                                                                                                        \
    X(Merging)                                                                                                         \
    X(Erasing)                                                                                                         \
    X(ContactsOfAFile)                                                                                                 \
    X(ChangeOf)                                                                                                        \
    X(FieldOf)                                                                                                         \
    X(ChangeOfShop)                                                                                                    \
    X(ChangeOfBench)                                                                                                   \
    X(ChangeOfQuote)                                                                                                   \
    X(FieldOfQuote)                                                                                                    \
    X(LinesOfQuote)                                                                                                    \
    X(ALine)                                                                                                           \
    X(TheQuote)                                                                                                        \
    X(NewQuote)                                                                                                        \
    X(Revising)                                                                                                        \
    X(GivingQuote)                                                                                                     \
    X(PaymentOf)                                                                                                       \
    X(BillFor)                                                                                                         \
    X(ChoiceOf)                                                                                                        \
    X(StageOf)                                                                                                         \
    X(MovementOf)                                                                                                      \
    X(DrawingOf)                                                                                                       \
    X(RemovingDrawingOf)                                                                                               \
    X(StoneForColour)                                                                                                  \
    X(ColumnsOfListOf)                                                                                                 \
    X(FoundIn)                                                                                                         \
    X(TheLists)                                                                                                        \
    X(TheDrawings)                                                                                                     \
    X(TheShelf)                                                                                                        \
    X(TheQuotes)                                                                                                       \
    X(AQuote)                                                                                                          \
    X(TheSeals)                                                                                                        \
    X(AGivenQuote)                                                                                                     \
    X(ABill)                                                                                                           \
    X(TheNumbers)                                                                                                      \
    X(TheRecords)                                                                                                      \
    X(TheChangeLog)                                                                                                    \
    X(ColumnsOfAPriceList)                                                                                             \
    X(TheShop)                                                                                                         \
    X(TheBench)                                                                                                        \
    X(StoneOfAColour)                                                                                                  \
    X(APayment)                                                                                                        \
    X(AMovement)                                                                                                       \
    X(ADraft)                                                                                                          \
    X(StructureNotWhole)                                                                                               \
    X(IndexNotWhole)                                                                                                   \
    X(BytesBehindTheEnd)                                                                                               \
    X(RowRefersToNothing)                                                                                              \
    X(NotAsLastSaved)                                                                                                  \
    X(StageNotAsLastSaved)                                                                                             \
    X(ShopMissing)                                                                                                     \
    X(BenchMissing)                                                                                                    \
    X(ShelfBelowNothing)                                                                                               \
    X(OrderMissing)                                                                                                    \
    X(PaperMissing)                                                                                                    \
    X(SealsDoNotFollow)                                                                                                \
    X(SealMissing)                                                                                                     \
    X(GivenNotListed)                                                                                                  \
    X(GivenNotAsSealed)                                                                                                \
    X(RevisionsDoNotFollow)                                                                                            \
    X(NumbersOfNobody)                                                                                                 \
    X(NumberUnreadable)                                                                                                \
    X(NumberLost)                                                                                                      \
    X(BillNumberMissing)                                                                                               \
    X(BillNumberLost)                                                                                                  \
    X(BillOfNothing)                                                                                                   \
    X(CreditedBeyond)                                                                                                  \
    X(LogRowMissing)                                                                                                   \
    X(LogDoesNotFollow)                                                                                                \
    X(PersonTakenOut)                                                                                                  \
    X(LogDisagrees)

SP_FAULTS(Db, SP_DB_FAULTS)
SP_NOTES(Db, SP_DB_NOTES)

} // namespace sp::db
