// SPDX-License-Identifier: MIT
#include "app/words/sources.h"
#include "db/messages.h"

namespace sp::words {

Source sourceOf(db::Fault fault) {
    using enum db::Fault;
    switch (fault) {
    case FigureTooLarge:
        return {QT_TRANSLATE_NOOP("Db", "A figure is larger than the program works with; check the amounts.")};
    case NotFinished: return {QT_TRANSLATE_NOOP("Db", "The job book could not finish this; try again.")};
    case NotFinishedBecause: return {QT_TRANSLATE_NOOP("Db", "The job book could not finish this (%1); try again.")};
    case NoRandomNumbers: return {QT_TRANSLATE_NOOP("Db", "The computer gave no random numbers; restart it.")};
    case DiskFull: return {QT_TRANSLATE_NOOP("Db", "The disk that holds “%1” is full; make room and try again.")};
    case DiskFullOrFailing:
        return {QT_TRANSLATE_NOOP("Db", "“%1” could not be written, because the disk is full or failing; make room or "
                                        "save a copy on another disk.")};
    case NotClosedProperly:
        return {QT_TRANSLATE_NOOP("Db", "“%1” was not closed properly and has to be opened once where it can be "
                                        "written; move it to a folder of your own.")};
    case FileNotWritable:
        return {QT_TRANSLATE_NOOP("Db", "“%1” cannot be written; move it to a folder of your own or allow writing.")};
    case FolderNotWritable:
        return {QT_TRANSLATE_NOOP("Db", "“%1” or its folder cannot be written; check who may use them and try again.")};
    case NotUsableHere:
        return {QT_TRANSLATE_NOOP("Db", "“%1” cannot be used in this folder; choose a folder of your own.")};
    case NotReadable: return {QT_TRANSLATE_NOOP("Db", "“%1” may not be read; ask its owner for leave.")};
    case NotUsable: return {QT_TRANSLATE_NOOP("Db", "“%1” could not be used (%2); check the disk and try again.")};
    case NotReadOrWritten:
        return {QT_TRANSLATE_NOOP(
            "Db", "The computer could not read or write “%1” (%2, code %3); check the disk and try again.")};
    case NotReadFromDisk:
        return {QT_TRANSLATE_NOOP("Db", "“%1” could not be read, because the disk did not give it, which says nothing "
                                        "of the book; see that the disk is plugged in and sound, and try again.")};
    case MayBeDone:
        return {QT_TRANSLATE_NOOP("Db", "The disk did not confirm that “%1” took this; it may be done, so look before "
                                        "you do it again, and save a copy on another disk.")};
    case Stopped: return {QT_TRANSLATE_NOOP("Db", "This was stopped; nothing was changed.")};
    case NoSuchBook:
        return {QT_TRANSLATE_NOOP("Db", "There is no job book “%1”; choose another file or make a new book.")};
    case FolderOrDevice:
        return {QT_TRANSLATE_NOOP("Db", "“%1” is not a job book but a folder or device; choose a file.")};
    case NoSuchFolder: return {QT_TRANSLATE_NOOP("Db", "There is no folder “%1”; make it first or choose another.")};
    case ExportNeedsNewFolder:
        return {QT_TRANSLATE_NOOP("Db", "“%1” is there already and is no empty folder; name a new one.")};
    case FileExists: return {QT_TRANSLATE_NOOP("Db", "There is a file “%1” already; choose another name.")};
    case NoPlainFile:
        return {QT_TRANSLATE_NOOP("Db", "“%1” is no file but a folder, a link or a device; choose another name.")};
    case StaysABook:
        return {
            QT_TRANSLATE_NOOP("Db", "“%1” is a job book or belongs to one and stays as it is; choose another name.")};
    case SecondName:
        return {QT_TRANSLATE_NOOP("Db", "“%1” has a second name somewhere, by which another program could change it "
                                        "unseen; make a copy and open that.")};
    case UsedElsewhere:
        return {QT_TRANSLATE_NOOP("Db", "Another program is using “%1”; close it there and try again.")};
    case BookDamaged: return {QT_TRANSLATE_NOOP("Db", "“%1” is damaged; open a backup.")};
    case IndexDamaged:
        return {QT_TRANSLATE_NOOP("Db", "An index of “%1” is damaged, by which things are found, not what was written; "
                                        "save a copy and open a backup.")};
    case BackupDamaged: return {QT_TRANSLATE_NOOP("Db", "The backup “%1” is damaged; choose another one.")};
    case DamagedOrNoBook: return {QT_TRANSLATE_NOOP("Db", "“%1” is damaged or not a job book; open a backup.")};
    case ReadTooLong: return {QT_TRANSLATE_NOOP("Db", "Reading “%1” took too long, it may be damaged; open a backup.")};
    case TooLargeForBook: return {QT_TRANSLATE_NOOP("Db", "This is larger than “%1” can hold; make it smaller.")};
    case AlreadyHeld: return {QT_TRANSLATE_NOOP("Db", "“%1” already holds a thing of this name; choose another name.")};
    case ValueNotTaken: return {QT_TRANSLATE_NOOP("Db", "“%1” does not take this value; check what was typed.")};
    case NotEnoughMemory:
        return {QT_TRANSLATE_NOOP("Db", "There is not enough memory to work with “%1”; close other programs.")};
    case SqliteTooOld: return {QT_TRANSLATE_NOOP("Db", "SQLite %1 is too old for job books; install 3.37 or later.")};
    case SettingNotTaken:
        return {QT_TRANSLATE_NOOP("Db",
                                  "This SQLite does not take the safety setting %1; install the distribution's own.")};
    case LimitNotTaken:
        return {QT_TRANSLATE_NOOP("Db", "This SQLite does not take the limit %1; install the distribution's own.")};
    case NotSafeHere:
        return {QT_TRANSLATE_NOOP(
            "Db", "“%1” cannot be kept safe here (%2 is %3 instead of %4); keep it on a disk of this computer.")};
    case ColumnDamaged:
        return {
            QT_TRANSLATE_NOOP("Db", "“%1” is damaged: the column “%2” holds what cannot stand there; open a backup.")};
    case OpenHere: return {QT_TRANSLATE_NOOP("Db", "“%1” is open in this window already.")};
    case EmptyFile: return {QT_TRANSLATE_NOOP("Db", "“%1” is empty; choose a job book or a backup of it.")};
    case NoJobBook: return {QT_TRANSLATE_NOOP("Db", "“%1” is not a job book; choose another file.")};
    case OtherDatabase:
        return {QT_TRANSLATE_NOOP("Db", "“%1” is a database of another program, not a job book; choose another file.")};
    case AlteredElsewhere: return {QT_TRANSLATE_NOOP("Db", "“%1” was altered by another program; open a backup.")};
    case WrittenOtherwise:
        return {QT_TRANSLATE_NOOP("Db", "“%1” was switched to another way of writing by another program and cannot be "
                                        "opened for reading only; open it where it can be written.")};
    case BookTooNew:
        return {QT_TRANSLATE_NOOP("Db", "“%1” was written by a later Stonepenny (book version %2, this one knows %3); "
                                        "update Stonepenny to open it.")};
    case FormatUnknown:
        return {QT_TRANSLATE_NOOP(
            "Db", "“%1” is in a form that is newer than this Stonepenny knows; update Stonepenny to open it.")};
    case MostIsMissing: return {QT_TRANSLATE_NOOP("Db", "“%1” is damaged, most of it is missing; open a backup.")};
    case BeginningDamaged: return {QT_TRANSLATE_NOOP("Db", "“%1” is damaged at its beginning; open a backup.")};
    case EndIsMissing: return {QT_TRANSLATE_NOOP("Db", "“%1” is damaged, the end of it is missing; open a backup.")};
    case StructureDamaged: return {QT_TRANSLATE_NOOP("Db", "“%1” is damaged; open a backup. %2")};
    case NotCopiedWhole: return {QT_TRANSLATE_NOOP("Db", "“%1” could not be copied whole; try another disk. %2")};
    case BrokenReference:
        return {QT_TRANSLATE_NOOP("Db", "“%1” could not be brought up to date, because a row of its table “%2” refers "
                                        "to a row that is missing; open a backup.")};
    case InNetworkFolder:
        return {QT_TRANSLATE_NOOP("Db", "“%1” is open for reading only, because it lies in a network folder (%2) where "
                                        "two computers could spoil it; move it to this computer to change it.")};
    case InSyncedFolder:
        return {QT_TRANSLATE_NOOP("Db", "“%1” is open for reading only, because it lies in a folder (%2) that is kept "
                                        "alike on several computers, where two of them could spoil it; copy it to a "
                                        "folder of this computer to change it.")};
    case BookNotWritable:
        return {QT_TRANSLATE_NOOP("Db", "“%1” is open for reading only, because it or its folder cannot be written; "
                                        "move it to a folder of your own to change it.")};
    case NoLockInFolder:
        return {QT_TRANSLATE_NOOP("Db", "“%1” is open for reading only, because nothing can be written in its folder; "
                                        "move it to a folder of your own to change it.")};
    case HeldBy:
        return {QT_TRANSLATE_NOOP("Db", "“%1” is open for reading only, because %2 on %3 (process %4) has it open; "
                                        "close it there to change it here.")};
    case HeldElsewhere:
        return {QT_TRANSLATE_NOOP(
            "Db",
            "“%1” is open for reading only, because another program has it open; close it there to change it here.")};
    case BookGone:
        return {QT_TRANSLATE_NOOP(
            "Db",
            "“%1” is no longer where it was opened (moved, renamed or deleted, or its disk taken out), and nothing "
            "more is written to it; put it back and open it again, or save a copy of what is open.")};
    case BookReplaced:
        return {QT_TRANSLATE_NOOP("Db",
                                  "Another file has taken the place of “%1” since it was opened, and nothing more is "
                                  "written; save a copy of what is open here, then open the file that is there now.")};
    case BookOverwritten:
        return {QT_TRANSLATE_NOOP(
            "Db",
            "“%1” was written by another program while it was open here, and nothing more is written to it; save a "
            "copy, open it again to see what it holds now, and look for what is missing in the backups.")};
    case OlderSealBroken:
        return {QT_TRANSLATE_NOOP("Db", "“%1” is open for reading only, because it comes from an earlier Stonepenny "
                                        "and a seal of what was given in it does not match; open a backup.")};
    case OlderWithoutRoom:
        return {QT_TRANSLATE_NOOP(
            "Db", "“%1” is open for reading only, because it comes from an earlier Stonepenny and there is no room to "
                  "back it up and bring it up to date; make room on the disk and open it again.")};
    case OlderWithoutBackup:
        return {QT_TRANSLATE_NOOP(
            "Db",
            "“%1” is open for reading only, because it comes from an earlier Stonepenny and no backup could be written "
            "beside it before it is brought up to date; move it to a folder of your own and open it again.")};
    case RecordUnreadable:
        return {QT_TRANSLATE_NOOP("Db", "A saved record is damaged and cannot be read; open a backup.")};
    case RecordKeyDamaged:
        return {QT_TRANSLATE_NOOP(
            "Db", "A saved record is damaged: “%1” is missing or holds what cannot stand there; open a backup.")};
    case RecordHoldsMore:
        return {
            QT_TRANSLATE_NOOP("Db", "A saved record is damaged: it holds a field of another program; open a backup.")};
    case RecordOfAnotherSort:
        return {QT_TRANSLATE_NOOP("Db", "A saved record is not of the sort it should be; open a backup.")};
    case RecordTooNew:
        return {QT_TRANSLATE_NOOP(
            "Db", "A saved record (“%1”, version %2) was written by a later version; update Stonepenny.")};
    case RecordHoldsLater:
        return {QT_TRANSLATE_NOOP("Db", "A saved record was written by a later version; update Stonepenny.")};
    case RecordDamaged: return {QT_TRANSLATE_NOOP("Db", "A record in “%1” is damaged; open a backup.")};
    case ValueDamaged: return {QT_TRANSLATE_NOOP("Db", "“%1” is damaged: %2 Open a backup.")};
    case HalfACertificate: return {QT_TRANSLATE_NOOP("Db", "A certificate is there by half.")};
    case DrawingDamaged: return {QT_TRANSLATE_NOOP("Db", "The drawing of a design in “%1” is damaged; open a backup.")};
    case OrderNotAsListed:
        return {QT_TRANSLATE_NOOP("Db", "The order does not say what the lists say; open a backup.")};
    case ShopNotAsKept:
        return {QT_TRANSLATE_NOOP("Db", "The shop does not say what is kept beside it; open a backup.")};
    case SealBroken:
        return {QT_TRANSLATE_NOOP("Db", "The quote %1 in “%2” is damaged: its seal does not match; open a backup.")};
    case QuoteNotAsSealed:
        return {QT_TRANSLATE_NOOP("Db", "The quote %1 in “%2” is damaged: it is not as it was sealed; open a backup.")};
    case MovementMissing: return {QT_TRANSLATE_NOOP("Db", "A movement of the shelf is missing; open a backup.")};
    case PictureMisnamed: return {QT_TRANSLATE_NOOP("Db", "%1 is not named as it should be; open a backup.")};
    case CountsUnreadable: return {QT_TRANSLATE_NOOP("Db", "%1 cannot be read; count the drawing again.")};
    case NothingMoved: return {QT_TRANSLATE_NOOP("Db", "%1 is nothing; type how many came in or went out.")};
    case CostOfWhatGoesOut:
        return {QT_TRANSLATE_NOOP("Db", "%1 belongs to what comes in; leave it out for what goes out.")};
    case KindOfOtherWay:
        return {QT_TRANSLATE_NOOP("Db",
                                  "%1 does not fit: what is bought comes in, and what is used, lost or spoiled goes "
                                  "out; check the sign of the amount.")};
    case ThingGone: return {QT_TRANSLATE_NOOP("Db", "The %1 “%2” is no longer in the book; add it anew.")};
    case NothingToRemove:
        return {QT_TRANSLATE_NOOP("Db", "This %1 is no longer in the book; there is nothing to remove.")};
    case NameOfAnother: return {QT_TRANSLATE_NOOP("Db", "There is another %1 called “%2”; choose another name.")};
    case OnlyRefersToNothing:
        return {QT_TRANSLATE_NOOP("Db", "The %1 refers to something that is not in the book; choose it anew.")};
    case RefersToNothing:
        return {QT_TRANSLATE_NOOP("Db", "“%1” refers to something that is not in the book; choose it anew.")};
    case CustomerTwice: return {QT_TRANSLATE_NOOP("Db", "There is another customer of this name; rename one.")};
    case MaterialOfDesign:
        return {QT_TRANSLATE_NOOP("Db", "This material is used by the design “%1”; take it out there first.")};
    case MaterialOfKit:
        return {QT_TRANSLATE_NOOP("Db", "This material is used by the kit “%1”; take it out there first.")};
    case MaterialOfPacking:
        return {
            QT_TRANSLATE_NOOP("Db", "This material is used by the packing list of the shop; take it out there first.")};
    case MaterialIsUsual:
        return {QT_TRANSLATE_NOOP(
            "Db", "This material is used by the shop’s usual tape or template sheet; take it out there first.")};
    case SupplierOfKit:
        return {QT_TRANSLATE_NOOP(
            "Db", "This supplier sells the kit “%1”; remove that kit or give it another supplier first.")};
    case DesignOfKit:
        return {QT_TRANSLATE_NOOP(
            "Db", "The kit “%1” is made for this design; remove that kit or make it for another first.")};
    case PlannedBelowSold:
        return {QT_TRANSLATE_NOOP(
            "Db", "%1 planned pieces are fewer than the %2 that are sold already; plan as many at least, or none.")};
    case MaterialGone: return {QT_TRANSLATE_NOOP("Db", "This material is no longer in the book; add it anew.")};
    case SupplierGone: return {QT_TRANSLATE_NOOP("Db", "This supplier is no longer in the book; add it anew.")};
    case SameCustomer: return {QT_TRANSLATE_NOOP("Db", "“%1” is one entry already; choose another one.")};
    case CustomerHasOpenJob:
        return {QT_TRANSLATE_NOOP(
            "Db", "“%1” has a job that is still open: %2; finish it or let it go, then erase the customer.")};
    case CustomerNotSettled:
        return {QT_TRANSLATE_NOOP("Db",
                                  "“%1” and the shop are not quits: %2 is not paid to the cent; take the payment, "
                                  "give back what is too much or credit it, then erase the customer.")};
    case ErasedNotTidied:
        return {QT_TRANSLATE_NOOP("Db",
                                  "The customer is erased, but the free space of “%1” was not cleaned: %2 Make room "
                                  "on the disk; when the next customer is erased, it is cleaned as well.")};
    case CustomerGone: return {QT_TRANSLATE_NOOP("Db", "This customer is no longer in the book; choose another.")};
    case StoneGone: return {QT_TRANSLATE_NOOP("Db", "This stone is no longer in the book; choose another.")};
    case DesignOfDrawingGone:
        return {QT_TRANSLATE_NOOP("Db", "The design of the drawing “%1” is no longer in the book; add it anew.")};
    case NoDrawing: return {QT_TRANSLATE_NOOP("Db", "This design has no drawing in the book.")};
    case DrawingEmpty: return {QT_TRANSLATE_NOOP("Db", "The drawing “%1” is empty; choose another file.")};
    case DrawingTooLarge: return {QT_TRANSLATE_NOOP("Db", "The drawing “%1” is larger than %2 MB; make it smaller.")};
    case PictureTooLarge:
        return {QT_TRANSLATE_NOOP("Db", "The small picture of “%1” is larger than %2 MB; make a smaller one.")};
    case NotOnShelf:
        return {QT_TRANSLATE_NOOP("Db", "Only %1 of “%2” are on the shelf; count it and book what is there first.")};
    case ShelfTooFull:
        return {QT_TRANSLATE_NOOP("Db", "There would be more than %1 of “%2” on the shelf; check the amount.")};
    case ReturnedForJob:
        return {QT_TRANSLATE_NOOP("Db", "What of “%1” goes back to a supplier is for no job; leave the job out.")};
    case CountOutOfRange:
        return {QT_TRANSLATE_NOOP("Db", "So many of “%1” cannot be counted; type a number from 0 to %2.")};
    case NoLongerOnShelf:
        return {QT_TRANSLATE_NOOP("Db", "These things are no longer on the shelf; count it and book what is there.")};
    case QuoteUnknown:
        return {QT_TRANSLATE_NOOP("Db", "This quote is not in the book; look for it under another number.")};
    case NoQuoteNumbered:
        return {QT_TRANSLATE_NOOP("Db", "There is no quote %1 in this book; look for it under another number.")};
    case QuoteGiven:
        return {QT_TRANSLATE_NOOP("Db", "Quote %1 has been given and stays as it is; start a new quote instead.")};
    case QuoteChanged:
        return {QT_TRANSLATE_NOOP(
            "Db", "This quote was changed meanwhile in another place; look at it again before you change it.")};
    case QuoteReplaced: return {QT_TRANSLATE_NOOP("Db", "Quote %1 was replaced by %2; say that number instead.")};
    case RevisedMeanwhile:
        return {QT_TRANSLATE_NOOP("Db", "Quote %1 was revised meanwhile in another place and is %2 now; what is typed "
                                        "here is kept as a draft, and %2 can be revised.")};
    case RevisesLetGo:
        return {QT_TRANSLATE_NOOP("Db", "Quote %1 was let go and is not revised; order it again instead.")};
    case RevisesCollected:
        return {QT_TRANSLATE_NOOP("Db", "Quote %1 was collected and is not revised; put it back to Ready first, or "
                                        "credit its invoice.")};
    case QuoteRefersToNothing:
        return {QT_TRANSLATE_NOOP(
            "Db", "The quote refers to a customer, design or material that is not in the book; choose it anew.")};
    case OrderStoneUnknown:
        return {QT_TRANSLATE_NOOP("Db", "A stone of the order is not in the book; choose it anew.")};
    case NothingOnQuote:
        return {QT_TRANSLATE_NOOP("Db", "There is nothing on this quote; add a line before giving it.")};
    case TotalTooLarge:
        return {QT_TRANSLATE_NOOP("Db", "The total is larger than a book can hold; check the quantities and prices.")};
    case EndsBeforeItBegins:
        return {QT_TRANSLATE_NOOP("Db", "The last day of the quote lies before its first; choose a later one.")};
    case PricesOfAnother:
        return {QT_TRANSLATE_NOOP("Db", "The prices are those of another customer; choose the customer again.")};
    case PricesMixedUp: return {QT_TRANSLATE_NOOP("Db", "The prices are mixed up; open the quote again.")};
    case ResultSealed: return {QT_TRANSLATE_NOOP("Db", "What quote %1 came to cannot be sealed again.")};
    case NotGivenYet:
        return {QT_TRANSLATE_NOOP("Db", "This quote has not been given yet; give it before you move it on.")};
    case NoChoiceTaken:
        return {QT_TRANSLATE_NOOP("Db", "Quote %1 offers %2 choices; say first which one the customer takes.")};
    case NoSuchChoice:
        return {QT_TRANSLATE_NOOP("Db", "Quote %1 offers %2 choices, and this is none of them; choose one of those.")};
    case StageCannotFollow:
        return {QT_TRANSLATE_NOOP("Db", "%1 cannot go there from the stage it is in; choose one that may follow.")};
    case NoEnquiryAnyMore:
        return {QT_TRANSLATE_NOOP("Db", "Quote %1 has been given and is no enquiry any more; start a new quote.")};
    case ActionGivenUp: return {QT_TRANSLATE_NOOP("Db", "The action was given up after an error; try it again.")};
    case CopyInAction: return {QT_TRANSLATE_NOOP("Db", "The book cannot be copied in the middle of an action.")};
    case PaymentMissing: return {QT_TRANSLATE_NOOP("Db", "A payment is missing from the book; open a backup.")};
    case PaymentTakenBack:
        return {QT_TRANSLATE_NOOP("Db", "This payment for %1 was taken back already; enter a new one.")};
    case PaymentSpent:
        return {QT_TRANSLATE_NOOP("Db", "%1 was given back in part already for %2; take that back first.")};
    case BillDamaged:
        return {QT_TRANSLATE_NOOP("Db", "The paper %1 in “%2” is damaged: its seal does not match; open a backup.")};
    case NotAgreedYet:
        return {QT_TRANSLATE_NOOP("Db", "Quote %1 is not agreed to yet; move it to Agreed before you invoice it.")};
    case NothingToInvoice: return {QT_TRANSLATE_NOOP("Db", "Quote %1 comes to nothing; there is nothing to invoice.")};
    case InvoicedAlready:
        return {QT_TRANSLATE_NOOP("Db", "All of %1 is invoiced by %2 already; print that again, or credit it first.")};
    case CreditFirst:
        return {QT_TRANSLATE_NOOP("Db", "More of %1 is invoiced by %2 than it comes to; write a credit note first.")};
    case InvoiceStands:
        return {QT_TRANSLATE_NOOP("Db", "%1 is invoiced and stays agreed as it is; write a credit note first.")};
    case NoInvoice: return {QT_TRANSLATE_NOOP("Db", "“%1” is not an invoice; only an invoice can be credited.")};
    case CreditedAlready:
        return {QT_TRANSLATE_NOOP("Db", "All of invoice %1 was taken back already; nothing is left to credit.")};
    case ReceiptMade:
        return {QT_TRANSLATE_NOOP("Db", "This payment for %1 has the receipt %2 already; print that again.")};
    case NoReceiptFor:
        return {QT_TRANSLATE_NOOP(
            "Db", "For money that was given or taken back there is no receipt; the next paper of %1 says it.")};
    case NoPaperNumbered:
        return {QT_TRANSLATE_NOOP("Db", "There is no paper %1 in this book; look for it under another number.")};
    case NothingToUndo: return {QT_TRANSLATE_NOOP("Db", "There is nothing to undo.")};
    case NothingToRedo: return {QT_TRANSLATE_NOOP("Db", "There is nothing to redo.")};
    case ChangedOtherwise:
        return {QT_TRANSLATE_NOOP("Db", "This was changed meanwhile in another way; it can no longer be undone.")};
    }
    return {};
}

Source sourceOf(db::Note note) {
    using enum db::Note;
    switch (note) {
    case Shop: return {QT_TRANSLATE_NOOP("Db", "shop")};
    case Bench: return {QT_TRANSLATE_NOOP("Db", "bench")};
    case Material: return {QT_TRANSLATE_NOOP("Db", "material")};
    case Supplier: return {QT_TRANSLATE_NOOP("Db", "supplier")};
    case Pack: return {QT_TRANSLATE_NOOP("Db", "pack")};
    case Kit: return {QT_TRANSLATE_NOOP("Db", "kit")};
    case Design: return {QT_TRANSLATE_NOOP("Db", "design")};
    case Customer: return {QT_TRANSLATE_NOOP("Db", "customer")};
    case Adding: return {QT_TRANSLATE_NOOP("Db", "adding %1")};
    case ContactsOfAFile: return {QT_TRANSLATE_NOOP("Db", "customers out of a file")};
    case Erasing: return {QT_TRANSLATE_NOOP("Db", "erasing a customer")};
    case Merging: return {QT_TRANSLATE_NOOP("Db", "merging %1 into %2")};
    case Removing: return {QT_TRANSLATE_NOOP("Db", "removing %1")};
    case ChangeOf: return {QT_TRANSLATE_NOOP("Db", "change of %1")};
    case FieldOf: return {QT_TRANSLATE_NOOP("Db", "%1 of %2")};
    case ChangeOfShop: return {QT_TRANSLATE_NOOP("Db", "change of the shop")};
    case ChangeOfBench: return {QT_TRANSLATE_NOOP("Db", "change of the bench")};
    case ChangeOfQuote: return {QT_TRANSLATE_NOOP("Db", "change of the quote")};
    case FieldOfQuote: return {QT_TRANSLATE_NOOP("Db", "%1 of the quote")};
    case LinesOfQuote: return {QT_TRANSLATE_NOOP("Db", "lines of the quote")};
    case ALine: return {QT_TRANSLATE_NOOP("Db", "a line")};
    case TheQuote: return {QT_TRANSLATE_NOOP("Db", "the quote")};
    case NewQuote: return {QT_TRANSLATE_NOOP("Db", "new quote")};
    case Revising: return {QT_TRANSLATE_NOOP("Db", "revising %1")};
    case GivingQuote: return {QT_TRANSLATE_NOOP("Db", "giving %1")};
    case PaymentOf: return {QT_TRANSLATE_NOOP("Db", "payment for %1")};
    case BillFor: return {QT_TRANSLATE_NOOP("Db", "%1 for %2")};
    case ChoiceOf: return {QT_TRANSLATE_NOOP("Db", "choice taken of %1")};
    case StageOf: return {QT_TRANSLATE_NOOP("Db", "stage of %1")};
    case MovementOf: return {QT_TRANSLATE_NOOP("Db", "movement of %1")};
    case DrawingOf: return {QT_TRANSLATE_NOOP("Db", "drawing of %1")};
    case RemovingDrawingOf: return {QT_TRANSLATE_NOOP("Db", "removing the drawing of %1")};
    case StoneForColour: return {QT_TRANSLATE_NOOP("Db", "the stone for a colour in cut files")};
    case ColumnsOfListOf: return {QT_TRANSLATE_NOOP("Db", "columns of the price list of %1")};
    case FoundIn: return {QT_TRANSLATE_NOOP("Db", "In %1: %2")};
    case TheLists: return {QT_TRANSLATE_NOOP("Db", "the lists")};
    case TheDrawings: return {QT_TRANSLATE_NOOP("Db", "the drawings")};
    case TheShelf: return {QT_TRANSLATE_NOOP("Db", "the shelf")};
    case TheQuotes: return {QT_TRANSLATE_NOOP("Db", "the quotes")};
    case AQuote: return {QT_TRANSLATE_NOOP("Db", "a quote")};
    case TheSeals: return {QT_TRANSLATE_NOOP("Db", "the seals")};
    case AGivenQuote: return {QT_TRANSLATE_NOOP("Db", "a given quote")};
    case ABill: return {QT_TRANSLATE_NOOP("Db", "an invoice, receipt or credit note")};
    case TheNumbers: return {QT_TRANSLATE_NOOP("Db", "the numbers")};
    case TheRecords: return {QT_TRANSLATE_NOOP("Db", "the records")};
    case TheChangeLog: return {QT_TRANSLATE_NOOP("Db", "the change log")};
    case ColumnsOfAPriceList: return {QT_TRANSLATE_NOOP("Db", "the columns of a price list")};
    case TheShop: return {QT_TRANSLATE_NOOP("Db", "the shop")};
    case TheBench: return {QT_TRANSLATE_NOOP("Db", "the bench")};
    case StoneOfAColour: return {QT_TRANSLATE_NOOP("Db", "the stone of a colour")};
    case APayment: return {QT_TRANSLATE_NOOP("Db", "a payment")};
    case AMovement: return {QT_TRANSLATE_NOOP("Db", "a movement of the shelf")};
    case ADraft: return {QT_TRANSLATE_NOOP("Db", "a draft")};
    case StructureNotWhole: return {QT_TRANSLATE_NOOP("Db", "The structure of the file is damaged (%1).")};
    case BytesBehindTheEnd:
        return {QT_TRANSLATE_NOOP(
            "Db", "Behind the end of the book lie %1 bytes more, which do not belong to it; save a copy.")};
    case IndexNotWhole:
        return {
            QT_TRANSLATE_NOOP("Db", "An index, by which things are found, is damaged; what was written is not: %1")};
    case RowRefersToNothing:
        return {QT_TRANSLATE_NOOP("Db", "A row of the table “%1” refers to a row that is missing.")};
    case NotAsLastSaved:
        return {QT_TRANSLATE_NOOP("Db", "“%1” is not as it was last saved; compare it with a backup.")};
    case StageNotAsLastSaved:
        return {QT_TRANSLATE_NOOP("Db", "The stage of %1 is not as it was last saved; compare it with a backup.")};
    case ShopMissing: return {QT_TRANSLATE_NOOP("Db", "The rates and rules of the shop are missing; open a backup.")};
    case BenchMissing: return {QT_TRANSLATE_NOOP("Db", "The bench standards are missing; open a backup.")};
    case ShelfBelowNothing:
        return {QT_TRANSLATE_NOOP("Db", "Less than nothing of a material is on the shelf; count it.")};
    case OrderMissing: return {QT_TRANSLATE_NOOP("Db", "The order of a quote is missing; open a backup.")};
    case PaperMissing: return {QT_TRANSLATE_NOOP("Db", "A given quote is missing from the book; open a backup.")};
    case SealsDoNotFollow:
        return {
            QT_TRANSLATE_NOOP("Db", "Between two given quotes another one was taken out or exchanged; open a backup.")};
    case SealMissing: return {QT_TRANSLATE_NOOP("Db", "The seal of quote %1 is missing; open a backup.")};
    case GivenNotListed: return {QT_TRANSLATE_NOOP("Db", "Quote %1 was given but is no longer listed; open a backup.")};
    case GivenNotAsSealed: return {QT_TRANSLATE_NOOP("Db", "Quote %1 is not as it was sealed; open a backup.")};
    case RevisionsDoNotFollow:
        return {QT_TRANSLATE_NOOP("Db", "Quote %1 does not follow the one that it replaced; open a backup.")};
    case NumbersOfNobody:
        return {QT_TRANSLATE_NOOP("Db", "There are numbers of papers that nobody issued; open a backup.")};
    case NumberUnreadable: return {QT_TRANSLATE_NOOP("Db", "Quote %1 was given but cannot be read; open a backup.")};
    case NumberLost: return {QT_TRANSLATE_NOOP("Db", "The count of quotes has lost %1; open a backup.")};
    case BillNumberMissing:
        return {QT_TRANSLATE_NOOP("Db", "%1 was issued but is missing or cannot be read; open a backup.")};
    case BillNumberLost: return {QT_TRANSLATE_NOOP("Db", "The count of papers has lost %1; open a backup.")};
    case BillOfNothing:
        return {QT_TRANSLATE_NOOP("Db", "%1 is for a payment or an invoice that is missing; open a backup.")};
    case CreditedBeyond: return {QT_TRANSLATE_NOOP("Db", "More of %1 is credited than was invoiced; open a backup.")};
    case LogRowMissing: return {QT_TRANSLATE_NOOP("Db", "A row of the change log is missing; open a backup.")};
    case LogDoesNotFollow:
        return {QT_TRANSLATE_NOOP("Db", "Record %1 of the change log does not follow from the one before it.")};
    case PersonTakenOut:
        return {QT_TRANSLATE_NOOP("Db", "Of %1 the customer was taken out, and no erasing of a customer says so.")};
    case LogDisagrees:
        return {QT_TRANSLATE_NOOP(
            "Db", "A thing and the change log do not agree on when it was last changed; compare with a backup.")};
    }
    return {};
}

} // namespace sp::words
