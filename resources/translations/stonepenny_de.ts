<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
    <context>
        <name>App</name>
        <message>
            <source>This design is no longer in the book; use the file for a new one.</source>
            <translation>Dieses Motiv steht nicht mehr im Buch; verwenden Sie die Datei für ein neues.</translation>
        </message>
        <message>
            <source>estimate of %1</source>
            <translation>Schätzung von %1</translation>
        </message>
        <message>
            <source>“%1” cannot be read; check its name and folder.</source>
            <translation>„%1“ kann nicht gelesen werden; prüfen Sie Name und Ordner.</translation>
        </message>
        <message>
            <source>“%1” is larger than 64 MB; simplify the drawing and save it again.</source>
            <translation>„%1“ ist größer als 64 MB; vereinfachen Sie die Zeichnung und speichern Sie sie neu.</translation>
        </message>
        <message>
            <source>“%1” could not be read to its end; try again.</source>
            <translation>„%1“ konnte nicht bis zum Ende gelesen werden; versuchen Sie es noch einmal.</translation>
        </message>
        <message>
            <source>Letters are between nothing and 10 m high; give another height.</source>
            <translation>Buchstaben sind höher als nichts und bis zu 10 m hoch; geben Sie eine andere Höhe an.</translation>
        </message>
        <message>
            <source>The font “%1” is not installed here; install it or name another.</source>
            <translation>Die Schrift „%1“ ist hier nicht installiert; installieren Sie sie oder nennen Sie eine andere.</translation>
        </message>
        <message>
            <source>More than 2,000 letters are not estimated at once; take a part of them.</source>
            <translation>Mehr als 2000 Buchstaben werden nicht auf einmal geschätzt; nehmen Sie einen Teil davon.</translation>
        </message>
        <message>
            <source>%1 has no “%2”; type letters that the font has or name another font.</source>
            <translation>%1 hat kein „%2“; tippen Sie Buchstaben, die die Schrift hat, oder nennen Sie eine andere Schrift.</translation>
        </message>
        <message>
            <source>“%1” leaves no outline in %2; type letters that the font has.</source>
            <translation>„%1“ ergibt in %2 keine Kontur; tippen Sie Buchstaben, die die Schrift hat, oder nennen Sie eine andere Schrift.</translation>
        </message>
        <message numerus="yes">
            <source>%n changes</source>
            <translation>
                <numerusform>%n Änderung</numerusform>
                <numerusform>%n Änderungen</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n quotes</source>
            <translation>
                <numerusform>%n Angebot</numerusform>
                <numerusform>%n Angebote</numerusform>
            </translation>
        </message>
        <message>
            <source>%1 restored %2</source>
            <translation>%1 wiederhergestellt %2</translation>
        </message>
        <message>
            <source>what was bought for %1</source>
            <translation>Einkauf für %1</translation>
        </message>
        <message>
            <source>A discount is from 0 to 100 %; type another.</source>
            <translation>Ein Rabatt liegt zwischen 0 und 100 %; tippen Sie einen anderen.</translation>
        </message>
        <message>
            <source>A discount is 0 or more; type it without a minus.</source>
            <translation>Ein Rabatt ist 0 oder mehr; tippen Sie ihn ohne Minus.</translation>
        </message>
        <message>
            <source>“%1” is there already; name a new or an empty folder.</source>
            <translation>„%1“ gibt es schon; nennen Sie einen neuen oder leeren Ordner.</translation>
        </message>
        <message>
            <source>The folder “%1” cannot be made; look whether the one it is to be in is there and yours to write.</source>
            <translation>Der Ordner „%1“ kann nicht angelegt werden; prüfen Sie, ob der Ordner darüber da ist und Sie darin schreiben dürfen.</translation>
        </message>
        <message>
            <source>the demo scenario</source>
            <translation>Beispielszenario</translation>
        </message>
        <message>
            <source>the demo's jobs</source>
            <translation>Beispielaufträge</translation>
        </message>
        <message>
            <source>This quote has not been given yet; it has today's prices.</source>
            <translation>Dieses Angebot ist noch nicht abgegeben; es hat die heutigen Preise.</translation>
        </message>
        <message>
            <source>the first settings</source>
            <translation>erste Einstellungen</translation>
        </message>
        <message>
            <source>“%1” is a backup, which is kept as it is; restore it by “Backups…” or “Open a backup…”.</source>
            <translation>„%1“ ist eine Sicherung und bleibt, wie sie ist; stellen Sie sie über „Sicherungen…“ oder „Sicherung öffnen…“ wieder her.</translation>
        </message>
        <message>
            <source>The answer could not be written out; the disk may be full.</source>
            <translation>Die Antwort konnte nicht ausgegeben werden; vielleicht ist der Datenträger voll.</translation>
        </message>
        <message>
            <source>There is no screen here to open a window on; use the verbs that stonepenny --help lists.</source>
            <translation>Hier ist kein Bildschirm für ein Fenster; nutzen Sie die Befehle, die stonepenny --help nennt.</translation>
        </message>
        <message>
            <source>“%1” is not a verb and not a job book; stonepenny --help lists what there is.</source>
            <translation>„%1“ ist weder ein Befehl noch ein Auftragsbuch; stonepenny --help nennt, was es gibt.</translation>
        </message>
        <message>
            <source>Nothing of this order is made at the bench: there are charges alone on it.</source>
            <translation>Von dieser Bestellung wird nichts an der Werkbank gemacht: Sie enthält nur Posten ohne Steine.</translation>
        </message>
        <message>
            <source>%1 could not be drawn; start the program again.</source>
            <translation>%1 konnte nicht gezeichnet werden; starten Sie das Programm neu.</translation>
        </message>
        <message>
            <source>The printer did not take the sheet; check that it is on, or save the sheet as a PDF.</source>
            <translation>Der Drucker hat das Blatt nicht angenommen; prüfen Sie, ob er eingeschaltet ist, oder speichern Sie das Blatt als PDF.</translation>
        </message>
        <message>
            <source>The printer %1 did not take the sheet; check that it is on, or save the sheet as a PDF.</source>
            <translation>Der Drucker %1 hat das Blatt nicht angenommen; prüfen Sie, ob er eingeschaltet ist, oder speichern Sie das Blatt als PDF.</translation>
        </message>
        <message>
            <source>price list of %1</source>
            <translation>Preisliste von %1</translation>
        </message>
        <message>
            <source>the usual pack</source>
            <translation>übliche Packung</translation>
        </message>
        <message>
            <source>%1 needs a value after it.</source>
            <translation>%1 braucht einen Wert dahinter.</translation>
        </message>
        <message>
            <source>%1 is not an option of this verb.</source>
            <translation>%1 ist keine Option dieses Befehls.</translation>
        </message>
        <message>
            <source>%1 is given twice.</source>
            <translation>%1 ist zweimal angegeben.</translation>
        </message>
        <message>
            <source>This verb takes %1 word besides its options, not %2.</source>
            <translation>Dieser Befehl nimmt außer seinen Optionen %1 Wort an, nicht %2.</translation>
        </message>
        <message>
            <source>This verb takes %1 words besides its options, not %2.</source>
            <translation>Dieser Befehl nimmt außer seinen Optionen %1 Wörter an, nicht %2.</translation>
        </message>
        <message>
            <source>%1 is missing.</source>
            <translation>%1 fehlt.</translation>
        </message>
        <message>
            <source>no size</source>
            <translation>ohne Größe</translation>
        </message>
        <message>
            <source>drawn twice, counted once</source>
            <translation>doppelt gezeichnet, einmal gezählt</translation>
        </message>
        <message>
            <source>pairs of holes that overlap and would tear</source>
            <translation>Paare von Löchern, die sich überlappen und einreißen würden</translation>
        </message>
        <message>
            <source>left out: %1</source>
            <translation>ausgelassen: %1</translation>
        </message>
        <message>
            <source>note: %1</source>
            <translation>Hinweis: %1</translation>
        </message>
        <message>
            <source>An outline in a stone of its own goes with a filling; write --style both.</source>
            <translation>Eine Kontur mit eigenem Stein gehört zu einer Füllung; schreiben Sie --style both.</translation>
        </message>
        <message>
            <source>Lettering needs --font and --height beside --text; %1 is missing.</source>
            <translation>Schrift braucht neben --text auch --font und --height; %1 fehlt.</translation>
        </message>
        <message>
            <source>Nothing is to be made.</source>
            <translation>Es ist nichts zu fertigen.</translation>
        </message>
        <message>
            <source>not known: see %1</source>
            <translation>nicht bekannt: siehe %1</translation>
        </message>
        <message>
            <source>not within %1 years</source>
            <translation>nicht innerhalb von %1 Jahren</translation>
        </message>
        <message>
            <source>ready %1</source>
            <translation>fertig am %1</translation>
        </message>
        <message>
            <source>ready %1, late: wanted by %2</source>
            <translation>fertig am %1, zu spät: gewünscht bis %2</translation>
        </message>
        <message>
            <source>ready %1, wanted by %2</source>
            <translation>fertig am %1, gewünscht bis %2</translation>
        </message>
        <message>
            <source>; supplies are here by %1</source>
            <translation>; Material ist bis %1 da</translation>
        </message>
        <message>
            <source>; something is not on the shelf, and when it comes is not known</source>
            <translation>; etwas ist nicht auf Lager, und wann es kommt, ist nicht bekannt</translation>
        </message>
        <message>
            <source>; %1 of the deposit are missing</source>
            <translation>; von der Anzahlung fehlen %1</translation>
        </message>
        <message>
            <source>%1  closed</source>
            <translation>%1  geschlossen</translation>
        </message>
        <message>
            <source>It takes %1 minutes at the bench.</source>
            <translation>An der Werkbank dauert es %1 Minuten.</translation>
        </message>
        <message>
            <source>What is missing for it can be here by %1, bought today.</source>
            <translation>Was dafür fehlt, kann bis %1 hier sein, wenn es heute gekauft wird.</translation>
        </message>
        <message>
            <source>Reckoned from tomorrow on, and as if a deposit that is asked came today.</source>
            <translation>Gerechnet ab morgen und so, als käme eine verlangte Anzahlung heute.</translation>
        </message>
        <message>
            <source>%1 for %2: %3 %4.</source>
            <translation>%1 für %2: %3 %4.</translation>
        </message>
        <message>
            <source>There is no kind of paper “%1”; say quote, invoice, receipt, credit or bench.</source>
            <translation>Einen Beleg der Art „%1“ gibt es nicht; nennen Sie quote, invoice, receipt, credit oder bench.</translation>
        </message>
        <message>
            <source>%1 is of another kind; leave --kind out, or say another number.</source>
            <translation>%1 ist von anderer Art; lassen Sie --kind weg oder nennen Sie eine andere Nummer.</translation>
        </message>
        <message>
            <source>Quote %1 has no paper of the kind “%2” yet; make it with the verb “%3”.</source>
            <translation>Angebot %1 hat noch keinen Beleg der Art „%2“; erstellen Sie ihn mit dem Befehl „%3“.</translation>
        </message>
        <message>
            <source>No payment for %1 is without a receipt; take a payment with pay first.</source>
            <translation>Keine Zahlung für %1 ist ohne Quittung; buchen Sie erst mit pay eine Zahlung.</translation>
        </message>
        <message>
            <source>%1 has no paper but its quote.</source>
            <translation>%1 hat keinen Beleg außer dem Angebot.</translation>
        </message>
        <message>
            <source>The bench sheet of %1 is in %2.</source>
            <translation>Der Laufzettel von %1 ist in %2.</translation>
        </message>
        <message>
            <source>%1 is in %2.</source>
            <translation>%1 ist in %2.</translation>
        </message>
        <message>
            <source>Quote %1 is in %2.</source>
            <translation>Angebot %1 ist in %2.</translation>
        </message>
        <message>
            <source>millionths of the currency’s unit: 6.94 is 6940000</source>
            <translation>Millionstel der Währungseinheit: 6.94 ist 6940000</translation>
        </message>
        <message>
            <source>millionths of a whole: 8.875 % is 88750</source>
            <translation>Millionstel eines Ganzen: 8.875 % ist 88750</translation>
        </message>
        <message>
            <source>nanometres</source>
            <translation>Nanometer</translation>
        </message>
        <message>
            <source>milliseconds</source>
            <translation>Millisekunden</translation>
        </message>
        <message>
            <source>the 36 characters of a UUID</source>
            <translation>die 36 Zeichen einer UUID</translation>
        </message>
        <message>
            <source>year, month and day: 2026-10-12</source>
            <translation>Jahr, Monat und Tag: 2026-10-12</translation>
        </message>
        <message>
            <source>the three letters of ISO 4217</source>
            <translation>die drei Buchstaben nach ISO 4217</translation>
        </message>
        <message>
            <source>Everything in a job book</source>
            <translation>Alles in einem Auftragsbuch</translation>
        </message>
        <message>
            <source>A job book's name ends in .jobbook; make “%1.jobbook” instead.</source>
            <translation>Der Name eines Auftragsbuchs endet auf .jobbook; legen Sie stattdessen „%1.jobbook“ an.</translation>
        </message>
        <message>
            <source>%1: a demo job book; every name and price in it is invented.</source>
            <translation>%1: ein Beispielbuch; alle Namen und Preise darin sind erfunden.</translation>
        </message>
        <message>
            <source>%1 (stones: %2)</source>
            <translation>%1 (Steine: %2)</translation>
        </message>
        <message>
            <source>No quotes yet.</source>
            <translation>Noch keine Angebote.</translation>
        </message>
        <message>
            <source>The care cards are in %1.</source>
            <translation>Die Pflegekarten sind in %1.</translation>
        </message>
        <message>
            <source>%1 is sound. Designs: %2; materials: %3; quotes: %4, given and unchanged: %5.</source>
            <translation>%1 ist in Ordnung. Motive: %2; Materialien: %3; Angebote: %4, abgegeben und unverändert: %5.</translation>
        </message>
        <message>
            <source>The file states no size; one unit was taken as %1. If that is wrong, give the scale.</source>
            <translation>Die Datei nennt keine Größe; eine Einheit wurde als %1 genommen. Wenn das falsch ist, geben Sie den Maßstab an.</translation>
        </message>
        <message>
            <source>There is no customer “%1” in the book.</source>
            <translation>Einen Kunden „%1“ gibt es im Buch nicht.</translation>
        </message>
        <message>
            <source>Owed: %1 %2. Credit: %3 %2.</source>
            <translation>Offen: %1 %2. Guthaben: %3 %2.</translation>
        </message>
        <message>
            <source>All that the book has of the customer is in “%1”: customer.json, and each paper as it was sealed.</source>
            <translation>Alles, was das Buch über den Kunden hat, ist in „%1“: customer.json und jeder Beleg, wie er versiegelt wurde.</translation>
        </message>
        <message>
            <source>“%1” holds the person until you delete it.</source>
            <translation>„%1“ enthält die Person, bis Sie die Datei löschen.</translation>
        </message>
        <message>
            <source>“%1” holds the person until %2, if the book is used every day.</source>
            <translation>„%1“ enthält die Person bis %2, wenn das Buch täglich benutzt wird.</translation>
        </message>
        <message>
            <source>There are %2 customers “%1” in the book, and nobody was erased; make them one or call one otherwise, then erase.</source>
            <translation>Im Buch stehen %2 Kunden „%1“, und niemand wurde gelöscht; führen Sie sie zusammen oder benennen Sie einen um, dann löschen Sie.</translation>
        </message>
        <message>
            <source>There is no customer “%1” in the book; give the whole name.</source>
            <translation>Einen Kunden „%1“ gibt es im Buch nicht; geben Sie den ganzen Namen an.</translation>
        </message>
        <message>
            <source>Entries of this name, with those removed from the list: %1; all of them go.</source>
            <translation>Einträge mit diesem Namen, auch aus der Liste entfernte: %1; alle werden gelöscht.</translation>
        </message>
        <message>
            <source>Nothing was changed; add --yes to erase “%1”.</source>
            <translation>Nichts wurde geändert; mit --yes löschen Sie „%1“.</translation>
        </message>
        <message>
            <source>The customer is erased.</source>
            <translation>Der Kunde ist gelöscht.</translation>
        </message>
        <message>
            <source>“%1” ends neither in .csv nor in .vcf; call a table .csv and cards .vcf.</source>
            <translation>„%1“ endet weder auf .csv noch auf .vcf; nennen Sie eine Tabelle .csv und Karten .vcf.</translation>
        </message>
        <message>
            <source>“%1” is written; it names customers, keep it as you keep the book.</source>
            <translation>„%1“ ist geschrieben; darin stehen Kunden, verwahren Sie die Datei wie das Buch.</translation>
        </message>
        <message>
            <source>there already, filled in, with a certificate of exemption: %1</source>
            <translation>schon vorhanden, ergänzt, mit Befreiungsnachweis: %1</translation>
        </message>
        <message>
            <source>new: %1</source>
            <translation>neu: %1</translation>
        </message>
        <message>
            <source>there already, filled in: %1</source>
            <translation>schon vorhanden, ergänzt: %1</translation>
        </message>
        <message>
            <source>there already: %1</source>
            <translation>schon vorhanden: %1</translation>
        </message>
        <message>
            <source>left out, somebody else has the name, telephone or mail: %1</source>
            <translation>ausgelassen, jemand anders hat Name, Telefon oder E-Mail: %1</translation>
        </message>
        <message>
            <source>Nothing was changed; add --yes to take them into the book.</source>
            <translation>Nichts wurde geändert; mit --yes werden sie ins Buch übernommen.</translation>
        </message>
        <message>
            <source>No customer is called or reached so.</source>
            <translation>Kein Kunde heißt so oder ist so erreichbar.</translation>
        </message>
        <message>
            <source>There is no stone size %1; the next to it are %2 and %3.</source>
            <translation>Die Steingröße %1 gibt es nicht; die nächsten sind %2 und %3.</translation>
        </message>
        <message>
            <source>There is no stone size %1; the next to it is %2.</source>
            <translation>Die Steingröße %1 gibt es nicht; die nächste ist %2.</translation>
        </message>
        <message>
            <source>There is no stone size %1; take one of these: %2.</source>
            <translation>Die Steingröße %1 gibt es nicht; nehmen Sie eine von diesen: %2.</translation>
        </message>
        <message>
            <source>There is no %1 in %2; its colours are: %3.</source>
            <translation>%2 enthält kein %1; die Farben darin sind: %3.</translation>
        </message>
        <message>
            <source>"%1" is not a style of setting stones; write outline, fill or both.</source>
            <translation>„%1“ ist keine Art, Steine zu setzen; schreiben Sie outline, fill oder both.</translation>
        </message>
        <message>
            <source>"%1" does not say how a colour is set; write as in red=SS16@4.5mm or white=none, with commas between.</source>
            <translation>„%1“ sagt nicht, wie eine Farbe gesetzt wird; schreiben Sie wie in red=SS16@4.5mm oder white=none, mit Kommas dazwischen.</translation>
        </message>
        <message>
            <source>Everything in the book is in “%1”: %2 tables, and book.json. It names customers and prices; keep it as you keep the book.</source>
            <translation>Alles aus dem Buch ist in „%1“: %2 Tabellen und book.json. Darin stehen Kunden und Preise; verwahren Sie es wie das Buch.</translation>
        </message>
        <message>
            <source>--by is month, week, design, customer, quantity or blank, not %1.</source>
            <translation>--by ist month, week, design, customer, quantity oder blank, nicht %1.</translation>
        </message>
        <message>
            <source>together</source>
            <translation>zusammen</translation>
        </message>
        <message>
            <source>Hours of some jobs are not known any more: they were priced by an earlier version.</source>
            <translation>Die Stunden mancher Aufträge sind nicht mehr bekannt: Sie wurden von einer früheren Version berechnet.</translation>
        </message>
        <message>
            <source>Left out: %1, of which the cost is not known any more.</source>
            <translation>Ausgelassen: %1, dessen Kosten nicht mehr bekannt sind.</translation>
        </message>
        <message>
            <source>Of %1 that the month costs anyway, %2 is carried, %3 is to go.</source>
            <translation>Von %1, die der Monat ohnehin kostet, sind %2 gedeckt, %3 fehlen noch.</translation>
        </message>
        <message>
            <source>That is %1 more of this kind.</source>
            <translation>Das sind noch %1 dieser Art.</translation>
        </message>
        <message>
            <source>That is %1 hours more at the bench of this kind.</source>
            <translation>Das sind noch %1 Stunden dieser Art an der Werkbank.</translation>
        </message>
        <message>
            <source>in %1</source>
            <translation>in %1</translation>
        </message>
        <message>
            <source>pieces</source>
            <translation>Stück</translation>
        </message>
        <message>
            <source>income</source>
            <translation>Erlös</translation>
        </message>
        <message>
            <source>cost</source>
            <translation>Kosten</translation>
        </message>
        <message>
            <source>left</source>
            <translation>Überschuss</translation>
        </message>
        <message>
            <source>hours</source>
            <translation>Stunden</translation>
        </message>
        <message>
            <source>an hour</source>
            <translation>je Stunde</translation>
        </message>
        <message>
            <source>lines of %1: %2 won, %3 lost, %4 open</source>
            <translation>Positionen mit %1: %2 gewonnen, %3 verloren, %4 offen</translation>
        </message>
        <message>
            <source>; the middle price won: %1</source>
            <translation>; mittlerer Preis der gewonnenen: %1</translation>
        </message>
        <message>
            <source>; the middle price lost: %1</source>
            <translation>; mittlerer Preis der verlorenen: %1</translation>
        </message>
        <message>
            <source>There is no stage “%1”; take one that the verb quotes lists.</source>
            <translation>Einen Stand „%1“ gibt es nicht; nehmen Sie einen, den der Befehl quotes nennt.</translation>
        </message>
        <message>
            <source>draft</source>
            <translation>Entwurf</translation>
        </message>
        <message>
            <source>for %1</source>
            <translation>für %1</translation>
        </message>
        <message>
            <source>%1 to %2</source>
            <translation>%1 bis %2</translation>
        </message>
        <message>
            <source>There are more; take a higher limit.</source>
            <translation>Es gibt mehr; setzen Sie die Grenze höher.</translation>
        </message>
        <message>
            <source>No quote is what you asked for.</source>
            <translation>Kein Angebot passt zu Ihrer Suche.</translation>
        </message>
        <message>
            <source>%1 fit, and no more can.</source>
            <translation>%1 passen, mehr können es nicht sein.</translation>
        </message>
        <message>
            <source>%1 fit; at most %2 could.</source>
            <translation>%1 passen; höchstens %2 könnten es sein.</translation>
        </message>
        <message>
            <source>%1: quote given, %2 %3.</source>
            <translation>%1: Angebot abgegeben, %2 %3.</translation>
        </message>
        <message>
            <source>%1 taken, %2 change.</source>
            <translation>%1 erhalten, %2 Rückgeld.</translation>
        </message>
        <message>
            <source>Rounded to the coin: %1 in cash for %2.</source>
            <translation>Auf die Münze gerundet: bar %1 statt %2.</translation>
        </message>
        <message>
            <source>%1 was let go; %2 of what was paid stay.</source>
            <translation>%1 ist entfallen; von dem Gezahlten bleiben %2.</translation>
        </message>
        <message>
            <source>%1: %2 paid of %3, %4 left.</source>
            <translation>%1: %2 von %3 gezahlt, %4 offen.</translation>
        </message>
        <message>
            <source>%1 are the customer’s credit.</source>
            <translation>%1 sind Guthaben des Kunden.</translation>
        </message>
        <message>
            <source>--amount is without a minus; use refund to give back.</source>
            <translation>--amount steht ohne Minus; zum Erstatten nehmen Sie refund.</translation>
        </message>
        <message>
            <source>--change and --credit are two things to do with what is too much; say one.</source>
            <translation>--change und --credit sind zwei Wege für das, was zu viel ist; nennen Sie einen.</translation>
        </message>
        <message>
            <source>%1: %2.</source>
            <translation>%1: %2.</translation>
        </message>
        <message>
            <source>Nothing is owed.</source>
            <translation>Es ist nichts offen.</translation>
        </message>
        <message>
            <source>“%1” could be %2; give the whole name.</source>
            <translation>„%1“ könnte %2 sein; geben Sie den ganzen Namen an.</translation>
        </message>
        <message>
            <source>What %1 × %2 costs the shop</source>
            <translation>Was %1 × %2 den Betrieb kostet</translation>
        </message>
        <message>
            <source>What the customer pays, %1</source>
            <translation>Was der Kunde zahlt, %1</translation>
        </message>
        <message>
            <source>The customer has no name; give one, or leave the customer out.</source>
            <translation>Der Kunde hat keinen Namen; geben Sie einen an oder lassen Sie den Kunden weg.</translation>
        </message>
        <message>
            <source>%1 must hold one to four choices.</source>
            <translation>%1 muss eine bis vier Varianten enthalten.</translation>
        </message>
        <message>
            <source>%1 must have either a share or an amount, as in {"share":"0.1"}.</source>
            <translation>%1 muss entweder einen Anteil oder einen Betrag haben, wie in {"share":"0.1"}.</translation>
        </message>
        <message>
            <source>There is no design named “%1” in this book; check the spelling.</source>
            <translation>Ein Motiv „%1“ gibt es in diesem Buch nicht; prüfen Sie die Schreibweise.</translation>
        </message>
        <message>
            <source>%1 must have one to eight designs; leave some out, or make it a charge.</source>
            <translation>%1 muss ein bis acht Motive haben; lassen Sie einige weg oder machen Sie einen Posten daraus.</translation>
        </message>
        <message>
            <source>There is no stone named “%1” in this book; check the spelling.</source>
            <translation>Einen Stein „%1“ gibt es in diesem Buch nicht; prüfen Sie die Schreibweise.</translation>
        </message>
        <message>
            <source>There is no packing named “%1” in this book; check the spelling.</source>
            <translation>Eine Verpackung „%1“ gibt es in diesem Buch nicht; prüfen Sie die Schreibweise.</translation>
        </message>
        <message>
            <source>%1 must be “piece” or “order”.</source>
            <translation>%1 muss „piece“ oder „order“ sein.</translation>
        </message>
        <message>
            <source>%1 goes with no customer’s garment: leave one of the two out.</source>
            <translation>%1 passt nicht zu einem Textil des Kunden: Lassen Sie eines von beiden weg.</translation>
        </message>
        <message>
            <source>There is no backing or blank named “%1” in this book; check the spelling.</source>
            <translation>Einen Träger oder Rohling „%1“ gibt es in diesem Buch nicht; prüfen Sie die Schreibweise.</translation>
        </message>
        <message>
            <source>none</source>
            <translation>keine</translation>
        </message>
        <message>
            <source>Leaves %1: mark-up %2, margin %3, earned per bench hour %4</source>
            <translation>Überschuss %1: Aufschlag %2, Marge %3, je Werkbankstunde verdient %4</translation>
        </message>
        <message>
            <source>Leaves %1: mark-up %2, margin %3</source>
            <translation>Überschuss %1: Aufschlag %2, Marge %3</translation>
        </message>
        <message>
            <source>Of the cost %1 is tax on what is given away</source>
            <translation>Von den Kosten sind %1 Steuer auf Verschenktes</translation>
        </message>
        <message>
            <source>Of the price the card takes %1</source>
            <translation>Vom Preis nimmt die Karte %1</translation>
        </message>
        <message>
            <source>Not in the price</source>
            <translation>Nicht im Preis</translation>
        </message>
        <message>
            <source>%1 must be a price for a length: write it as 0.50/in.</source>
            <translation>%1 muss ein Preis für eine Länge sein: Schreiben Sie ihn wie 0.50/in.</translation>
        </message>
        <message>
            <source>%1 must be 0 or more: change it.</source>
            <translation>%1 muss 0 oder mehr sein: Ändern Sie es.</translation>
        </message>
        <message>
            <source>Two sheets are called %1: give each its own id.</source>
            <translation>Zwei Bögen heißen %1: Geben Sie jedem eine eigene id.</translation>
        </message>
        <message>
            <source>A roll is planned by itself: leave out the other sheets.</source>
            <translation>Eine Rolle wird für sich geplant: Lassen Sie die anderen Bögen weg.</translation>
        </message>
        <message>
            <source>Two pieces are called %1: give each its own id.</source>
            <translation>Zwei Stücke heißen %1: Geben Sie jedem eine eigene id.</translation>
        </message>
        <message>
            <source>budget_ms must be 1 to 60,000: change it.</source>
            <translation>budget_ms muss 1 bis 60 000 sein: Ändern Sie es.</translation>
        </message>
        <message>
            <source>There is no supplier “%1” in this book; add it in Supplies.</source>
            <translation>Einen Lieferanten „%1“ gibt es in diesem Buch nicht; fügen Sie ihn unter „Material“ hinzu.</translation>
        </message>
        <message>
            <source>%1, was %2</source>
            <translation>%1, vorher %2</translation>
        </message>
        <message>
            <source>%1, a new pack</source>
            <translation>%1, eine neue Packung</translation>
        </message>
        <message>
            <source>Packs that change: %1; as they were: %2. Rows that cannot be taken: %3.</source>
            <translation>Geänderte Packungen: %1; unveränderte: %2. Nicht übernehmbare Zeilen: %3.</translation>
        </message>
        <message>
            <source>Stones that are missing: %1; --make-missing makes them.</source>
            <translation>Fehlende Steine: %1; --make-missing legt sie an.</translation>
        </message>
        <message>
            <source>The price list is taken over.</source>
            <translation>Die Preisliste ist übernommen.</translation>
        </message>
        <message>
            <source>Nothing is changed yet; --take takes it over.</source>
            <translation>Noch ist nichts geändert; --take übernimmt es.</translation>
        </message>
        <message>
            <source>What it costs the shop</source>
            <translation>Was es den Betrieb kostet</translation>
        </message>
        <message>
            <source>More pieces, each</source>
            <translation>Mehr Stück, je Stück</translation>
        </message>
        <message>
            <source>There is no such purchase: %1.</source>
            <translation>Einen solchen Einkauf gibt es nicht: %1.</translation>
        </message>
        <message>
            <source>%1 cannot be read: check its name.</source>
            <translation>%1 kann nicht gelesen werden: Prüfen Sie den Namen.</translation>
        </message>
        <message>
            <source>The file</source>
            <translation>Die Datei</translation>
        </message>
        <message>
            <source>%1 must be a number, as in 12 or "12.50".</source>
            <translation>%1 muss eine Zahl sein, wie in 12 oder "12.50".</translation>
        </message>
        <message>
            <source>%1 must have %2 decimals at most.</source>
            <translation>%1 darf höchstens %2 Dezimalstellen haben.</translation>
        </message>
        <message>
            <source>%1 is larger than the program works with.</source>
            <translation>%1 ist größer, als das Programm verarbeiten kann.</translation>
        </message>
        <message>
            <source>%1 is larger than 16 MB.</source>
            <translation>%1 ist größer als 16 MB.</translation>
        </message>
        <message>
            <source>%1 stands twice in one object: leave one of them.</source>
            <translation>%1 steht zweimal in einem Objekt: Lassen Sie eines davon stehen.</translation>
        </message>
        <message>
            <source>%1 is not JSON: check its brackets, commas and quotes.</source>
            <translation>%1 ist kein JSON: Prüfen Sie Klammern, Kommas und Anführungszeichen.</translation>
        </message>
        <message>
            <source>%1 must be an object in braces.</source>
            <translation>%1 muss ein Objekt in geschweiften Klammern sein.</translation>
        </message>
        <message>
            <source>%1 must be text in quotes.</source>
            <translation>%1 muss Text in Anführungszeichen sein.</translation>
        </message>
        <message>
            <source>%1 must be 1 to 200 printable letters.</source>
            <translation>%1 muss aus 1 bis 200 druckbaren Zeichen bestehen.</translation>
        </message>
        <message>
            <source>%1 must be a length in quotes, as in "0.25in".</source>
            <translation>%1 muss eine Länge in Anführungszeichen sein, wie in "0.25in".</translation>
        </message>
        <message>
            <source>%1 says no unit: write it as 0.25in or 6mm.</source>
            <translation>%1 nennt keine Einheit: Schreiben Sie es wie 0.25in oder 6mm.</translation>
        </message>
        <message>
            <source>%1 must be a size in quotes, as in "9x12in".</source>
            <translation>%1 muss eine Größe in Anführungszeichen sein, wie in "9x12in".</translation>
        </message>
        <message>
            <source>%1 must be true or false.</source>
            <translation>%1 muss true oder false sein.</translation>
        </message>
        <message>
            <source>%1 must be a list in square brackets.</source>
            <translation>%1 muss eine Liste in eckigen Klammern sein.</translation>
        </message>
        <message>
            <source>%1 must be an object of shares, as in {"M":"0.02"}.</source>
            <translation>%1 muss ein Objekt mit Anteilen sein, wie in {"M":"0.02"}.</translation>
        </message>
        <message>
            <source>%1 is not known here: check its spelling or leave it out.</source>
            <translation>%1 ist hier nicht bekannt: Prüfen Sie die Schreibweise oder lassen Sie es weg.</translation>
        </message>
        <message>
            <source>The file’s figures come to more than the program works with: make them smaller.</source>
            <translation>Die Zahlen der Datei ergeben mehr, als das Programm verarbeiten kann: Machen Sie sie kleiner.</translation>
        </message>
        <message>
            <source>There is no schema %1; there are yield, buy and pack.</source>
            <translation>Ein Schema %1 gibt es nicht; es gibt yield, buy und pack.</translation>
        </message>
        <message>
            <source>%1: %2, was %3</source>
            <translation>%1: %2, vorher %3</translation>
        </message>
        <message>
            <source>%1 came to %2; once more today it comes to %3 %4.</source>
            <translation>%1 ergab %2; heute noch einmal ergibt es %3 %4.</translation>
        </message>
        <message>
            <source>Nothing is given yet; --give gives the quote.</source>
            <translation>Noch ist nichts abgegeben; --give gibt das Angebot ab.</translation>
        </message>
        <message>
            <source>%1 came to %2; revised it comes to %3 %4.</source>
            <translation>%1 ergab %2; überarbeitet ergibt es %3 %4.</translation>
        </message>
        <message>
            <source>At today's prices what was given would come to %1 less.</source>
            <translation>Zu heutigen Preisen ergäbe das Abgegebene %1 weniger.</translation>
        </message>
        <message>
            <source>At today's prices what was given would come to %1 more.</source>
            <translation>Zu heutigen Preisen ergäbe das Abgegebene %1 mehr.</translation>
        </message>
        <message>
            <source>There is no material “%1” in this book; “materials” lists them.</source>
            <translation>Ein Material „%1“ gibt es in diesem Buch nicht; „materials“ listet alle auf.</translation>
        </message>
        <message>
            <source>No materials yet.</source>
            <translation>Noch kein Material.</translation>
        </message>
        <message>
            <source>What %1 takes is not known; nothing of it is promised.</source>
            <translation>Was %1 braucht, ist nicht bekannt; davon ist nichts zugesagt.</translation>
        </message>
        <message>
            <source>%1: %2 on the shelf, as the book has it.</source>
            <translation>%1: %2 auf Lager, laut Buch.</translation>
        </message>
        <message>
            <source>%1: %2 on the shelf now; the difference of %3 is booked as counted.</source>
            <translation>%1: jetzt %2 auf Lager; der Unterschied von %3 ist als gezählt gebucht.</translation>
        </message>
        <message>
            <source>By the steps of the scale there may be %1 to %2.</source>
            <translation>Nach den Schritten der Waage können es %1 bis %2 sein.</translation>
        </message>
        <message>
            <source>“%1” is not a width and a height; write it as 9x12in or 90x120mm.</source>
            <translation>„%1“ ist keine Breite und Höhe; schreiben Sie es wie 9x12in oder 90x120mm.</translation>
        </message>
        <message>
            <source>“%1” says no unit; write it as 9x12in or 90x120mm.</source>
            <translation>„%1“ nennt keine Einheit; schreiben Sie es wie 9x12in oder 90x120mm.</translation>
        </message>
        <message>
            <source>“%1” says no unit; write it as 0.25in or 6mm.</source>
            <translation>„%1“ nennt keine Einheit; schreiben Sie es wie 0.25in oder 6mm.</translation>
        </message>
        <message>
            <source>without tax</source>
            <translation>ohne Steuer</translation>
        </message>
        <message>
            <source>tax</source>
            <translation>Steuer</translation>
        </message>
        <message>
            <source>customers exempt</source>
            <translation>befreite Kunden</translation>
        </message>
        <message>
            <source>not taxed</source>
            <translation>nicht besteuert</translation>
        </message>
        <message>
            <source>Invoices: %1, credit notes: %2; with the tax they come to %3.</source>
            <translation>Rechnungen: %1, Gutschriften: %2; mit der Steuer ergeben sie %3.</translation>
        </message>
        <message>
            <source>What is owed of it, to whom and when, your tax authority or an accountant says; invoices that were not made here are not in it.</source>
            <translation>Was davon wem und wann geschuldet ist, sagt Ihnen das Finanzamt oder ein Steuerberater; Rechnungen, die nicht hier geschrieben wurden, sind nicht enthalten.</translation>
        </message>
        <message>
            <source>Nothing asks for anything today.</source>
            <translation>Heute ist nichts zu erledigen.</translation>
        </message>
        <message>
            <source>late, wanted by %1</source>
            <translation>zu spät, gewünscht bis %1</translation>
        </message>
        <message>
            <source>wanted today</source>
            <translation>heute gewünscht</translation>
        </message>
        <message>
            <source>%1 of the deposit are missing</source>
            <translation>von der Anzahlung fehlen %1</translation>
        </message>
        <message>
            <source>the quote ends on %1</source>
            <translation>das Angebot endet am %1</translation>
        </message>
        <message>
            <source>ready since %1, not collected</source>
            <translation>fertig seit %1, nicht abgeholt</translation>
        </message>
        <message>
            <source>collected, %1 are owed</source>
            <translation>abgeholt, %1 sind offen</translation>
        </message>
        <message>
            <source>%1: the certificate of exemption for %2 ended on %3.</source>
            <translation>%1: Der Befreiungsnachweis für %2 ist am %3 abgelaufen.</translation>
        </message>
        <message>
            <source>%1: the certificate of exemption for %2 ends on %3.</source>
            <translation>%1: Der Befreiungsnachweis für %2 läuft am %3 ab.</translation>
        </message>
        <message>
            <source>Stonepenny: what will this order cost, and what shall the customer pay?</source>
            <translation>Stonepenny: Was kostet diese Bestellung, und was soll der Kunde zahlen?</translation>
        </message>
        <message>
            <source>%1   opens the app on a job book</source>
            <translation>%1   öffnet das Programm mit einem Auftragsbuch</translation>
        </message>
        <message>
            <source>Dates are YYYY-MM-DD. --json answers in JSON. Exit 0: done, 1: not possible, 2: wrong use.</source>
            <translation>Ein Datum hat die Form JJJJ-MM-TT. --json antwortet in JSON. Rückgabe 0: erledigt, 1: nicht möglich, 2: falscher Aufruf.</translation>
        </message>
        <message>
            <source>Say what to do; stonepenny --help lists the verbs.</source>
            <translation>Sagen Sie, was zu tun ist; stonepenny --help nennt die Befehle.</translation>
        </message>
        <message>
            <source>%1 Use: %2</source>
            <translation>%1 Aufruf: %2</translation>
        </message>
        <message>
            <source>%1 could not be done: %2.</source>
            <translation>%1 konnte nicht ausgeführt werden: %2.</translation>
        </message>
        <message>
            <source>There is a file “%1” already; choose another name, or add --force to replace it.</source>
            <translation>Eine Datei „%1“ gibt es schon; wählen Sie einen anderen Namen oder ersetzen Sie sie mit --force.</translation>
        </message>
        <message>
            <source>--to, %1, is before --from, %2; turn the two round.</source>
            <translation>--to, %1, liegt vor --from, %2; vertauschen Sie die beiden.</translation>
        </message>
        <message>
            <source>There must be 1 to 1,000,000 kits: change kits.</source>
            <translation>Es müssen 1 bis 1 000 000 Sets sein: Ändern Sie kits.</translation>
        </message>
        <message>
            <source>A kit has 10,000 materials at most.</source>
            <translation>Ein Set hat höchstens 10 000 Materialien.</translation>
        </message>
        <message>
            <source>%1 is counted in one place and cut from sheets in another: make them agree.</source>
            <translation>%1 wird an einer Stelle gezählt und an einer anderen aus Bögen geschnitten: Machen Sie beides gleich.</translation>
        </message>
        <message>
            <source>All kits together must hold 0 to 1,000,000,000 of %1: change its count.</source>
            <translation>Alle Sets zusammen müssen 0 bis 1 000 000 000 von %1 enthalten: Ändern Sie die Anzahl.</translation>
        </message>
        <message>
            <source>A piece takes 0 to 1,000,000,000 of %1: change its count.</source>
            <translation>Ein Stück braucht 0 bis 1 000 000 000 von %1: Ändern Sie die Anzahl.</translation>
        </message>
        <message>
            <source>%1 is needed in two sizes: name one.</source>
            <translation>%1 wird in zwei Größen gebraucht: Nennen Sie eine.</translation>
        </message>
        <message>
            <source>%1 names %2, which is not among the counted materials: check its name.</source>
            <translation>%1 nennt %2, das nicht zum gezählten Material gehört: Prüfen Sie den Namen.</translation>
        </message>
        <message>
            <source>“%1” is larger than 16 MB; read it in parts.</source>
            <translation>„%1“ ist größer als 16 MB; lesen Sie die Datei in Teilen ein.</translation>
        </message>
        <message>
            <source>“%1” holds more than 20,000 people; read it in parts.</source>
            <translation>„%1“ enthält mehr als 20 000 Personen; lesen Sie die Datei in Teilen ein.</translation>
        </message>
        <message>
            <source>“%1” names nobody; choose another file.</source>
            <translation>„%1“ nennt niemanden; wählen Sie eine andere Datei.</translation>
        </message>
        <message>
            <source>Line %2 of “%1” belongs to no card; save the contacts as vCard 4.0 or 3.0.</source>
            <translation>Zeile %2 von „%1“ gehört zu keiner Karte; speichern Sie die Kontakte als vCard 4.0 oder 3.0.</translation>
        </message>
        <message>
            <source>The card that begins in line %2 of “%1” has no end; save the file once more.</source>
            <translation>Die Karte, die in Zeile %2 von „%1“ beginnt, hat kein Ende; speichern Sie die Datei noch einmal.</translation>
        </message>
        <message>
            <source>Line %2 of “%1” says vCard 2.1, which is not read; save it as 4.0 or 3.0.</source>
            <translation>Zeile %2 von „%1“ nennt vCard 2.1, das nicht gelesen wird; speichern Sie als 4.0 oder 3.0.</translation>
        </message>
        <message>
            <source>The card in line %2 of “%1” is of no known version; save it as vCard 4.0 or 3.0.</source>
            <translation>Die Karte in Zeile %2 von „%1“ hat keine bekannte Version; speichern Sie als vCard 4.0 oder 3.0.</translation>
        </message>
        <message>
            <source>Line %2 of “%1” is written as quoted-printable, which belongs to vCard 2.1; save the contacts as vCard 4.0 or 3.0.</source>
            <translation>Zeile %2 von „%1“ ist als quoted-printable geschrieben, das zu vCard 2.1 gehört; speichern Sie die Kontakte als vCard 4.0 oder 3.0.</translation>
        </message>
        <message>
            <source>Line %2 of “%1” is not in UTF-8; save the contacts in UTF-8.</source>
            <translation>Zeile %2 von „%1“ ist nicht in UTF-8; speichern Sie die Kontakte in UTF-8.</translation>
        </message>
        <message>
            <source>Line %2 of “%1” cannot be read as part of a card; mend it or leave it out.</source>
            <translation>Zeile %2 von „%1“ kann nicht als Teil einer Karte gelesen werden; berichtigen Sie sie oder lassen Sie sie weg.</translation>
        </message>
        <message>
            <source>Line %2 of “%1” is longer than 100,000 bytes; leave it out.</source>
            <translation>Zeile %2 von „%1“ ist länger als 100 000 Bytes; lassen Sie sie weg.</translation>
        </message>
        <message>
            <source>“%1” has no column “name”; call one so in its first row.</source>
            <translation>„%1“ hat keine Spalte „name“; nennen Sie in der ersten Zeile eine so.</translation>
        </message>
        <message>
            <source>Line %2 of “%1” cannot be read as a table; look for a quotation mark that is not closed, or too many columns.</source>
            <translation>Zeile %2 von „%1“ kann nicht als Tabelle gelesen werden; suchen Sie nach einem offenen Anführungszeichen oder zu vielen Spalten.</translation>
        </message>
        <message>
            <source>Line %2 of “%1” has a day that cannot be read; write it like 2026-12-31.</source>
            <translation>Zeile %2 von „%1“ hat ein Datum, das nicht gelesen werden kann; schreiben Sie es wie 2026-12-31.</translation>
        </message>
        <message>
            <source>“%1” is no text; choose a vCard file or a table.</source>
            <translation>„%1“ ist kein Text; wählen Sie eine vCard-Datei oder eine Tabelle.</translation>
        </message>
        <message>
            <source>Name, address, telephone, mail, note and certificate go for good, from the list, from the log of changes and from every paper. Jobs, sums, numbers and seals stay, and so does what was typed into titles, names on pieces, notes of payments and drawings. Printed or exported files are not touched. Whether you must keep records for the tax office is for you to ask. This cannot be undone.</source>
            <translation>Name, Adresse, Telefon, E-Mail, Notiz und Nachweis werden endgültig gelöscht, aus der Liste, aus dem Änderungsprotokoll und aus jedem Beleg. Aufträge, Summen, Nummern und Siegel bleiben, ebenso, was in Titel, Namen auf Stücken, Notizen zu Zahlungen und Zeichnungen getippt wurde. Gedruckte oder exportierte Dateien bleiben unberührt. Ob Sie Unterlagen für das Finanzamt aufbewahren müssen, erfragen Sie bitte selbst. Das lässt sich nicht rückgängig machen.</translation>
        </message>
        <message>
            <source>The second place for backups, “%1”, is not there now; copies in it may hold the person as well, so look through it when it is back.</source>
            <translation>Der zweite Ort für Sicherungen, „%1“, ist gerade nicht da; auch Kopien dort können die Person enthalten, sehen Sie sie also durch, sobald er wieder da ist.</translation>
        </message>
        <message>
            <source>--service must be 90, 95, 98 or 99, not “%1”.</source>
            <translation>--service muss 90, 95, 98 oder 99 sein, nicht „%1“.</translation>
        </message>
        <message>
            <source>--days must be 2 to %1, not “%2”.</source>
            <translation>--days muss zwischen 2 und %1 liegen, nicht „%2“.</translation>
        </message>
        <message>
            <source>How much to order is worked out from --order-cost and --holding together: give both, or neither.</source>
            <translation>Wie viel zu bestellen ist, wird aus --order-cost und --holding zusammen berechnet: Geben Sie beide an oder keines.</translation>
        </message>
        <message>
            <source>%1: when to order is not known; give its supplier lead days. Free: %2, used: %3, days looked at: %4.</source>
            <translation>%1: Wann zu bestellen ist, ist nicht bekannt; geben Sie bei seinem Lieferanten die Liefertage an. Frei: %2, verbraucht: %3, betrachtete Tage: %4.</translation>
        </message>
        <message>
            <source>%1: order now. Free: %2, low at: %3 (used: %4, days looked at: %5, lead days: %6, kept for days of more use: %7).</source>
            <translation>%1: jetzt bestellen. Frei: %2, niedrig ab: %3 (verbraucht: %4, betrachtete Tage: %5, Liefertage: %6, für Tage mit mehr Verbrauch: %7).</translation>
        </message>
        <message>
            <source>%1: enough is there. Free: %2, low at: %3 (used: %4, days looked at: %5, lead days: %6, kept for days of more use: %7).</source>
            <translation>%1: genug da. Frei: %2, niedrig ab: %3 (verbraucht: %4, betrachtete Tage: %5, Liefertage: %6, für Tage mit mehr Verbrauch: %7).</translation>
        </message>
        <message>
            <source>%1: ordering %2 of “%3” at a time costs least in a year.</source>
            <translation>%1: Jeweils %2 von „%3“ zu bestellen kostet im Jahr am wenigsten.</translation>
        </message>
        <message>
            <source>Nothing was taken off the shelf in these days.</source>
            <translation>In diesen Tagen wurde nichts aus dem Lager genommen.</translation>
        </message>
        <message>
            <source>%1 must be more than nothing, not “%2”.</source>
            <translation>%1 muss mehr als nichts sein, nicht „%2“.</translation>
        </message>
        <message>
            <source>%1: %2 lacking for agreed jobs; order now.</source>
            <translation>%1: Für beauftragte Aufträge fehlen %2; jetzt bestellen.</translation>
        </message>
        <message>
            <source>%1: days known: %2, too few to tell when to order; look again later.</source>
            <translation>%1: bekannte Tage: %2, zu wenige, um zu sagen, wann zu bestellen ist; sehen Sie später wieder nach.</translation>
        </message>
        <message>
            <source>%1: days looked at: %2, too few to tell when to order; look at more with --days.</source>
            <translation>%1: betrachtete Tage: %2, zu wenige, um zu sagen, wann zu bestellen ist; betrachten Sie mehr mit --days.</translation>
        </message>
    </context>
    <context>
        <name>Artwork</name>
        <message>
            <source>%1 is empty; save the artwork again.</source>
            <translation>%1 ist leer; speichern Sie die Zeichnung noch einmal.</translation>
        </message>
        <message>
            <source>%1 is a zip file, whatever its name says; unpack it and drop the drawing inside.</source>
            <translation>%1 ist eine Zip-Datei, was immer ihr Name sagt; entpacken Sie sie und ziehen Sie die Zeichnung daraus herein.</translation>
        </message>
        <message>
            <source>%1 is a bitmap (%2), and a bitmap cannot be counted; ask for the drawing as SVG, DXF or PLT.</source>
            <translation>%1 ist ein Pixelbild (%2), und ein Pixelbild lässt sich nicht zählen; bitten Sie um die Zeichnung als SVG, DXF oder PLT.</translation>
        </message>
        <message>
            <source>%1 is a PDF; open it in a drawing program, save the artwork as SVG and drop that.</source>
            <translation>%1 ist ein PDF; öffnen Sie es in einem Zeichenprogramm, speichern Sie die Zeichnung als SVG und ziehen Sie diese herein.</translation>
        </message>
        <message>
            <source>%1 is PostScript (EPS); open it in a drawing program, save the artwork as SVG and drop that.</source>
            <translation>%1 ist PostScript (EPS); öffnen Sie es in einem Zeichenprogramm, speichern Sie die Zeichnung als SVG und ziehen Sie diese herein.</translation>
        </message>
        <message>
            <source>%1 is a binary DXF; save it as ASCII DXF and drop that.</source>
            <translation>%1 ist ein binäres DXF; speichern Sie es als ASCII-DXF und ziehen Sie dieses herein.</translation>
        </message>
        <message>
            <source>%1 is a DWG drawing; save it as ASCII DXF and drop that.</source>
            <translation>%1 ist eine DWG-Zeichnung; speichern Sie sie als ASCII-DXF und ziehen Sie diese herein.</translation>
        </message>
        <message>
            <source>%1 is a metafile (%2); open it in a drawing program, save the artwork as SVG and drop that.</source>
            <translation>%1 ist ein Metafile (%2); öffnen Sie es in einem Zeichenprogramm, speichern Sie die Zeichnung als SVG und ziehen Sie diese herein.</translation>
        </message>
        <message>
            <source>%1 is in a form that only the program which made it reads; open it there, save the artwork as SVG and drop that.</source>
            <translation>%1 ist in einem Format, das nur das Programm liest, mit dem es gemacht wurde; öffnen Sie es dort, speichern Sie die Zeichnung als SVG und ziehen Sie diese herein.</translation>
        </message>
        <message>
            <source>%1 is none of SVG, DXF and PLT; save the artwork as one of these and drop that.</source>
            <translation>%1 ist weder SVG noch DXF noch PLT; speichern Sie die Zeichnung in einem dieser Formate und ziehen Sie diese herein.</translation>
        </message>
        <message>
            <source>%1 is not an SVG drawing; save the artwork as SVG or DXF and drop that.</source>
            <translation>%1 ist keine SVG-Zeichnung; speichern Sie die Zeichnung als SVG oder DXF und ziehen Sie diese herein.</translation>
        </message>
        <message>
            <source>%1 breaks off or is garbled at byte %2 (%3); save it again from the drawing program.</source>
            <translation>%1 bricht bei Byte %2 ab oder ist dort verstümmelt (%3); speichern Sie die Datei im Zeichenprogramm noch einmal.</translation>
        </message>
        <message>
            <source>%1 breaks off or is garbled at byte %2; save it again from the drawing program.</source>
            <translation>%1 bricht bei Byte %2 ab oder ist dort verstümmelt; speichern Sie die Datei im Zeichenprogramm noch einmal.</translation>
        </message>
        <message>
            <source>%1 is compressed, and breaks off or is garbled; save it again from the drawing program.</source>
            <translation>%1 ist komprimiert und bricht ab oder ist verstümmelt; speichern Sie die Datei im Zeichenprogramm noch einmal.</translation>
        </message>
        <message>
            <source>%1 unpacks to more than %2 MB, which is too large to be one design; split it into parts and count each.</source>
            <translation>%1 ist entpackt größer als %2 MB, zu groß für ein einziges Motiv; teilen Sie die Datei auf und zählen Sie jeden Teil.</translation>
        </message>
        <message>
            <source>%1 is too large to be one design (%2 MB); split it into parts and count each.</source>
            <translation>%1 ist zu groß für ein einziges Motiv (%2 MB); teilen Sie die Datei auf und zählen Sie jeden Teil.</translation>
        </message>
        <message>
            <source>%1 holds more than %2 outlines, which is more than one design can be; split it into parts and count each.</source>
            <translation>%1 enthält mehr als %2 Konturen, mehr als ein einziges Motiv haben kann; teilen Sie die Datei auf und zählen Sie jeden Teil.</translation>
        </message>
        <message>
            <source>%1 has outlines of more than %2 corners in all; simplify its paths and try again.</source>
            <translation>%1 hat Konturen mit zusammen mehr als %2 Ecken; vereinfachen Sie die Pfade und versuchen Sie es noch einmal.</translation>
        </message>
        <message>
            <source>%1 repeats its parts more often than any one design does; expand it in a drawing program and save the parts that are needed.</source>
            <translation>%1 wiederholt seine Teile öfter, als ein einziges Motiv es tut; lösen Sie sie in einem Zeichenprogramm auf und speichern Sie die Teile, die gebraucht werden.</translation>
        </message>
        <message>
            <source>%1 has far more lines and curves than one design does; simplify its paths and try again.</source>
            <translation>%1 hat weit mehr Linien und Kurven als ein einziges Motiv; vereinfachen Sie die Pfade und versuchen Sie es noch einmal.</translation>
        </message>
        <message>
            <source>%1 nests its groups more than %2 deep; ungroup the artwork and save it again.</source>
            <translation>%1 schachtelt Gruppen mehr als %2-fach; heben Sie die Gruppierung auf und speichern Sie die Zeichnung noch einmal.</translation>
        </message>
        <message>
            <source>%1 has a style sheet too involved to follow; save it with colours on the shapes themselves and try again.</source>
            <translation>%1 hat ein zu verwickeltes Stylesheet; speichern Sie die Datei mit Farben an den Formen selbst und versuchen Sie es noch einmal.</translation>
        </message>
        <message>
            <source>%1 defines abbreviations that unfold without end; save it as plain SVG and try again.</source>
            <translation>%1 legt Abkürzungen fest, die sich endlos entfalten; speichern Sie die Datei als einfaches SVG und versuchen Sie es noch einmal.</translation>
        </message>
        <message>
            <source>The discs of %1 lie on one another by the hundred; remove the copies and try again.</source>
            <translation>Die Kreise von %1 liegen zu Hunderten übereinander; entfernen Sie die Kopien und versuchen Sie es noch einmal.</translation>
        </message>
        <message>
            <source>The stones of %1 lie over %2 m; check the scale.</source>
            <translation>Die Steine von %1 verteilen sich über %2 m; prüfen Sie den Maßstab.</translation>
        </message>
        <message>
            <source>%1 has no discs of a stone's size; %2. %3</source>
            <translation>%1 hat keine Kreise in der Größe eines Steins; %2. %3</translation>
        </message>
        <message>
            <source>A stone needs a diameter and its distance from the edge cannot be negative; check both.</source>
            <translation>Ein Stein braucht einen Durchmesser, und sein Abstand vom Rand kann nicht negativ sein; prüfen Sie beides.</translation>
        </message>
        <message>
            <source>A pitch of %1 mm sets stones of %2 mm on top of each other; give at least their diameter.</source>
            <translation>Eine Teilung von %1 mm setzt Steine von %2 mm übereinander; geben Sie mindestens ihren Durchmesser an.</translation>
        </message>
        <message>
            <source>%1 would take more than %2 stones at this size; check the scale.</source>
            <translation>%1 bräuchte in dieser Größe mehr als %2 Steine; prüfen Sie den Maßstab.</translation>
        </message>
        <message>
            <source>No part of %1 is wide enough for a stone of %2 mm; take a smaller stone or a larger size.</source>
            <translation>Kein Teil von %1 ist breit genug für einen Stein von %2 mm; nehmen Sie einen kleineren Stein oder machen Sie es größer.</translation>
        </message>
        <message>
            <source>%1 reaches over a kilometre at this scale; check the scale.</source>
            <translation>%1 reicht in diesem Maßstab über einen Kilometer; prüfen Sie den Maßstab.</translation>
        </message>
        <message>
            <source>The shapes of %1 are too involved to estimate (%2 corners); simplify the paths and try again.</source>
            <translation>Die Formen von %1 sind zu verwickelt zum Schätzen (%2 Ecken); vereinfachen Sie die Pfade und versuchen Sie es noch einmal.</translation>
        </message>
        <message>
            <source>The area of %1 could not be worked out (%2); simplify the paths and try again.</source>
            <translation>Die Fläche von %1 ließ sich nicht berechnen (%2); vereinfachen Sie die Pfade und versuchen Sie es noch einmal.</translation>
        </message>
        <message>
            <source>%1 has no closed or filled shape to set stones on; close its outlines, or turn text into outlines, and try again.</source>
            <translation>%1 hat keine geschlossene oder gefüllte Form, auf die sich Steine setzen lassen; schließen Sie die Konturen oder wandeln Sie Text in Konturen um und versuchen Sie es noch einmal.</translation>
        </message>
        <message>
            <source>"%1" is not a scale; write 96 dpi, mm, in, or the millimetres one unit is, as in 0.2646.</source>
            <translation>„%1“ ist kein Maßstab; schreiben Sie 96 dpi, mm, in oder die Millimeter einer Einheit, wie in 0.2646.</translation>
        </message>
        <message>
            <source>A scale of %1 makes the drawing absurdly small or large; check the number.</source>
            <translation>Ein Maßstab von %1 macht die Zeichnung unsinnig klein oder groß; prüfen Sie die Zahl.</translation>
        </message>
        <message>
            <source>%1 not read</source>
            <translation>%1 nicht gelesen</translation>
        </message>
        <message>
            <source>beyond all measure</source>
            <translation>jenseits aller Maße</translation>
        </message>
        <message numerus="yes">
            <source>bitmaps</source>
            <translation>
                <numerusform>Pixelbild</numerusform>
                <numerusform>Pixelbilder</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>copies of a part inside itself</source>
            <translation>
                <numerusform>Kopie eines Teils in sich selbst</numerusform>
                <numerusform>Kopien eines Teils in sich selbst</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>copies of a part that is not in the file</source>
            <translation>
                <numerusform>Kopie eines Teils, der nicht in der Datei ist</numerusform>
                <numerusform>Kopien eines Teils, der nicht in der Datei ist</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>cut lines or large shapes</source>
            <translation>
                <numerusform>Schnittlinie oder große Form</numerusform>
                <numerusform>Schnittlinien oder große Formen</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>dotted lines, their dots not counted</source>
            <translation>
                <numerusform>gepunktete Linie, ihre Punkte nicht gezählt</numerusform>
                <numerusform>gepunktete Linien, ihre Punkte nicht gezählt</numerusform>
            </translation>
        </message>
        <message>
            <source>drawn twice</source>
            <translation>doppelt gezeichnet</translation>
        </message>
        <message numerus="yes">
            <source>ellipses</source>
            <translation>
                <numerusform>Ellipse</numerusform>
                <numerusform>Ellipsen</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>embedded pages, not drawings</source>
            <translation>
                <numerusform>eingebettete Seite, keine Zeichnung</numerusform>
                <numerusform>eingebettete Seiten, keine Zeichnungen</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>entities with a mistake in them</source>
            <translation>
                <numerusform>Element mit einem Fehler</numerusform>
                <numerusform>Elemente mit einem Fehler</numerusform>
            </translation>
        </message>
        <message>
            <source>hidden</source>
            <translation>verborgen</translation>
        </message>
        <message numerus="yes">
            <source>lines with markers, the markers not counted</source>
            <translation>
                <numerusform>Linie mit Markierungen, die Markierungen nicht gezählt</numerusform>
                <numerusform>Linien mit Markierungen, die Markierungen nicht gezählt</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>meshes, not outlines</source>
            <translation>
                <numerusform>Netz, keine Kontur</numerusform>
                <numerusform>Netze, keine Konturen</numerusform>
            </translation>
        </message>
        <message>
            <source>not painted</source>
            <translation>ohne Füllung und Strich</translation>
        </message>
        <message>
            <source>not round</source>
            <translation>nicht rund</translation>
        </message>
        <message>
            <source>on the paper sheet, not in the drawing</source>
            <translation>auf dem Papierblatt, nicht in der Zeichnung</translation>
        </message>
        <message numerus="yes">
            <source>open lines</source>
            <translation>
                <numerusform>offene Linie</numerusform>
                <numerusform>offene Linien</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>other entities not read</source>
            <translation>
                <numerusform>anderes Element, nicht gelesen</numerusform>
                <numerusform>andere Elemente, nicht gelesen</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>other unknown elements</source>
            <translation>
                <numerusform>anderes unbekanntes Element</numerusform>
                <numerusform>andere unbekannte Elemente</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>parts of another file, not opened</source>
            <translation>
                <numerusform>Teil einer anderen Datei, nicht geöffnet</numerusform>
                <numerusform>Teile einer anderen Datei, nicht geöffnet</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>shapes filled with a pattern, what it shows not counted</source>
            <translation>
                <numerusform>Form mit Musterfüllung, deren Inhalt nicht gezählt</numerusform>
                <numerusform>Formen mit Musterfüllung, deren Inhalt nicht gezählt</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>points without a size</source>
            <translation>
                <numerusform>Punkt ohne Größe</numerusform>
                <numerusform>Punkte ohne Größe</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>rings of other discs</source>
            <translation>
                <numerusform>Ring um einen anderen Kreis</numerusform>
                <numerusform>Ringe um andere Kreise</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>round lines around stones</source>
            <translation>
                <numerusform>runde Linie um Steine</numerusform>
                <numerusform>runde Linien um Steine</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>scripts, never run</source>
            <translation>
                <numerusform>Skript, nie ausgeführt</numerusform>
                <numerusform>Skripte, nie ausgeführt</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>shapes with a mistake in them, read as far as they go</source>
            <translation>
                <numerusform>Form mit einem Fehler, gelesen, soweit es geht</numerusform>
                <numerusform>Formen mit einem Fehler, gelesen, soweit es geht</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>discs whose place or size cannot be read</source>
            <translation>
                <numerusform>Kreis, dessen Ort oder Größe nicht lesbar ist</numerusform>
                <numerusform>Kreise, deren Ort oder Größe nicht lesbar ist</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>splines not read</source>
            <translation>
                <numerusform>Spline, nicht gelesen</numerusform>
                <numerusform>Splines, nicht gelesen</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>stones</source>
            <translation>
                <numerusform>Stein</numerusform>
                <numerusform>Steine</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>texts not turned to outlines</source>
            <translation>
                <numerusform>Text, nicht in Konturen umgewandelt</numerusform>
                <numerusform>Texte, nicht in Konturen umgewandelt</numerusform>
            </translation>
        </message>
        <message>
            <source>tilted out of the plane</source>
            <translation>aus der Ebene gekippt</translation>
        </message>
        <message>
            <source>too large</source>
            <translation>zu groß</translation>
        </message>
        <message>
            <source>too small</source>
            <translation>zu klein</translation>
        </message>
        <message numerus="yes">
            <source>unknown elements %1</source>
            <translation>
                <numerusform>unbekanntes Element %1</numerusform>
                <numerusform>unbekannte Elemente %1</numerusform>
            </translation>
        </message>
        <message>
            <source>it has no outlines at all</source>
            <translation>sie hat gar keine Konturen</translation>
        </message>
        <message>
            <source>what it has: %1</source>
            <translation>was sie hat: %1</translation>
        </message>
        <message>
            <source>%1 %2</source>
            <translation>%1 %2</translation>
        </message>
        <message>
            <source>Turn the text into outlines of stones and save it again.</source>
            <translation>Wandeln Sie den Text in Konturen von Steinen um und speichern Sie die Datei noch einmal.</translation>
        </message>
        <message>
            <source>A bitmap cannot be counted; place stones over it as circles.</source>
            <translation>Ein Pixelbild lässt sich nicht zählen; setzen Sie Steine als Kreise darüber.</translation>
        </message>
        <message>
            <source>Draw its stones as circles, or estimate from its shape instead.</source>
            <translation>Zeichnen Sie die Steine als Kreise oder schätzen Sie nach der Form.</translation>
        </message>
        <message>
            <source>The dots of a dotted line are no outlines; turn its stroke into outlines, so that each dot is a circle, and save it again.</source>
            <translation>Die Punkte einer gepunkteten Linie sind keine Konturen; wandeln Sie den Strich in Konturen um, sodass jeder Punkt ein Kreis ist, und speichern Sie die Datei noch einmal.</translation>
        </message>
        <message>
            <source>What a pattern shows has no outlines of its own; expand the pattern into single objects and save it again.</source>
            <translation>Was ein Muster zeigt, hat keine eigenen Konturen; lösen Sie das Muster in einzelne Objekte auf und speichern Sie die Datei noch einmal.</translation>
        </message>
        <message>
            <source>Markers on a line are no outlines; turn them into objects of their own and save it again.</source>
            <translation>Markierungen auf einer Linie sind keine Konturen; wandeln Sie sie in eigene Objekte um und speichern Sie die Datei noch einmal.</translation>
        </message>
        <message>
            <source>A point has no size; draw a circle as large as its stone on each point and save it again.</source>
            <translation>Ein Punkt hat keine Größe; zeichnen Sie auf jedem Punkt einen Kreis in der Größe des Steins und speichern Sie die Datei noch einmal.</translation>
        </message>
        <message>
            <source>A hatch has no outlines of its own; explode it, or draw the outline it fills, and save it again.</source>
            <translation>Eine Schraffur hat keine eigenen Konturen; lösen Sie sie auf oder zeichnen Sie die gefüllte Kontur und speichern Sie die Datei noch einmal.</translation>
        </message>
        <message>
            <source>Its discs are %1 to %2 mm across, stones %3 to %4 mm; save it at its true size, or estimate from its shape instead.</source>
            <translation>Die Kreise sind %1 bis %2 mm groß, Steine %3 bis %4 mm; speichern Sie die Datei in wahrer Größe oder schätzen Sie nach der Form.</translation>
        </message>
        <message numerus="yes">
            <source>%n style rules were not understood and left aside.</source>
            <translation>
                <numerusform>%n Stilregel wurde nicht verstanden und beiseitegelassen.</numerusform>
                <numerusform>%n Stilregeln wurden nicht verstanden und beiseitegelassen.</numerusform>
            </translation>
        </message>
        <message>
            <source>The drawing asks for a style sheet in another file, which was not opened.</source>
            <translation>Die Zeichnung verlangt ein Stylesheet in einer anderen Datei, das nicht geöffnet wurde.</translation>
        </message>
        <message>
            <source>The drawing asks for text in another file, which was not opened.</source>
            <translation>Die Zeichnung verlangt Text in einer anderen Datei, der nicht geöffnet wurde.</translation>
        </message>
        <message numerus="yes">
            <source>%n gradients stand for the colours of their middle.</source>
            <translation>
                <numerusform>%n Verlauf gilt als die Farbe seiner Mitte.</numerusform>
                <numerusform>%n Verläufe gelten als die Farbe ihrer Mitte.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n shapes stand behind a clip path or mask and are counted whole.</source>
            <translation>
                <numerusform>%n Form liegt hinter einem Beschnittpfad oder einer Maske und wird ganz gezählt.</numerusform>
                <numerusform>%n Formen liegen hinter einem Beschnittpfad oder einer Maske und werden ganz gezählt.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n transforms could not be read; what they move may stand in the wrong place.</source>
            <translation>
                <numerusform>%n Transformation konnte nicht gelesen werden; was sie bewegt, steht vielleicht am falschen Ort.</numerusform>
                <numerusform>%n Transformationen konnten nicht gelesen werden; was sie bewegen, steht vielleicht am falschen Ort.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n of %2 separate pieces of %3 are narrower than a stone and hold none; take a smaller stone or a larger size.</source>
            <translation>
                <numerusform>%n von %2 getrennten Teilen von %3 ist schmaler als ein Stein und fasst keinen; nehmen Sie einen kleineren Stein oder machen Sie es größer.</numerusform>
                <numerusform>%n von %2 getrennten Teilen von %3 sind schmaler als ein Stein und fassen keinen; nehmen Sie einen kleineren Stein oder machen Sie es größer.</numerusform>
            </translation>
        </message>
        <message>
            <source>along the outline</source>
            <translation>entlang der Kontur</translation>
        </message>
        <message>
            <source>along the outline, as it is too narrow for rows</source>
            <translation>entlang der Kontur, da es für Reihen zu schmal ist</translation>
        </message>
        <message>
            <source>square rows</source>
            <translation>gerade Reihen</translation>
        </message>
        <message>
            <source>staggered rows</source>
            <translation>versetzte Reihen</translation>
        </message>
        <message>
            <source>square rows turned by %1 degrees</source>
            <translation>gerade Reihen, um %1 Grad gedreht</translation>
        </message>
        <message>
            <source>staggered rows turned by %1 degrees</source>
            <translation>versetzte Reihen, um %1 Grad gedreht</translation>
        </message>
        <message>
            <source>rows, those of each piece turned as fits it best</source>
            <translation>Reihen, in jedem Teil so gedreht, wie es am besten passt</translation>
        </message>
        <message>
            <source>along the outline, then %1</source>
            <translation>entlang der Kontur, dann %1</translation>
        </message>
        <message>
            <source>along the outline, then in lines beside it</source>
            <translation>entlang der Kontur, dann in Linien daneben</translation>
        </message>
        <message>
            <source>%1; along the outline where a piece is narrow</source>
            <translation>%1; entlang der Kontur, wo ein Teil schmal ist</translation>
        </message>
        <message>
            <source>in a row along the lines</source>
            <translation>in einer Reihe entlang der Linien</translation>
        </message>
        <message>
            <source>%1; in a row along the lines</source>
            <translation>%1; in einer Reihe entlang der Linien</translation>
        </message>
        <message>
            <source>Laid in other rows, the areas hold up to %1 fewer or %2 more.</source>
            <translation>In anderen Reihen fassen die Flächen bis zu %1 weniger oder %2 mehr.</translation>
        </message>
        <message numerus="yes">
            <source>Each of %n stretches from corner to corner may take one more or less.</source>
            <translation>
                <numerusform>%n Strecke von Ecke zu Ecke kann einen mehr oder weniger fassen.</numerusform>
                <numerusform>Jede von %n Strecken von Ecke zu Ecke kann einen mehr oder weniger fassen.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n narrow parts hold no stone; widened, they take up to %2.</source>
            <translation>
                <numerusform>%n schmaler Teil fasst keinen Stein; verbreitert fasst er bis zu %2.</numerusform>
                <numerusform>%n schmale Teile fassen keinen Stein; verbreitert fassen sie bis zu %2.</numerusform>
            </translation>
        </message>
        <message>
            <source>There is no other way to lay them.</source>
            <translation>Anders lassen sie sich nicht legen.</translation>
        </message>
        <message numerus="yes">
            <source>%n lines that end somewhere are not set with stones.</source>
            <translation>
                <numerusform>%n Linie, die irgendwo endet, wird nicht mit Steinen besetzt.</numerusform>
                <numerusform>%n Linien, die irgendwo enden, werden nicht mit Steinen besetzt.</numerusform>
            </translation>
        </message>
        <message>
            <source>Nothing of %1 is to be seen; other shapes lie on it.</source>
            <translation>Von %1 ist nichts zu sehen; andere Formen liegen darüber.</translation>
        </message>
    </context>
    <context>
        <name>Base</name>
        <message>
            <source>This is not a key in the 8-4-4-4-12 form.</source>
            <translation>Das ist kein Schlüssel in der Form 8-4-4-4-12.</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1: %2</translation>
        </message>
    </context>
    <context>
        <name>BenchSheet</name>
        <message>
            <source>the customer’s own garment</source>
            <translation>das eigene Textil des Kunden</translation>
        </message>
        <message>
            <source>Wanted by %1</source>
            <translation>Gewünscht bis %1</translation>
        </message>
        <message>
            <source>for %1</source>
            <translation>für %1</translation>
        </message>
        <message>
            <source>choice %1 of %2</source>
            <translation>Variante %1 von %2</translation>
        </message>
        <message>
            <source>Choice %1 of %2: none is taken yet.</source>
            <translation>Variante %1 von %2: Noch ist keine gewählt.</translation>
        </message>
        <message>
            <source>on the plan for %1</source>
            <translation>auf dem Plan für %1</translation>
        </message>
        <message>
            <source>Lay out %1, hand over %2</source>
            <translation>%1 bereitlegen, %2 übergeben</translation>
        </message>
        <message>
            <source>Lay out %1</source>
            <translation>%1 bereitlegen</translation>
        </message>
        <message>
            <source>plain</source>
            <translation>ohne Größe</translation>
        </message>
        <message>
            <source>%1 to spare, for what may be spoiled.</source>
            <translation>%1 in Reserve, falls etwas verdirbt.</translation>
        </message>
        <message>
            <source>%1 of size %2 to spare, for what may be spoiled.</source>
            <translation>%1 in Größe %2 in Reserve, falls etwas verdirbt.</translation>
        </message>
        <message>
            <source>no drawing is kept</source>
            <translation>keine Zeichnung aufbewahrt</translation>
        </message>
        <message>
            <source>Brush in this order</source>
            <translation>In dieser Reihenfolge einbürsten</translation>
        </message>
        <message>
            <source>most stones first</source>
            <translation>die meisten Steine zuerst</translation>
        </message>
        <message>
            <source>a piece</source>
            <translation>je Stück</translation>
        </message>
        <message>
            <source>to fetch</source>
            <translation>zu holen</translation>
        </message>
        <message>
            <source>%1 of %2, %3 off the roll</source>
            <translation>%1 von %2, %3 von der Rolle</translation>
        </message>
        <message>
            <source>%1 of %2, %3 a sheet: sheets to cut into: %4</source>
            <translation>%1 von %2, %3 je Bogen: Bögen zum Anschneiden: %4</translation>
        </message>
        <message>
            <source>One a colour, cut once.</source>
            <translation>Eine je Farbe, einmal geschnitten.</translation>
        </message>
        <message>
            <source>It covers the widest colour; hinge it, lift %1 times with it.</source>
            <translation>Sie deckt die breiteste Farbe ab; an einer Kante festkleben, %1-mal damit abheben.</translation>
        </message>
        <message>
            <source>It covers the widest colour; hinge it.</source>
            <translation>Sie deckt die breiteste Farbe ab; an einer Kante festkleben.</translation>
        </message>
        <message>
            <source>The templates are on the wall.</source>
            <translation>Die Schablonen hängen an der Wand.</translation>
        </message>
        <message>
            <source>The templates are those cut above, for %1.</source>
            <translation>Die Schablonen sind die oben geschnittenen, für %1.</translation>
        </message>
        <message>
            <source>The templates are those cut on bench sheet %1 of %2, for %3.</source>
            <translation>Die Schablonen sind die auf Laufzettel %1 von %2 geschnittenen, für %3.</translation>
        </message>
        <message>
            <source>Cut</source>
            <translation>Schneiden</translation>
        </message>
        <message>
            <source>done</source>
            <translation>erledigt</translation>
        </message>
        <message>
            <source>No backing: it goes on %1.</source>
            <translation>Kein Träger: Es kommt auf %1.</translation>
        </message>
        <message>
            <source>as the makers say</source>
            <translation>nach Angabe der Hersteller</translation>
        </message>
        <message>
            <source>platen</source>
            <translation>Pressplatte</translation>
        </message>
        <message>
            <source>dwell</source>
            <translation>Presszeit</translation>
        </message>
        <message>
            <source>medium</source>
            <translation>mittel</translation>
        </message>
        <message>
            <source>pressure, even all over</source>
            <translation>Druck, überall gleich</translation>
        </message>
        <message>
            <source>second press, where an edge is loose</source>
            <translation>zweite Pressung, wo ein Rand lose ist</translation>
        </message>
        <message>
            <source>What the makers of stones, tape and cloth say comes first. Press one and look at it before the rest.</source>
            <translation>Zuerst gilt, was die Hersteller von Steinen, Folie und Stoff sagen. Pressen Sie eines und sehen Sie es sich an, bevor Sie weitermachen.</translation>
        </message>
        <message>
            <source>Steps</source>
            <translation>Schritte</translation>
        </message>
        <message>
            <source>%1 planned</source>
            <translation>%1 geplant</translation>
        </message>
        <message>
            <source>planned</source>
            <translation>geplant</translation>
        </message>
        <message>
            <source>who</source>
            <translation>wer</translation>
        </message>
        <message>
            <source>day</source>
            <translation>Tag</translation>
        </message>
        <message>
            <source>minutes taken</source>
            <translation>Minuten gebraucht</translation>
        </message>
        <message>
            <source>Draw</source>
            <translation>Zeichnen</translation>
        </message>
        <message>
            <source>Cut; retract the blade before loading</source>
            <translation>Schneiden; vor dem Einlegen das Messer einziehen</translation>
        </message>
        <message>
            <source>Weed</source>
            <translation>Entgittern</translation>
        </message>
        <message>
            <source>Set up</source>
            <translation>Rüsten</translation>
        </message>
        <message>
            <source>Brush %1, small circles, no hole empty</source>
            <translation>%1 einbürsten, kleine Kreise, kein Loch leer</translation>
        </message>
        <message>
            <source>Lift %1, the tape hinged</source>
            <translation>%1 abheben, die Folie an einer Kante festgeklebt</translation>
        </message>
        <message>
            <source>Press; look along the edges of the stones</source>
            <translation>Pressen; die Ränder der Steine ansehen</translation>
        </message>
        <message>
            <source>Trim, check against the picture</source>
            <translation>Beschneiden, mit dem Bild vergleichen</translation>
        </message>
        <message>
            <source>Pack %1</source>
            <translation>%1 verpacken</translation>
        </message>
        <message>
            <source>%1 min</source>
            <translation>%1 min</translation>
        </message>
        <message>
            <source>Pressed</source>
            <translation>Gepresst</translation>
        </message>
        <message>
            <source>and so on, up to %1</source>
            <translation>und so weiter bis %1</translation>
        </message>
        <message>
            <source>spoiled</source>
            <translation>verdorben</translation>
        </message>
        <message>
            <source>Take care</source>
            <translation>Vorsicht</translation>
        </message>
        <message>
            <source>Press and fresh work burn: gloves, a cover sheet, fresh air.</source>
            <translation>An Presse und frischer Ware verbrennt man sich: Handschuhe, Abdeckblatt, frische Luft.</translation>
        </message>
        <message>
            <source>Blades cut: retract before loading.</source>
            <translation>Messer schneiden: vor dem Einlegen einziehen.</translation>
        </message>
        <message>
            <source>Stones may hold lead, small parts choke: not for under three. Makers’ certificates, local rules and licensed practice decide.</source>
            <translation>Steine können Blei enthalten, Kleinteile können verschluckt werden: nicht für Kinder unter drei. Es entscheiden Nachweise der Hersteller, örtliche Regeln und zugelassene Praxis.</translation>
        </message>
        <message>
            <source>Bench sheet %1</source>
            <translation>Laufzettel %1</translation>
        </message>
        <message>
            <source>Bench sheet %1, %2 of %3</source>
            <translation>Laufzettel %1, %2 von %3</translation>
        </message>
    </context>
    <context>
        <name>BillWords</name>
        <message>
            <source>Quote %1</source>
            <translation>Angebot %1</translation>
        </message>
        <message>
            <source>Invoice %1</source>
            <translation>Rechnung %1</translation>
        </message>
        <message>
            <source>Receipt %1</source>
            <translation>Quittung %1</translation>
        </message>
        <message>
            <source>Credit note %1</source>
            <translation>Gutschrift %1</translation>
        </message>
        <message>
            <source>Date</source>
            <translation>Datum</translation>
        </message>
        <message>
            <source>Due</source>
            <translation>Fällig</translation>
        </message>
        <message>
            <source>Quote</source>
            <translation>Angebot</translation>
        </message>
        <message>
            <source>Invoice</source>
            <translation>Rechnung</translation>
        </message>
        <message>
            <source>Total</source>
            <translation>Summe</translation>
        </message>
        <message>
            <source>Received</source>
            <translation>Erhalten</translation>
        </message>
        <message>
            <source>Credited</source>
            <translation>Gutgeschrieben</translation>
        </message>
        <message>
            <source>Without tax: %1</source>
            <translation>Ohne Steuer: %1</translation>
        </message>
        <message>
            <source>Further to invoice %1</source>
            <translation>Zusätzlich zu Rechnung %1</translation>
        </message>
        <message>
            <source>Takes back all of invoice %1</source>
            <translation>Hebt Rechnung %1 ganz auf</translation>
        </message>
        <message>
            <source>Takes back a part of invoice %1</source>
            <translation>Hebt Rechnung %1 zum Teil auf</translation>
        </message>
        <message>
            <source>%1, %2, for quote %3</source>
            <extracomment>Of a payment: how it was paid, on which day, for which quote: "Cash, 3 Dec 2026, for quote 2026-0042".</extracomment>
            <translation>%1, %2, für Angebot %3</translation>
        </message>
        <message>
            <source>Taken %1, change %2</source>
            <translation>Erhalten %1, Rückgeld %2</translation>
        </message>
        <message>
            <source>Invoiced, less credited</source>
            <translation>In Rechnung gestellt, abzüglich Gutschriften</translation>
        </message>
        <message>
            <source>The order comes to</source>
            <translation>Die Bestellung ergibt</translation>
        </message>
        <message>
            <source>Paid %1, %2</source>
            <translation>Gezahlt %1, %2</translation>
        </message>
        <message>
            <source>Given back %1, %2</source>
            <translation>Erstattet %1, %2</translation>
        </message>
        <message>
            <source>Payment taken back %1, %2</source>
            <translation>Zahlung storniert %1, %2</translation>
        </message>
        <message>
            <source>Rounded %1, %2</source>
            <extracomment>Of a payment whose sum was rounded to the smallest coin: its day, and how it was paid.</extracomment>
            <translation>Gerundet %1, %2</translation>
        </message>
        <message>
            <source>Paid before, less given back</source>
            <translation>Bisher gezahlt, abzüglich Erstattungen</translation>
        </message>
        <message>
            <source>Left to pay</source>
            <translation>Noch zu zahlen</translation>
        </message>
        <message>
            <source>Left to pay by %1</source>
            <translation>Noch zu zahlen bis %1</translation>
        </message>
        <message>
            <source>Your credit</source>
            <translation>Ihr Guthaben</translation>
        </message>
        <message>
            <source>Receipt</source>
            <translation>Quittung</translation>
        </message>
        <message>
            <source>Credit note</source>
            <translation>Gutschrift</translation>
        </message>
        <message>
            <source>The law where you are may ask more of an invoice: other words, numbers, a tax number, how long it is kept. That is yours to confirm with your tax authority or an accountant.</source>
            <translation>Das Recht an Ihrem Ort kann von einer Rechnung mehr verlangen: andere Wörter, Nummern, eine Steuernummer, eine Aufbewahrungsfrist. Das klären Sie bitte mit dem Finanzamt oder einem Steuerberater.</translation>
        </message>
    </context>
    <context>
        <name>Buying</name>
        <message>
            <source>kits</source>
            <translation>Sets</translation>
        </message>
        <message>
            <source>bulk</source>
            <translation>Packungen</translation>
        </message>
        <message>
            <source>mix</source>
            <translation>Mischung</translation>
        </message>
        <message>
            <source>nothing to buy</source>
            <translation>nichts zu kaufen</translation>
        </message>
        <message>
            <source>no way</source>
            <translation>nicht möglich</translation>
        </message>
        <message>
            <source>Cost of one piece, %1</source>
            <translation>Kosten eines Stücks, %1</translation>
        </message>
        <message>
            <source>Pieces</source>
            <translation>Stück</translation>
        </message>
        <message numerus="yes">
            <source>%1 pieces, each: %2</source>
            <translation>
                <numerusform>%1 Stück, je Stück: %2</numerusform>
                <numerusform>%1 Stück, je Stück: %2</numerusform>
            </translation>
        </message>
        <message>
            <source>; %1 cheapest</source>
            <translation>; am günstigsten: %1</translation>
        </message>
        <message>
            <source>; nothing to buy</source>
            <translation>; nichts zu kaufen</translation>
        </message>
        <message>
            <source> (not proven)</source>
            <translation> (nicht nachgewiesen)</translation>
        </message>
        <message>
            <source>from %1 on bulk stays cheaper than kits, proven</source>
            <translation>ab %1 bleiben Packungen nachweislich günstiger als Sets</translation>
        </message>
        <message>
            <source>quantities up to %1 are shown: beyond it no plan was found in time</source>
            <translation>Mengen bis %1 sind gezeigt: Darüber wurde nicht rechtzeitig ein Plan gefunden</translation>
        </message>
        <message>
            <source>quantities up to %1 are shown, of %2 asked for: each is planned on its own, and all of them would take too long</source>
            <translation>Mengen bis %1 von verlangten %2 sind gezeigt: Jede wird einzeln geplant, und alle würden zu lange dauern</translation>
        </message>
        <message>
            <source> and </source>
            <translation> und </translation>
        </message>
        <message>
            <source>from %1 on</source>
            <translation>ab %1</translation>
        </message>
        <message>
            <source>Makes none: %1 is missing or too little.</source>
            <translation>Ergibt nichts: %1 fehlt oder reicht nicht.</translation>
        </message>
        <message numerus="yes">
            <source>%1 run out first.</source>
            <translation>
                <numerusform>zuerst geht %1 aus.</numerusform>
                <numerusform>zuerst gehen %1 aus.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%1 pieces for sure</source>
            <translation>
                <numerusform>%1 Stück sicher</numerusform>
                <numerusform>%1 Stück sicher</numerusform>
            </translation>
        </message>
        <message>
            <source>%1; %2</source>
            <comment>so many pieces; what runs out</comment>
            <translation>%1; %2</translation>
        </message>
        <message>
            <source>No piece for sure, %1 with odds of %2; %3</source>
            <translation>Kein Stück sicher, %1 mit einer Wahrscheinlichkeit von %2; %3</translation>
        </message>
        <message>
            <source>%1, %2 with odds of %3; %4</source>
            <translation>%1, %2 mit einer Wahrscheinlichkeit von %3; %4</translation>
        </message>
        <message>
            <source>kit</source>
            <translation>Set</translation>
        </message>
        <message>
            <source>Cheaper from the kit: %1.</source>
            <translation>Günstiger mit dem Set: %1.</translation>
        </message>
        <message>
            <source>Cheaper in bulk: %1.</source>
            <translation>Günstiger in Packungen: %1.</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <comment>a kit: what it makes</comment>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>%1: %2 Each of %3, shipping in: kit %4, bulk %5. %6</source>
            <translation>%1: %2 Je Stück bei %3, mit Versand: Set %4, Packungen %5. %6</translation>
        </message>
        <message>
            <source>, templates cut</source>
            <translation>, Schablonen geschnitten</translation>
        </message>
        <message>
            <source>%1 × kit, %2 each</source>
            <translation>%1 × Set, je %2</translation>
        </message>
        <message>
            <source>%1 × %2, %3 each</source>
            <translation>%1 × %2, je %3</translation>
        </message>
        <message>
            <source>once for the order</source>
            <translation>einmal für die Bestellung</translation>
        </message>
        <message>
            <source>free from %1</source>
            <translation>frei ab %1</translation>
        </message>
        <message>
            <source>free, as the goods reach %1</source>
            <translation>frei, da die Ware %1 erreicht</translation>
        </message>
        <message>
            <source>Shipping</source>
            <translation>Versand</translation>
        </message>
        <message>
            <source>%1 × %2 ÷ (1 − %3 lost)</source>
            <translation>%1 × %2 ÷ (1 − %3 Verlust)</translation>
        </message>
        <message numerus="yes">
            <source>%1 pieces, %2 a sheet</source>
            <translation>
                <numerusform>%1 Stück, %2 je Bogen</numerusform>
                <numerusform>%1 Stück, %2 je Bogen</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%1 pieces, each cut lifts %2 times, %3 a sheet</source>
            <translation>
                <numerusform>%1 Stück, jeder Zuschnitt hebt %2-mal ab, %3 je Bogen</numerusform>
                <numerusform>%1 Stück, jeder Zuschnitt hebt %2-mal ab, %3 je Bogen</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>once: %1 templates, %2 a sheet</source>
            <translation>
                <numerusform>einmal: %1 Schablone, %2 je Bogen</numerusform>
                <numerusform>einmal: %1 Schablonen, %2 je Bogen</numerusform>
            </translation>
        </message>
        <message>
            <source>once, with a kit</source>
            <translation>einmal, mit einem Set</translation>
        </message>
        <message>
            <source>one a piece</source>
            <translation>1 je Stück</translation>
        </message>
        <message>
            <source>%1 a piece</source>
            <translation>%1 je Stück</translation>
        </message>
        <message>
            <source>%1 for the order</source>
            <translation>%1 für die Bestellung</translation>
        </message>
        <message>
            <source>Needed</source>
            <translation>Gebraucht</translation>
        </message>
        <message>
            <source>%1 on the shelf</source>
            <translation>%1 auf Lager</translation>
        </message>
        <message>
            <source>unknown</source>
            <translation>nicht bekannt</translation>
        </message>
        <message>
            <source>Left on the shelf, worth</source>
            <translation>Bleibt im Lager, im Wert von</translation>
        </message>
        <message>
            <source>%1; nobody sells it in bulk</source>
            <translation>%1; niemand verkauft es in Packungen</translation>
        </message>
        <message>
            <source>Kits only</source>
            <translation>Nur Sets</translation>
        </message>
        <message>
            <source>Bulk only</source>
            <translation>Nur Packungen</translation>
        </message>
        <message>
            <source>Cheapest mix</source>
            <translation>Günstigste Mischung</translation>
        </message>
        <message>
            <source>Buy nothing: the shelf is enough</source>
            <translation>Nichts kaufen: Das Lager reicht</translation>
        </message>
        <message>
            <source>Buy: %1</source>
            <translation>Kaufen: %1</translation>
        </message>
        <message>
            <source>Buy: %1, %2</source>
            <translation>Kaufen: %1, %2</translation>
        </message>
        <message>
            <source>Templates of %1, ready cut</source>
            <translation>Schablonen für %1, fertig geschnitten</translation>
        </message>
        <message>
            <source>Nothing has to be bought: the shelf is enough.</source>
            <translation>Es muss nichts gekauft werden: Das Lager reicht.</translation>
        </message>
        <message>
            <source>Together</source>
            <translation>Zusammen</translation>
        </message>
        <message>
            <source>%1, continued</source>
            <translation>%1, Fortsetzung</translation>
        </message>
        <message>
            <source>Supplier</source>
            <translation>Lieferant</translation>
        </message>
        <message>
            <source>Pack</source>
            <translation>Packung</translation>
        </message>
        <message>
            <source>Material</source>
            <translation>Material</translation>
        </message>
        <message>
            <source>Packs</source>
            <translation>Packungen</translation>
        </message>
        <message>
            <source>Each</source>
            <translation>Einzelpreis</translation>
        </message>
        <message>
            <source>Goods</source>
            <translation>Ware</translation>
        </message>
        <message>
            <source>Shopping list</source>
            <translation>Einkaufsliste</translation>
        </message>
        <message>
            <source>Cost of one piece by quantity</source>
            <translation>Kosten eines Stücks nach Menge</translation>
        </message>
    </context>
    <context>
        <name>CareCard</name>
        <message>
            <source>Care and safety</source>
            <translation>Pflege und Sicherheit</translation>
        </message>
        <message>
            <source>To apply a decal</source>
            <translation>Einen Transfer aufbringen</translation>
        </message>
        <message>
            <source>Press the empty garment for a few seconds, to drive out damp and creases.</source>
            <translation>Pressen Sie das leere Textil einige Sekunden, um Feuchtigkeit und Falten zu vertreiben.</translation>
        </message>
        <message>
            <source>Peel off the backing, lay the decal with its film up, and cover it.</source>
            <translation>Ziehen Sie den Träger ab, legen Sie den Transfer mit der Folie nach oben auf und decken Sie ihn ab.</translation>
        </message>
        <message>
            <source>Press at %1 for %2, evenly and firmly; try it on a hidden spot of delicate cloth first.</source>
            <translation>Pressen Sie bei %1 für %2, gleichmäßig und fest; probieren Sie es bei empfindlichem Stoff zuerst an einer verdeckten Stelle.</translation>
        </message>
        <message>
            <source>Press evenly and firmly, as hot and as long as the maker of the stones says.</source>
            <translation>Pressen Sie gleichmäßig und fest, so heiß und so lange, wie der Hersteller der Steine es sagt.</translation>
        </message>
        <message>
            <source>Let it cool, then peel the film off flat. A stone that comes along is pressed once more, from the inside.</source>
            <translation>Lassen Sie es abkühlen, dann ziehen Sie die Folie flach ab. Ein Stein, der mitkommt, wird noch einmal von innen gepresst.</translation>
        </message>
        <message>
            <source>A press burns: gloves, and nothing meltable under it. What the makers of cloth and stones say comes first.</source>
            <translation>An einer Presse verbrennt man sich: Handschuhe, und nichts Schmelzbares darunter. Zuerst gilt, was die Hersteller von Stoff und Steinen sagen.</translation>
        </message>
        <message>
            <source>Care card</source>
            <translation>Pflegekarte</translation>
        </message>
    </context>
    <context>
        <name>CareNotes</name>
        <message>
            <source>Freshly pressed work is hot: let it cool before you touch it.
Wash garments inside out and cold, dry them without heat, keep the iron off the stones.
Not for children under three: stones are small parts that can be swallowed.
Stones may hold lead: for anything a child will wear ask for the maker's certificate and check the local rules.
On a vehicle keep the glass clear where you drive: rules differ by place, and where it goes is yours to decide.</source>
            <translation>Frisch Gepresstes ist heiß: Lassen Sie es abkühlen, bevor Sie es anfassen.
Textilien auf links und kalt waschen, ohne Hitze trocknen, das Bügeleisen von den Steinen fernhalten.
Nicht für Kinder unter drei: Steine sind Kleinteile, die verschluckt werden können.
Steine können Blei enthalten: Fragen Sie bei allem, was ein Kind trägt, nach dem Nachweis des Herstellers und prüfen Sie die örtlichen Regeln.
Am Fahrzeug halten Sie die Scheiben frei, durch die Sie beim Fahren sehen: Die Regeln sind je nach Ort verschieden, und wohin es kommt, entscheiden Sie.</translation>
        </message>
        <message>
            <source>Local rules, the makers' data and licensed practice come before these notes.</source>
            <translation>Örtliche Regeln, die Angaben der Hersteller und zugelassene Praxis gehen diesen Hinweisen vor.</translation>
        </message>
        <message>
            <source>Not for children under three. Keep glass clear where you drive; check local rules. Fresh press work is hot.</source>
            <translation>Nicht für Kinder unter drei. Scheiben zum Fahren frei halten; örtliche Regeln prüfen. Frisch Gepresstes ist heiß.</translation>
        </message>
        <message>
            <source>Blades cut: retract the blade before loading, and keep fingers off its path.</source>
            <translation>Messer schneiden: Ziehen Sie das Messer vor dem Einlegen ein und halten Sie die Finger von seinem Weg fern.</translation>
        </message>
    </context>
    <context>
        <name>CostWords</name>
        <message>
            <source>%1 %</source>
            <translation>%1 %</translation>
        </message>
        <message>
            <source>%1 an hour</source>
            <translation>%1 je Stunde</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <comment>a part of the cost and the place it is for</comment>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>%1, × %2 of the %3 pieces that share the set</source>
            <translation>%1, × %2 von den %3 Stück, die sich den Satz teilen</translation>
        </message>
        <message>
            <source>(%1 dwell + %2 handling)</source>
            <translation>(%1 Presszeit + %2 Handhabung)</translation>
        </message>
        <message>
            <source>%1 × %2 a month ÷ %3 of bench time</source>
            <translation>%1 × %2 im Monat ÷ %3 Werkbankzeit</translation>
        </message>
        <message>
            <source>fixed price</source>
            <translation>fester Preis</translation>
        </message>
        <message>
            <source>its fixed price is not set</source>
            <translation>der feste Preis ist nicht gesetzt</translation>
        </message>
        <message>
            <source>average of the shelf</source>
            <translation>Durchschnitt des Lagers</translation>
        </message>
        <message>
            <source>no pack of it is known</source>
            <translation>keine Packung davon ist bekannt</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <comment>a supplier and a pack of theirs</comment>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <comment>a pack and the day of its price</comment>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>nothing with a cost is on the shelf; %1</source>
            <translation>nichts mit Kosten ist auf Lager; %1</translation>
        </message>
        <message>
            <source>for the %1 of this order</source>
            <translation>für %1 dieser Bestellung</translation>
        </message>
        <message>
            <source>%1 cost less: %2 instead of %3</source>
            <translation>günstiger mit %1: %2 statt %3</translation>
        </message>
        <message>
            <source>less in another pack: %1 of %2, %3, for %4 instead of %5, without shipping</source>
            <translation>günstiger in anderer Packung: %1 von %2, %3, für %4 statt %5, ohne Versand</translation>
        </message>
        <message>
            <source>%1 × %2</source>
            <comment>so many of a packing material</comment>
            <translation>%1 × %2</translation>
        </message>
        <message>
            <source>Art</source>
            <translation>Grafik</translation>
        </message>
        <message>
            <source>Cut</source>
            <translation>Schneiden</translation>
        </message>
        <message>
            <source>Weed</source>
            <translation>Entgittern</translation>
        </message>
        <message>
            <source>Set up</source>
            <translation>Rüsten</translation>
        </message>
        <message>
            <source>Brush</source>
            <translation>Einbürsten</translation>
        </message>
        <message>
            <source>Lift</source>
            <translation>Abheben</translation>
        </message>
        <message>
            <source>Press</source>
            <comment>the step at the bench</comment>
            <translation>Pressen</translation>
        </message>
        <message>
            <source>Trim</source>
            <translation>Beschneiden</translation>
        </message>
        <message>
            <source>Pack</source>
            <translation>Verpacken</translation>
        </message>
        <message>
            <source>This job</source>
            <translation>Dieser Auftrag</translation>
        </message>
        <message>
            <source>Stones</source>
            <translation>Steine</translation>
        </message>
        <message>
            <source>Tape</source>
            <translation>Folie</translation>
        </message>
        <message>
            <source>Templates</source>
            <translation>Schablonen</translation>
        </message>
        <message>
            <source>Templates, paid off</source>
            <translation>Schablonen, umgelegt</translation>
        </message>
        <message>
            <source>Art and cutting, paid off</source>
            <translation>Grafik und Schneiden, umgelegt</translation>
        </message>
        <message>
            <source>Blanks</source>
            <translation>Rohlinge</translation>
        </message>
        <message>
            <source>Backing</source>
            <translation>Träger</translation>
        </message>
        <message>
            <source>Extra for size %1</source>
            <translation>Mehrkosten Größe %1</translation>
        </message>
        <message>
            <source>Packing</source>
            <translation>Verpackung</translation>
        </message>
        <message>
            <source>For the order</source>
            <translation>Für die Bestellung</translation>
        </message>
        <message>
            <source>Freight in</source>
            <translation>Fracht</translation>
        </message>
        <message>
            <source>Bench labour</source>
            <translation>Werkbanklohn</translation>
        </message>
        <message>
            <source>Press</source>
            <comment>the machine</comment>
            <translation>Presse</translation>
        </message>
        <message>
            <source>Press cycles</source>
            <translation>Pressgänge</translation>
        </message>
        <message>
            <source>Second presses</source>
            <translation>Zweite Pressungen</translation>
        </message>
        <message>
            <source>Warm-up</source>
            <translation>Aufheizen</translation>
        </message>
        <message>
            <source>Test presses</source>
            <translation>Probepressungen</translation>
        </message>
        <message>
            <source>Machine wear</source>
            <translation>Maschinenverschleiß</translation>
        </message>
        <message>
            <source>Press wear</source>
            <translation>Verschleiß der Presse</translation>
        </message>
        <message>
            <source>Cutter wear</source>
            <translation>Verschleiß des Plotters</translation>
        </message>
        <message>
            <source>Overhead</source>
            <translation>Gemeinkosten</translation>
        </message>
        <message>
            <source>On the set-up</source>
            <translation>Auf das Rüsten</translation>
        </message>
        <message>
            <source>On the pieces</source>
            <translation>Auf die Stücke</translation>
        </message>
        <message>
            <source>Spoilage</source>
            <translation>Ausschuss</translation>
        </message>
        <message>
            <source>Stones lost</source>
            <translation>Verlorene Steine</translation>
        </message>
        <message>
            <source>Materials lost</source>
            <translation>Verlorenes Material</translation>
        </message>
        <message>
            <source>Labour lost</source>
            <translation>Verlorener Lohn</translation>
        </message>
        <message>
            <source>Work lost</source>
            <translation>Verlorene Arbeit</translation>
        </message>
        <message>
            <source>Replacing garments</source>
            <translation>Ersatz von Textilien</translation>
        </message>
        <message>
            <source>Card fee</source>
            <translation>Kartengebühr</translation>
        </message>
        <message>
            <source>%1 a piece × %2</source>
            <translation>%1 je Stück × %2</translation>
        </message>
        <message>
            <source>%1 × %2</source>
            <translation>%1 × %2</translation>
        </message>
        <message>
            <source>%1 ÷ (1 − %2 loss) × %3</source>
            <translation>%1 ÷ (1 − %2 Verlust) × %3</translation>
        </message>
        <message>
            <source>%1: %2 off a roll of %3 × %4</source>
            <translation>%1: %2 von einer Rolle mit %3 × %4</translation>
        </message>
        <message>
            <source>%1, %2 to a sheet: %3 × %4</source>
            <translation>%1, %2 je Bogen: %3 × %4</translation>
        </message>
        <message>
            <source>%1 ÷ %2 to a sheet × %3</source>
            <translation>%1 ÷ %2 je Bogen × %3</translation>
        </message>
        <message>
            <source>%1 ÷ %2 of a piece of tape</source>
            <translation>%1 ÷ %2 je Folienstück</translation>
        </message>
        <message>
            <source>%1 = %2 of tape</source>
            <translation>%1 = %2 Folienstücke</translation>
        </message>
        <message>
            <source>the templates hang on the wall: nothing to cut</source>
            <translation>die Schablonen hängen an der Wand: nichts zu schneiden</translation>
        </message>
        <message>
            <source>%1, one for each colour</source>
            <translation>%1, eine je Farbe</translation>
        </message>
        <message>
            <source>%1, × %2 of %3 planned pieces</source>
            <translation>%1, × %2 von %3 geplanten Stück</translation>
        </message>
        <message>
            <source>%1 for the set: its %2 planned pieces are sold</source>
            <translation>%1 für den Satz: Seine %2 geplanten Stück sind verkauft</translation>
        </message>
        <message>
            <source>%1, what it cost when the set was cut, × %2 of %3 planned pieces</source>
            <translation>%1, die Kosten beim Schneiden des Satzes, × %2 von %3 geplanten Stück</translation>
        </message>
        <message>
            <source>%1, what it costs for the set today, × %2 of %3 planned pieces</source>
            <translation>%1, die heutigen Kosten des Satzes, × %2 von %3 geplanten Stück</translation>
        </message>
        <message>
            <source>%1, of which %2 are sold</source>
            <translation>%1, davon %2 verkauft</translation>
        </message>
        <message>
            <source>%1, × %2 of the %3 pieces of the design in this order</source>
            <translation>%1, × %2 von den %3 Stück des Motivs in dieser Bestellung</translation>
        </message>
        <message>
            <source>%1 a job</source>
            <translation>%1 je Auftrag</translation>
        </message>
        <message>
            <source>%1 a piece</source>
            <translation>%1 je Stück</translation>
        </message>
        <message>
            <source>%1 a colour × %2</source>
            <translation>%1 je Farbe × %2</translation>
        </message>
        <message>
            <source>%1 for 100 stones</source>
            <translation>%1 je 100 Steine</translation>
        </message>
        <message>
            <source> + </source>
            <translation> + </translation>
        </message>
        <message>
            <source>%1: %2</source>
            <comment>a place and the times of a step there</comment>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>%1 a press cycle × %2</source>
            <translation>%1 je Pressgang × %2</translation>
        </message>
        <message>
            <source>%1 + %2</source>
            <comment>times of a step</comment>
            <translation>%1 + %2</translation>
        </message>
        <message>
            <source>%1, learning %2</source>
            <translation>%1, Lernrate %2</translation>
        </message>
        <message>
            <source>%1 = %2 × %3</source>
            <translation>%1 = %2 × %3</translation>
        </message>
        <message>
            <source>%1 × %2 presses each, larger than the platen</source>
            <translation>%1 × je %2 Pressungen, größer als die Pressplatte</translation>
        </message>
        <message>
            <source>%1, %2 at once</source>
            <translation>%1, %2 zugleich</translation>
        </message>
        <message>
            <source>%1 = %2 × %3 × %4</source>
            <translation>%1 = %2 × %3 × %4</translation>
        </message>
        <message>
            <source>(%1 − %2 salvage) ÷ %3 presses × (%4 + %5 of %6 pressed twice) + %7 of the order’s tests</source>
            <translation>(%1 − %2 Restwert) ÷ %3 Pressungen × (%4 + %5 von %6 zweimal gepresst) + %7 von den Proben der Bestellung</translation>
        </message>
        <message>
            <source>(%1 − %2 salvage) ÷ %3 presses × (%4 + %5 of %6 pressed twice + %7)</source>
            <translation>(%1 − %2 Restwert) ÷ %3 Pressungen × (%4 + %5 von %6 zweimal gepresst + %7)</translation>
        </message>
        <message>
            <source>(%1 − %2 salvage) ÷ %3 holes × %4 holes</source>
            <translation>(%1 − %2 Restwert) ÷ %3 Löcher × %4 Löcher</translation>
        </message>
        <message>
            <source>× (1 ÷ (1 − %1) − 1)</source>
            <translation>× (1 ÷ (1 − %1) − 1)</translation>
        </message>
        <message>
            <source>%1 × %2 for replacing one %3</source>
            <translation>%1 × %2 für den Ersatz eines Textils %3</translation>
        </message>
        <message>
            <source>the stones of the pieces and their freight %1</source>
            <translation>die Steine der Stücke und ihre Fracht %1</translation>
        </message>
        <message>
            <source>stones, tape, base, their freight and pressing of the pieces %1</source>
            <translation>Steine, Folie, Untergrund, ihre Fracht und das Pressen der Stücke %1</translation>
        </message>
        <message>
            <source>the stones of the pieces %1</source>
            <translation>die Steine der Stücke %1</translation>
        </message>
        <message>
            <source>stones, tape, base and pressing of the pieces %1</source>
            <translation>Steine, Folie, Untergrund und das Pressen der Stücke %1</translation>
        </message>
        <message>
            <source>the labour of the pieces until they are packed %1</source>
            <translation>der Lohn für die Stücke bis zum Verpacken %1</translation>
        </message>
        <message>
            <source>labour, wear and overhead of the pieces until they are packed %1</source>
            <translation>Lohn, Verschleiß und Gemeinkosten der Stücke bis zum Verpacken %1</translation>
        </message>
        <message>
            <source>%1 of %2</source>
            <translation>%1 von %2</translation>
        </message>
        <message>
            <source>%1 × %2 shipping ÷ %3, the goods of a usual order</source>
            <translation>%1 × %2 Versand ÷ %3, die Ware einer üblichen Bestellung</translation>
        </message>
        <message>
            <source>%1: the sum of the parts</source>
            <translation>%1: die Summe der Teile</translation>
        </message>
        <message>
            <source>the sum of the parts</source>
            <translation>die Summe der Teile</translation>
        </message>
        <message>
            <source>%1 of %2 × %3</source>
            <translation>%1 von %2 × %3</translation>
        </message>
        <message>
            <source>its share, by cost, of what goes with the order: %1</source>
            <translation>der Anteil, nach Kosten, an dem, was zur Bestellung gehört: %1</translation>
        </message>
        <message>
            <source>, </source>
            <translation>, </translation>
        </message>
        <message>
            <source>its share, by cost, of the freight on what goes with the order</source>
            <translation>der Anteil, nach Kosten, an der Fracht für das, was zur Bestellung gehört</translation>
        </message>
        <message>
            <source>%1 at the bench × %2</source>
            <translation>%1 an der Werkbank × %2</translation>
        </message>
        <message>
            <source>%1 of %2 × %3 × %4</source>
            <translation>%1 von %2 × %3 × %4</translation>
        </message>
        <message>
            <source>its share of warming up once for the order, by what the lines cost</source>
            <translation>der Anteil am einmaligen Aufheizen für die Bestellung, nach den Kosten der Positionen</translation>
        </message>
        <message>
            <source>its share of testing once for the order, by what the lines cost</source>
            <translation>der Anteil am einmaligen Proben für die Bestellung, nach den Kosten der Positionen</translation>
        </message>
        <message>
            <source>%1 × %2 × %3</source>
            <translation>%1 × %2 × %3</translation>
        </message>
        <message>
            <source>(all the above + share of %1 fixed) ÷ (1 − %2), less all the above</source>
            <translation>(alles Obige + Anteil an %1 fest) ÷ (1 − %2), abzüglich alles Obige</translation>
        </message>
        <message>
            <source>%1 of the pieces made cannot be sold</source>
            <translation>%1 der gefertigten Stücke sind nicht verkäuflich</translation>
        </message>
    </context>
    <context>
        <name>Costing</name>
        <message>
            <source>%1 comes to more money than this program reckons with; check its pieces, stones and prices.</source>
            <translation>%1 ergibt mehr Geld, als dieses Programm verarbeiten kann; prüfen Sie Stückzahl, Steine und Preise.</translation>
        </message>
        <message>
            <source>The month has no productive hours to carry the overhead; give them in Shop.</source>
            <translation>Der Monat hat keine produktiven Stunden, die die Gemeinkosten tragen; geben Sie sie unter „Betrieb“ an.</translation>
        </message>
        <message>
            <source>Spoilage must be from 0 to below 100 %; correct it in Shop.</source>
            <translation>Der Ausschuss muss von 0 bis unter 100 % liegen; berichtigen Sie ihn unter „Betrieb“.</translation>
        </message>
        <message>
            <source>The card fee must be from 0 to below 100 %; correct it in Shop.</source>
            <translation>Die Kartengebühr muss von 0 bis unter 100 % liegen; berichtigen Sie sie unter „Betrieb“.</translation>
        </message>
        <message>
            <source>A machine must be reckoned to last at least one use; correct its life in Shop.</source>
            <translation>Eine Maschine muss für mindestens eine Benutzung gerechnet sein; berichtigen Sie ihre Lebensdauer unter „Betrieb“.</translation>
        </message>
    </context>
    <context>
        <name>Counts</name>
        <message numerus="yes">
            <source>%1 pieces</source>
            <translation>
                <numerusform>%1 Stück</numerusform>
                <numerusform>%1 Stück</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%1 stones</source>
            <translation>
                <numerusform>%1 Stein</numerusform>
                <numerusform>%1 Steine</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%1 sheets</source>
            <translation>
                <numerusform>%1 Bogen</numerusform>
                <numerusform>%1 Bögen</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%1 lifts</source>
            <translation>
                <numerusform>%1 Abhebung</numerusform>
                <numerusform>%1 Abhebungen</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%1 templates</source>
            <translation>
                <numerusform>%1 Schablone</numerusform>
                <numerusform>%1 Schablonen</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%1 cycles</source>
            <translation>
                <numerusform>%1 Pressgang</numerusform>
                <numerusform>%1 Pressgänge</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%1 tests</source>
            <translation>
                <numerusform>%1 Probe</numerusform>
                <numerusform>%1 Proben</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%1 kits</source>
            <translation>
                <numerusform>%1 Set</numerusform>
                <numerusform>%1 Sets</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%1 packs</source>
            <translation>
                <numerusform>%1 Packung</numerusform>
                <numerusform>%1 Packungen</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>Day</name>
        <message>
            <source>“%1” is not a day; write it like %2, fri or +10.</source>
            <translation>„%1“ ist kein Tag; schreiben Sie ihn wie %2, fr oder +10.</translation>
        </message>
        <message>
            <source>%1 is a %2; correct the day or the weekday.</source>
            <translation>%1 ist ein %2; berichtigen Sie den Tag oder den Wochentag.</translation>
        </message>
        <message>
            <source>week</source>
            <translation>Woche</translation>
        </message>
        <message>
            <source>weeks</source>
            <translation>Wochen</translation>
        </message>
        <message>
            <source>day</source>
            <translation>Tag</translation>
        </message>
        <message>
            <source>days</source>
            <translation>Tage</translation>
        </message>
        <message>
            <source>today</source>
            <translation>heute</translation>
        </message>
        <message>
            <source>tomorrow</source>
            <translation>morgen</translation>
        </message>
    </context>
    <context>
        <name>Days</name>
        <message>
            <source>Jan</source>
            <translation>Jan.</translation>
        </message>
        <message>
            <source>Feb</source>
            <translation>Feb.</translation>
        </message>
        <message>
            <source>Mar</source>
            <translation>März</translation>
        </message>
        <message>
            <source>Apr</source>
            <translation>Apr.</translation>
        </message>
        <message>
            <source>May</source>
            <translation>Mai</translation>
        </message>
        <message>
            <source>Jun</source>
            <translation>Juni</translation>
        </message>
        <message>
            <source>Jul</source>
            <translation>Juli</translation>
        </message>
        <message>
            <source>Aug</source>
            <translation>Aug.</translation>
        </message>
        <message>
            <source>Sep</source>
            <translation>Sept.</translation>
        </message>
        <message>
            <source>Oct</source>
            <translation>Okt.</translation>
        </message>
        <message>
            <source>Nov</source>
            <translation>Nov.</translation>
        </message>
        <message>
            <source>Dec</source>
            <translation>Dez.</translation>
        </message>
        <message>
            <source>%1 %2 %3</source>
            <extracomment>A day: %1 is its number, %2 the month, %3 the year.</extracomment>
            <translation>%1. %2 %3</translation>
        </message>
        <message>
            <source>Sun</source>
            <translation>So</translation>
        </message>
        <message>
            <source>Mon</source>
            <translation>Mo</translation>
        </message>
        <message>
            <source>Tue</source>
            <translation>Di</translation>
        </message>
        <message>
            <source>Wed</source>
            <translation>Mi</translation>
        </message>
        <message>
            <source>Thu</source>
            <translation>Do</translation>
        </message>
        <message>
            <source>Fri</source>
            <translation>Fr</translation>
        </message>
        <message>
            <source>Sat</source>
            <translation>Sa</translation>
        </message>
        <message>
            <source>%1 %2</source>
            <extracomment>A day of the week and its date: "Fri 11 Dec 2026".</extracomment>
            <translation>%1 %2</translation>
        </message>
    </context>
    <context>
        <name>Db</name>
        <message>
            <source>A figure is larger than the program works with; check the amounts.</source>
            <translation>Eine Zahl ist größer, als das Programm verarbeiten kann; prüfen Sie die Mengen und Beträge.</translation>
        </message>
        <message>
            <source>The job book could not finish this; try again.</source>
            <translation>Das Auftragsbuch konnte dies nicht zu Ende führen; versuchen Sie es noch einmal.</translation>
        </message>
        <message>
            <source>The job book could not finish this (%1); try again.</source>
            <translation>Das Auftragsbuch konnte dies nicht zu Ende führen (%1); versuchen Sie es noch einmal.</translation>
        </message>
        <message>
            <source>The computer gave no random numbers; restart it.</source>
            <translation>Der Computer hat keine Zufallszahlen geliefert; starten Sie ihn neu.</translation>
        </message>
        <message>
            <source>The disk that holds “%1” is full; make room and try again.</source>
            <translation>Der Datenträger mit „%1“ ist voll; schaffen Sie Platz und versuchen Sie es noch einmal.</translation>
        </message>
        <message>
            <source>“%1” could not be written, because the disk is full or failing; make room or save a copy on another disk.</source>
            <translation>„%1“ konnte nicht geschrieben werden, weil der Datenträger voll oder schadhaft ist; schaffen Sie Platz oder speichern Sie eine Kopie auf einem anderen Datenträger.</translation>
        </message>
        <message>
            <source>“%1” was not closed properly and has to be opened once where it can be written; move it to a folder of your own.</source>
            <translation>„%1“ wurde nicht ordentlich geschlossen und muss einmal dort geöffnet werden, wo geschrieben werden darf; verschieben Sie es in einen eigenen Ordner.</translation>
        </message>
        <message>
            <source>“%1” cannot be written; move it to a folder of your own or allow writing.</source>
            <translation>„%1“ kann nicht geschrieben werden; verschieben Sie es in einen eigenen Ordner oder erlauben Sie das Schreiben.</translation>
        </message>
        <message>
            <source>“%1” or its folder cannot be written; check who may use them and try again.</source>
            <translation>„%1“ oder der Ordner kann nicht geschrieben werden; prüfen Sie, wer ihn benutzen darf, und versuchen Sie es noch einmal.</translation>
        </message>
        <message>
            <source>“%1” cannot be used in this folder; choose a folder of your own.</source>
            <translation>„%1“ kann in diesem Ordner nicht benutzt werden; wählen Sie einen eigenen Ordner.</translation>
        </message>
        <message>
            <source>“%1” may not be read; ask its owner for leave.</source>
            <translation>„%1“ darf nicht gelesen werden; bitten Sie den Eigentümer um Erlaubnis.</translation>
        </message>
        <message>
            <source>“%1” could not be used (%2); check the disk and try again.</source>
            <translation>„%1“ konnte nicht benutzt werden (%2); prüfen Sie den Datenträger und versuchen Sie es noch einmal.</translation>
        </message>
        <message>
            <source>The computer could not read or write “%1” (%2, code %3); check the disk and try again.</source>
            <translation>Der Computer konnte „%1“ nicht lesen oder schreiben (%2, Code %3); prüfen Sie den Datenträger und versuchen Sie es noch einmal.</translation>
        </message>
        <message>
            <source>“%1” could not be read, because the disk did not give it, which says nothing of the book; see that the disk is plugged in and sound, and try again.</source>
            <translation>„%1“ konnte nicht gelesen werden, weil der Datenträger es nicht hergab, was nichts über das Buch sagt; prüfen Sie, ob der Datenträger angeschlossen und heil ist, und versuchen Sie es noch einmal.</translation>
        </message>
        <message>
            <source>The disk did not confirm that “%1” took this; it may be done, so look before you do it again, and save a copy on another disk.</source>
            <translation>Der Datenträger hat nicht bestätigt, dass „%1“ dies aufgenommen hat; vielleicht ist es erledigt, sehen Sie also nach, bevor Sie es wiederholen, und speichern Sie eine Kopie auf einem anderen Datenträger.</translation>
        </message>
        <message>
            <source>This was stopped; nothing was changed.</source>
            <translation>Dies wurde angehalten; nichts wurde geändert.</translation>
        </message>
        <message>
            <source>There is no job book “%1”; choose another file or make a new book.</source>
            <translation>Ein Auftragsbuch „%1“ gibt es nicht; wählen Sie eine andere Datei oder legen Sie ein neues Buch an.</translation>
        </message>
        <message>
            <source>“%1” is not a job book but a folder or device; choose a file.</source>
            <translation>„%1“ ist kein Auftragsbuch, sondern ein Ordner oder Gerät; wählen Sie eine Datei.</translation>
        </message>
        <message>
            <source>There is no folder “%1”; make it first or choose another.</source>
            <translation>Einen Ordner „%1“ gibt es nicht; legen Sie ihn erst an oder wählen Sie einen anderen.</translation>
        </message>
        <message>
            <source>“%1” is there already and is no empty folder; name a new one.</source>
            <translation>„%1“ gibt es schon, und es ist kein leerer Ordner; nennen Sie einen neuen.</translation>
        </message>
        <message>
            <source>There is a file “%1” already; choose another name.</source>
            <translation>Eine Datei „%1“ gibt es schon; wählen Sie einen anderen Namen.</translation>
        </message>
        <message>
            <source>“%1” is no file but a folder, a link or a device; choose another name.</source>
            <translation>„%1“ ist keine Datei, sondern ein Ordner, eine Verknüpfung oder ein Gerät; wählen Sie einen anderen Namen.</translation>
        </message>
        <message>
            <source>“%1” is a job book or belongs to one and stays as it is; choose another name.</source>
            <translation>„%1“ ist ein Auftragsbuch oder gehört zu einem und bleibt, wie es ist; wählen Sie einen anderen Namen.</translation>
        </message>
        <message>
            <source>“%1” has a second name somewhere, by which another program could change it unseen; make a copy and open that.</source>
            <translation>„%1“ hat irgendwo einen zweiten Namen, unter dem ein anderes Programm es unbemerkt ändern könnte; machen Sie eine Kopie und öffnen Sie diese.</translation>
        </message>
        <message>
            <source>Another program is using “%1”; close it there and try again.</source>
            <translation>Ein anderes Programm benutzt „%1“; schließen Sie es dort und versuchen Sie es noch einmal.</translation>
        </message>
        <message>
            <source>“%1” is damaged; open a backup.</source>
            <translation>„%1“ ist beschädigt; öffnen Sie eine Sicherung.</translation>
        </message>
        <message>
            <source>An index of “%1” is damaged, by which things are found, not what was written; save a copy and open a backup.</source>
            <translation>Ein Index von „%1“, über den gesucht wird, ist beschädigt, nicht das Geschriebene; speichern Sie eine Kopie und öffnen Sie eine Sicherung.</translation>
        </message>
        <message>
            <source>The backup “%1” is damaged; choose another one.</source>
            <translation>Die Sicherung „%1“ ist beschädigt; wählen Sie eine andere.</translation>
        </message>
        <message>
            <source>“%1” is damaged or not a job book; open a backup.</source>
            <translation>„%1“ ist beschädigt oder kein Auftragsbuch; öffnen Sie eine Sicherung.</translation>
        </message>
        <message>
            <source>Reading “%1” took too long, it may be damaged; open a backup.</source>
            <translation>Das Lesen von „%1“ hat zu lange gedauert, vielleicht ist es beschädigt; öffnen Sie eine Sicherung.</translation>
        </message>
        <message>
            <source>This is larger than “%1” can hold; make it smaller.</source>
            <translation>Dies ist größer, als „%1“ aufnehmen kann; machen Sie es kleiner.</translation>
        </message>
        <message>
            <source>“%1” already holds a thing of this name; choose another name.</source>
            <translation>„%1“ enthält schon etwas mit diesem Namen; wählen Sie einen anderen Namen.</translation>
        </message>
        <message>
            <source>“%1” does not take this value; check what was typed.</source>
            <translation>„%1“ nimmt diesen Wert nicht an; prüfen Sie, was getippt wurde.</translation>
        </message>
        <message>
            <source>There is not enough memory to work with “%1”; close other programs.</source>
            <translation>Für die Arbeit mit „%1“ reicht der Arbeitsspeicher nicht; schließen Sie andere Programme.</translation>
        </message>
        <message>
            <source>SQLite %1 is too old for job books; install 3.37 or later.</source>
            <translation>SQLite %1 ist zu alt für Auftragsbücher; installieren Sie 3.37 oder neuer.</translation>
        </message>
        <message>
            <source>This SQLite does not take the safety setting %1; install the distribution's own.</source>
            <translation>Dieses SQLite nimmt die Sicherheitseinstellung %1 nicht an; installieren Sie das der Distribution.</translation>
        </message>
        <message>
            <source>This SQLite does not take the limit %1; install the distribution's own.</source>
            <translation>Dieses SQLite nimmt die Grenze %1 nicht an; installieren Sie das der Distribution.</translation>
        </message>
        <message>
            <source>“%1” cannot be kept safe here (%2 is %3 instead of %4); keep it on a disk of this computer.</source>
            <translation>„%1“ ist hier nicht sicher aufgehoben (%2 ist %3 statt %4); legen Sie es auf einen Datenträger dieses Computers.</translation>
        </message>
        <message>
            <source>“%1” is damaged: the column “%2” holds what cannot stand there; open a backup.</source>
            <translation>„%1“ ist beschädigt: In der Spalte „%2“ steht, was dort nicht stehen kann; öffnen Sie eine Sicherung.</translation>
        </message>
        <message>
            <source>“%1” is open in this window already.</source>
            <translation>„%1“ ist in diesem Fenster schon geöffnet.</translation>
        </message>
        <message>
            <source>“%1” is empty; choose a job book or a backup of it.</source>
            <translation>„%1“ ist leer; wählen Sie ein Auftragsbuch oder eine Sicherung davon.</translation>
        </message>
        <message>
            <source>“%1” is not a job book; choose another file.</source>
            <translation>„%1“ ist kein Auftragsbuch; wählen Sie eine andere Datei.</translation>
        </message>
        <message>
            <source>“%1” is a database of another program, not a job book; choose another file.</source>
            <translation>„%1“ ist die Datenbank eines anderen Programms, kein Auftragsbuch; wählen Sie eine andere Datei.</translation>
        </message>
        <message>
            <source>“%1” was altered by another program; open a backup.</source>
            <translation>„%1“ wurde von einem anderen Programm verändert; öffnen Sie eine Sicherung.</translation>
        </message>
        <message>
            <source>“%1” was switched to another way of writing by another program and cannot be opened for reading only; open it where it can be written.</source>
            <translation>„%1“ wurde von einem anderen Programm auf eine andere Schreibweise umgestellt und kann nicht nur zum Lesen geöffnet werden; öffnen Sie es dort, wo geschrieben werden darf.</translation>
        </message>
        <message>
            <source>“%1” was written by a later Stonepenny (book version %2, this one knows %3); update Stonepenny to open it.</source>
            <translation>„%1“ wurde von einem neueren Stonepenny geschrieben (Buchversion %2, dieses kennt %3); aktualisieren Sie Stonepenny, um es zu öffnen.</translation>
        </message>
        <message>
            <source>“%1” is in a form that is newer than this Stonepenny knows; update Stonepenny to open it.</source>
            <translation>„%1“ hat eine Form, die neuer ist, als dieses Stonepenny kennt; aktualisieren Sie Stonepenny, um es zu öffnen.</translation>
        </message>
        <message>
            <source>“%1” is damaged, most of it is missing; open a backup.</source>
            <translation>„%1“ ist beschädigt, das meiste fehlt; öffnen Sie eine Sicherung.</translation>
        </message>
        <message>
            <source>“%1” is damaged at its beginning; open a backup.</source>
            <translation>„%1“ ist am Anfang beschädigt; öffnen Sie eine Sicherung.</translation>
        </message>
        <message>
            <source>“%1” is damaged, the end of it is missing; open a backup.</source>
            <translation>„%1“ ist beschädigt, das Ende fehlt; öffnen Sie eine Sicherung.</translation>
        </message>
        <message>
            <source>“%1” is damaged; open a backup. %2</source>
            <translation>„%1“ ist beschädigt; öffnen Sie eine Sicherung. %2</translation>
        </message>
        <message>
            <source>“%1” could not be copied whole; try another disk. %2</source>
            <translation>„%1“ konnte nicht vollständig kopiert werden; versuchen Sie einen anderen Datenträger. %2</translation>
        </message>
        <message>
            <source>“%1” could not be brought up to date, because a row of its table “%2” refers to a row that is missing; open a backup.</source>
            <translation>„%1“ konnte nicht auf den neuen Stand gebracht werden, weil eine Zeile der Tabelle „%2“ auf eine fehlende Zeile verweist; öffnen Sie eine Sicherung.</translation>
        </message>
        <message>
            <source>“%1” is open for reading only, because it lies in a network folder (%2) where two computers could spoil it; move it to this computer to change it.</source>
            <translation>„%1“ ist nur zum Lesen geöffnet, weil es in einem Netzwerkordner (%2) liegt, wo zwei Computer es verderben könnten; verschieben Sie es auf diesen Computer, um es zu ändern.</translation>
        </message>
        <message>
            <source>“%1” is open for reading only, because it lies in a folder (%2) that is kept alike on several computers, where two of them could spoil it; copy it to a folder of this computer to change it.</source>
            <translation>„%1“ ist nur zum Lesen geöffnet, weil es in einem Ordner (%2) liegt, der auf mehreren Computern abgeglichen wird, wo zwei davon es verderben könnten; kopieren Sie es in einen Ordner dieses Computers, um es zu ändern.</translation>
        </message>
        <message>
            <source>“%1” is open for reading only, because it or its folder cannot be written; move it to a folder of your own to change it.</source>
            <translation>„%1“ ist nur zum Lesen geöffnet, weil es oder der Ordner nicht geschrieben werden kann; verschieben Sie es in einen eigenen Ordner, um es zu ändern.</translation>
        </message>
        <message>
            <source>“%1” is open for reading only, because nothing can be written in its folder; move it to a folder of your own to change it.</source>
            <translation>„%1“ ist nur zum Lesen geöffnet, weil im Ordner nichts geschrieben werden kann; verschieben Sie es in einen eigenen Ordner, um es zu ändern.</translation>
        </message>
        <message>
            <source>“%1” is open for reading only, because %2 on %3 (process %4) has it open; close it there to change it here.</source>
            <translation>„%1“ ist nur zum Lesen geöffnet, weil %2 auf %3 (Prozess %4) es geöffnet hat; schließen Sie es dort, um es hier zu ändern.</translation>
        </message>
        <message>
            <source>“%1” is open for reading only, because another program has it open; close it there to change it here.</source>
            <translation>„%1“ ist nur zum Lesen geöffnet, weil ein anderes Programm es geöffnet hat; schließen Sie es dort, um es hier zu ändern.</translation>
        </message>
        <message>
            <source>“%1” is no longer where it was opened (moved, renamed or deleted, or its disk taken out), and nothing more is written to it; put it back and open it again, or save a copy of what is open.</source>
            <translation>„%1“ ist nicht mehr da, wo es geöffnet wurde (verschoben, umbenannt oder gelöscht, oder der Datenträger ist entfernt), und es wird nichts mehr hineingeschrieben; legen Sie es zurück und öffnen Sie es neu, oder speichern Sie eine Kopie des Geöffneten.</translation>
        </message>
        <message>
            <source>Another file has taken the place of “%1” since it was opened, and nothing more is written; save a copy of what is open here, then open the file that is there now.</source>
            <translation>Eine andere Datei ist seit dem Öffnen an die Stelle von „%1“ getreten, und es wird nichts mehr geschrieben; speichern Sie eine Kopie des hier Geöffneten, dann öffnen Sie die Datei, die jetzt dort ist.</translation>
        </message>
        <message>
            <source>“%1” was written by another program while it was open here, and nothing more is written to it; save a copy, open it again to see what it holds now, and look for what is missing in the backups.</source>
            <translation>„%1“ wurde von einem anderen Programm beschrieben, während es hier geöffnet war, und es wird nichts mehr hineingeschrieben; speichern Sie eine Kopie, öffnen Sie es neu, um zu sehen, was jetzt darin steht, und suchen Sie Fehlendes in den Sicherungen.</translation>
        </message>
        <message>
            <source>“%1” is open for reading only, because it comes from an earlier Stonepenny and a seal of what was given in it does not match; open a backup.</source>
            <translation>„%1“ ist nur zum Lesen geöffnet, weil es von einem früheren Stonepenny stammt und ein Siegel des Abgegebenen darin nicht stimmt; öffnen Sie eine Sicherung.</translation>
        </message>
        <message>
            <source>“%1” is open for reading only, because it comes from an earlier Stonepenny and there is no room to back it up and bring it up to date; make room on the disk and open it again.</source>
            <translation>„%1“ ist nur zum Lesen geöffnet, weil es von einem früheren Stonepenny stammt und der Platz fehlt, es zu sichern und auf den neuen Stand zu bringen; schaffen Sie Platz auf dem Datenträger und öffnen Sie es neu.</translation>
        </message>
        <message>
            <source>“%1” is open for reading only, because it comes from an earlier Stonepenny and no backup could be written beside it before it is brought up to date; move it to a folder of your own and open it again.</source>
            <translation>„%1“ ist nur zum Lesen geöffnet, weil es von einem früheren Stonepenny stammt und daneben keine Sicherung geschrieben werden konnte, bevor es auf den neuen Stand kommt; verschieben Sie es in einen eigenen Ordner und öffnen Sie es neu.</translation>
        </message>
        <message>
            <source>A saved record is damaged and cannot be read; open a backup.</source>
            <translation>Ein gespeicherter Datensatz ist beschädigt und kann nicht gelesen werden; öffnen Sie eine Sicherung.</translation>
        </message>
        <message>
            <source>A saved record is damaged: “%1” is missing or holds what cannot stand there; open a backup.</source>
            <translation>Ein gespeicherter Datensatz ist beschädigt: „%1“ fehlt oder enthält, was dort nicht stehen kann; öffnen Sie eine Sicherung.</translation>
        </message>
        <message>
            <source>A saved record is damaged: it holds a field of another program; open a backup.</source>
            <translation>Ein gespeicherter Datensatz ist beschädigt: Er enthält ein Feld eines anderen Programms; öffnen Sie eine Sicherung.</translation>
        </message>
        <message>
            <source>A saved record is not of the sort it should be; open a backup.</source>
            <translation>Ein gespeicherter Datensatz ist nicht von der Art, die er sein sollte; öffnen Sie eine Sicherung.</translation>
        </message>
        <message>
            <source>A saved record (“%1”, version %2) was written by a later version; update Stonepenny.</source>
            <translation>Ein gespeicherter Datensatz („%1“, Version %2) wurde von einer neueren Version geschrieben; aktualisieren Sie Stonepenny.</translation>
        </message>
        <message>
            <source>A saved record was written by a later version; update Stonepenny.</source>
            <translation>Ein gespeicherter Datensatz wurde von einer neueren Version geschrieben; aktualisieren Sie Stonepenny.</translation>
        </message>
        <message>
            <source>A record in “%1” is damaged; open a backup.</source>
            <translation>Ein Datensatz in „%1“ ist beschädigt; öffnen Sie eine Sicherung.</translation>
        </message>
        <message>
            <source>“%1” is damaged: %2 Open a backup.</source>
            <translation>„%1“ ist beschädigt: %2 Öffnen Sie eine Sicherung.</translation>
        </message>
        <message>
            <source>A certificate is there by half.</source>
            <translation>Ein Nachweis ist nur halb vorhanden.</translation>
        </message>
        <message>
            <source>The drawing of a design in “%1” is damaged; open a backup.</source>
            <translation>Die Zeichnung eines Motivs in „%1“ ist beschädigt; öffnen Sie eine Sicherung.</translation>
        </message>
        <message>
            <source>The order does not say what the lists say; open a backup.</source>
            <translation>Die Bestellung sagt etwas anderes als die Listen; öffnen Sie eine Sicherung.</translation>
        </message>
        <message>
            <source>The shop does not say what is kept beside it; open a backup.</source>
            <translation>Der Betrieb sagt etwas anderes, als daneben aufbewahrt ist; öffnen Sie eine Sicherung.</translation>
        </message>
        <message>
            <source>The quote %1 in “%2” is damaged: its seal does not match; open a backup.</source>
            <translation>Das Angebot %1 in „%2“ ist beschädigt: Sein Siegel stimmt nicht; öffnen Sie eine Sicherung.</translation>
        </message>
        <message>
            <source>The quote %1 in “%2” is damaged: it is not as it was sealed; open a backup.</source>
            <translation>Das Angebot %1 in „%2“ ist beschädigt: Es ist nicht so, wie es versiegelt wurde; öffnen Sie eine Sicherung.</translation>
        </message>
        <message>
            <source>A movement of the shelf is missing; open a backup.</source>
            <translation>Eine Lagerbewegung fehlt; öffnen Sie eine Sicherung.</translation>
        </message>
        <message>
            <source>%1 is not named as it should be; open a backup.</source>
            <translation>%1 ist nicht so benannt, wie es sein soll; öffnen Sie eine Sicherung.</translation>
        </message>
        <message>
            <source>%1 cannot be read; count the drawing again.</source>
            <translation>%1 kann nicht gelesen werden; zählen Sie die Zeichnung neu.</translation>
        </message>
        <message>
            <source>%1 is nothing; type how many came in or went out.</source>
            <translation>%1 ist null; tippen Sie, wie viel dazukam oder abging.</translation>
        </message>
        <message>
            <source>%1 belongs to what comes in; leave it out for what goes out.</source>
            <translation>%1 gehört zu dem, was dazukommt; lassen Sie sie bei dem weg, was abgeht.</translation>
        </message>
        <message>
            <source>%1 does not fit: what is bought comes in, and what is used, lost or spoiled goes out; check the sign of the amount.</source>
            <translation>%1 passt nicht: Gekauftes kommt dazu, Verbrauchtes, Verlorenes oder Verdorbenes geht ab; prüfen Sie das Vorzeichen der Menge.</translation>
        </message>
        <message>
            <source>The %1 “%2” is no longer in the book; add it anew.</source>
            <translation>%1 „%2“ steht nicht mehr im Buch; fügen Sie den Eintrag neu hinzu.</translation>
        </message>
        <message>
            <source>This %1 is no longer in the book; there is nothing to remove.</source>
            <translation>%1 steht nicht mehr im Buch; es gibt nichts zu entfernen.</translation>
        </message>
        <message>
            <source>There is another %1 called “%2”; choose another name.</source>
            <translation>Einen anderen Eintrag „%2“ (%1) gibt es schon; wählen Sie einen anderen Namen.</translation>
        </message>
        <message>
            <source>The %1 refers to something that is not in the book; choose it anew.</source>
            <translation>%1: Der Eintrag verweist auf etwas, das nicht im Buch steht; wählen Sie es neu.</translation>
        </message>
        <message>
            <source>“%1” refers to something that is not in the book; choose it anew.</source>
            <translation>„%1“ verweist auf etwas, das nicht im Buch steht; wählen Sie es neu.</translation>
        </message>
        <message>
            <source>There is another customer of this name; rename one.</source>
            <translation>Einen anderen Kunden mit diesem Namen gibt es schon; benennen Sie einen um.</translation>
        </message>
        <message>
            <source>This material is used by the design “%1”; take it out there first.</source>
            <translation>Dieses Material wird vom Motiv „%1“ gebraucht; nehmen Sie es zuerst dort heraus.</translation>
        </message>
        <message>
            <source>This material is used by the kit “%1”; take it out there first.</source>
            <translation>Dieses Material wird vom Set „%1“ gebraucht; nehmen Sie es zuerst dort heraus.</translation>
        </message>
        <message>
            <source>This material is used by the packing list of the shop; take it out there first.</source>
            <translation>Dieses Material steht in der Verpackungsliste des Betriebs; nehmen Sie es zuerst dort heraus.</translation>
        </message>
        <message>
            <source>This material is used by the shop’s usual tape or template sheet; take it out there first.</source>
            <translation>Dieses Material ist die übliche Folie oder der übliche Schablonenbogen des Betriebs; nehmen Sie es zuerst dort heraus.</translation>
        </message>
        <message>
            <source>This supplier sells the kit “%1”; remove that kit or give it another supplier first.</source>
            <translation>Dieser Lieferant verkauft das Set „%1“; entfernen Sie zuerst das Set oder geben Sie ihm einen anderen Lieferanten.</translation>
        </message>
        <message>
            <source>The kit “%1” is made for this design; remove that kit or make it for another first.</source>
            <translation>Das Set „%1“ ist für dieses Motiv gemacht; entfernen Sie zuerst das Set oder bestimmen Sie es für ein anderes.</translation>
        </message>
        <message>
            <source>%1 planned pieces are fewer than the %2 that are sold already; plan as many at least, or none.</source>
            <translation>%1 geplante Stück sind weniger als die %2 schon verkauften; planen Sie mindestens so viele oder keine.</translation>
        </message>
        <message>
            <source>This material is no longer in the book; add it anew.</source>
            <translation>Dieses Material steht nicht mehr im Buch; fügen Sie es neu hinzu.</translation>
        </message>
        <message>
            <source>This supplier is no longer in the book; add it anew.</source>
            <translation>Dieser Lieferant steht nicht mehr im Buch; fügen Sie ihn neu hinzu.</translation>
        </message>
        <message>
            <source>“%1” is one entry already; choose another one.</source>
            <translation>„%1“ ist schon ein einziger Eintrag; wählen Sie einen anderen.</translation>
        </message>
        <message>
            <source>“%1” has a job that is still open: %2; finish it or let it go, then erase the customer.</source>
            <translation>„%1“ hat noch einen offenen Auftrag: %2; schließen Sie ihn ab oder lassen Sie ihn entfallen, dann löschen Sie den Kunden.</translation>
        </message>
        <message>
            <source>“%1” and the shop are not quits: %2 is not paid to the cent; take the payment, give back what is too much or credit it, then erase the customer.</source>
            <translation>„%1“ und der Betrieb sind nicht quitt: %2 ist nicht auf den Cent bezahlt; buchen Sie die Zahlung, erstatten Sie, was zu viel ist, oder schreiben Sie es gut, dann löschen Sie den Kunden.</translation>
        </message>
        <message>
            <source>The customer is erased, but the free space of “%1” was not cleaned: %2 Make room on the disk; when the next customer is erased, it is cleaned as well.</source>
            <translation>Der Kunde ist gelöscht, aber der freie Platz von „%1“ wurde nicht bereinigt: %2 Schaffen Sie Platz auf dem Datenträger; beim Löschen des nächsten Kunden wird er mit bereinigt.</translation>
        </message>
        <message>
            <source>This customer is no longer in the book; choose another.</source>
            <translation>Dieser Kunde steht nicht mehr im Buch; wählen Sie einen anderen.</translation>
        </message>
        <message>
            <source>This stone is no longer in the book; choose another.</source>
            <translation>Dieser Stein steht nicht mehr im Buch; wählen Sie einen anderen.</translation>
        </message>
        <message>
            <source>The design of the drawing “%1” is no longer in the book; add it anew.</source>
            <translation>Das Motiv der Zeichnung „%1“ steht nicht mehr im Buch; fügen Sie es neu hinzu.</translation>
        </message>
        <message>
            <source>This design has no drawing in the book.</source>
            <translation>Dieses Motiv hat im Buch keine Zeichnung.</translation>
        </message>
        <message>
            <source>The drawing “%1” is empty; choose another file.</source>
            <translation>Die Zeichnung „%1“ ist leer; wählen Sie eine andere Datei.</translation>
        </message>
        <message>
            <source>The drawing “%1” is larger than %2 MB; make it smaller.</source>
            <translation>Die Zeichnung „%1“ ist größer als %2 MB; machen Sie sie kleiner.</translation>
        </message>
        <message>
            <source>The small picture of “%1” is larger than %2 MB; make a smaller one.</source>
            <translation>Das kleine Bild von „%1“ ist größer als %2 MB; machen Sie ein kleineres.</translation>
        </message>
        <message>
            <source>Only %1 of “%2” are on the shelf; count it and book what is there first.</source>
            <translation>Von „%2“ sind nur %1 auf Lager; zählen Sie nach und buchen Sie zuerst, was da ist.</translation>
        </message>
        <message>
            <source>There would be more than %1 of “%2” on the shelf; check the amount.</source>
            <translation>Von „%2“ wären mehr als %1 auf Lager; prüfen Sie die Menge.</translation>
        </message>
        <message>
            <source>So many of “%1” cannot be counted; type a number from 0 to %2.</source>
            <translation>So viele von „%1“ können nicht gezählt werden; tippen Sie eine Zahl von 0 bis %2.</translation>
        </message>
        <message>
            <source>These things are no longer on the shelf; count it and book what is there.</source>
            <translation>Dies ist nicht mehr auf Lager; zählen Sie nach und buchen Sie, was da ist.</translation>
        </message>
        <message>
            <source>This quote is not in the book; look for it under another number.</source>
            <translation>Dieses Angebot steht nicht im Buch; suchen Sie es unter einer anderen Nummer.</translation>
        </message>
        <message>
            <source>There is no quote %1 in this book; look for it under another number.</source>
            <translation>Ein Angebot %1 gibt es in diesem Buch nicht; suchen Sie es unter einer anderen Nummer.</translation>
        </message>
        <message>
            <source>Quote %1 has been given and stays as it is; start a new quote instead.</source>
            <translation>Angebot %1 ist abgegeben und bleibt, wie es ist; beginnen Sie stattdessen ein neues.</translation>
        </message>
        <message>
            <source>This quote was changed meanwhile in another place; look at it again before you change it.</source>
            <translation>Dieses Angebot wurde inzwischen an anderer Stelle geändert; sehen Sie es noch einmal an, bevor Sie es ändern.</translation>
        </message>
        <message>
            <source>Quote %1 was replaced by %2; say that number instead.</source>
            <translation>Angebot %1 wurde durch %2 ersetzt; nennen Sie stattdessen diese Nummer.</translation>
        </message>
        <message>
            <source>Quote %1 was revised meanwhile in another place and is %2 now; what is typed here is kept as a draft, and %2 can be revised.</source>
            <translation>Angebot %1 wurde inzwischen an anderer Stelle überarbeitet und ist jetzt %2; was hier getippt ist, bleibt als Entwurf, und %2 lässt sich überarbeiten.</translation>
        </message>
        <message>
            <source>Quote %1 was let go and is not revised; order it again instead.</source>
            <translation>Angebot %1 ist entfallen und wird nicht überarbeitet; bestellen Sie es stattdessen noch einmal.</translation>
        </message>
        <message>
            <source>Quote %1 was collected and is not revised; put it back to Ready first, or credit its invoice.</source>
            <translation>Angebot %1 ist abgeholt und wird nicht überarbeitet; setzen Sie es erst auf „Fertig“ zurück oder schreiben Sie seine Rechnung gut.</translation>
        </message>
        <message>
            <source>The quote refers to a customer, design or material that is not in the book; choose it anew.</source>
            <translation>Das Angebot verweist auf einen Kunden, ein Motiv oder ein Material, das nicht im Buch steht; wählen Sie es neu.</translation>
        </message>
        <message>
            <source>A stone of the order is not in the book; choose it anew.</source>
            <translation>Ein Stein der Bestellung steht nicht im Buch; wählen Sie ihn neu.</translation>
        </message>
        <message>
            <source>There is nothing on this quote; add a line before giving it.</source>
            <translation>Auf diesem Angebot steht nichts; fügen Sie eine Position hinzu, bevor Sie es abgeben.</translation>
        </message>
        <message>
            <source>The total is larger than a book can hold; check the quantities and prices.</source>
            <translation>Die Summe ist größer, als ein Buch aufnehmen kann; prüfen Sie Mengen und Preise.</translation>
        </message>
        <message>
            <source>The last day of the quote lies before its first; choose a later one.</source>
            <translation>Der letzte Tag des Angebots liegt vor dem ersten; wählen Sie einen späteren.</translation>
        </message>
        <message>
            <source>The prices are those of another customer; choose the customer again.</source>
            <translation>Die Preise sind die eines anderen Kunden; wählen Sie den Kunden neu.</translation>
        </message>
        <message>
            <source>The prices are mixed up; open the quote again.</source>
            <translation>Die Preise sind durcheinander; öffnen Sie das Angebot neu.</translation>
        </message>
        <message>
            <source>What quote %1 came to cannot be sealed again.</source>
            <translation>Was Angebot %1 ergab, kann nicht noch einmal versiegelt werden.</translation>
        </message>
        <message>
            <source>This quote has not been given yet; give it before you move it on.</source>
            <translation>Dieses Angebot ist noch nicht abgegeben; geben Sie es ab, bevor Sie seinen Stand ändern.</translation>
        </message>
        <message>
            <source>Quote %1 offers %2 choices; say first which one the customer takes.</source>
            <translation>Angebot %1 bietet %2 Varianten; sagen Sie erst, welche der Kunde nimmt.</translation>
        </message>
        <message>
            <source>Quote %1 offers %2 choices, and this is none of them; choose one of those.</source>
            <translation>Angebot %1 bietet %2 Varianten, und diese ist keine davon; wählen Sie eine von ihnen.</translation>
        </message>
        <message>
            <source>%1 cannot go there from the stage it is in; choose one that may follow.</source>
            <translation>%1 kann von seinem Stand aus nicht dorthin; wählen Sie einen, der folgen darf.</translation>
        </message>
        <message>
            <source>Quote %1 has been given and is no enquiry any more; start a new quote.</source>
            <translation>Angebot %1 ist abgegeben und keine Anfrage mehr; beginnen Sie ein neues Angebot.</translation>
        </message>
        <message>
            <source>The action was given up after an error; try it again.</source>
            <translation>Der Vorgang wurde nach einem Fehler abgebrochen; versuchen Sie ihn noch einmal.</translation>
        </message>
        <message>
            <source>The book cannot be copied in the middle of an action.</source>
            <translation>Das Buch kann nicht mitten in einem Vorgang kopiert werden.</translation>
        </message>
        <message>
            <source>A payment is missing from the book; open a backup.</source>
            <translation>Im Buch fehlt eine Zahlung; öffnen Sie eine Sicherung.</translation>
        </message>
        <message>
            <source>This payment for %1 was taken back already; enter a new one.</source>
            <translation>Diese Zahlung für %1 ist schon storniert; buchen Sie eine neue.</translation>
        </message>
        <message>
            <source>%1 was given back in part already for %2; take that back first.</source>
            <translation>%1 für %2 wurde schon teilweise erstattet; stornieren Sie zuerst die Erstattung.</translation>
        </message>
        <message>
            <source>The paper %1 in “%2” is damaged: its seal does not match; open a backup.</source>
            <translation>Der Beleg %1 in „%2“ ist beschädigt: Sein Siegel stimmt nicht; öffnen Sie eine Sicherung.</translation>
        </message>
        <message>
            <source>Quote %1 is not agreed to yet; move it to Agreed before you invoice it.</source>
            <translation>Angebot %1 ist noch nicht beauftragt; setzen Sie es auf „Beauftragt“, bevor Sie die Rechnung schreiben.</translation>
        </message>
        <message>
            <source>Quote %1 comes to nothing; there is nothing to invoice.</source>
            <translation>Angebot %1 ergibt null; es gibt nichts in Rechnung zu stellen.</translation>
        </message>
        <message>
            <source>All of %1 is invoiced by %2 already; print that again, or credit it first.</source>
            <translation>%1 ist mit %2 schon ganz in Rechnung gestellt; drucken Sie diese noch einmal oder schreiben Sie sie erst gut.</translation>
        </message>
        <message>
            <source>More of %1 is invoiced by %2 than it comes to; write a credit note first.</source>
            <translation>Von %1 ist mit %2 mehr in Rechnung gestellt, als es ergibt; schreiben Sie erst eine Gutschrift.</translation>
        </message>
        <message>
            <source>%1 is invoiced and stays agreed as it is; write a credit note first.</source>
            <translation>%1 ist in Rechnung gestellt und bleibt beauftragt, wie es ist; schreiben Sie erst eine Gutschrift.</translation>
        </message>
        <message>
            <source>“%1” is not an invoice; only an invoice can be credited.</source>
            <translation>„%1“ ist keine Rechnung; nur eine Rechnung kann gutgeschrieben werden.</translation>
        </message>
        <message>
            <source>All of invoice %1 was taken back already; nothing is left to credit.</source>
            <translation>Rechnung %1 ist schon ganz aufgehoben; es bleibt nichts gutzuschreiben.</translation>
        </message>
        <message>
            <source>This payment for %1 has the receipt %2 already; print that again.</source>
            <translation>Diese Zahlung für %1 hat schon die Quittung %2; drucken Sie diese noch einmal.</translation>
        </message>
        <message>
            <source>For money that was given or taken back there is no receipt; the next paper of %1 says it.</source>
            <translation>Für erstattetes oder storniertes Geld gibt es keine Quittung; der nächste Beleg von %1 nennt es.</translation>
        </message>
        <message>
            <source>There is no paper %1 in this book; look for it under another number.</source>
            <translation>Einen Beleg %1 gibt es in diesem Buch nicht; suchen Sie ihn unter einer anderen Nummer.</translation>
        </message>
        <message>
            <source>There is nothing to undo.</source>
            <translation>Es gibt nichts rückgängig zu machen.</translation>
        </message>
        <message>
            <source>There is nothing to redo.</source>
            <translation>Es gibt nichts zu wiederholen.</translation>
        </message>
        <message>
            <source>This was changed meanwhile in another way; it can no longer be undone.</source>
            <translation>Dies wurde inzwischen anders geändert; es lässt sich nicht mehr rückgängig machen.</translation>
        </message>
        <message>
            <source>shop</source>
            <translation>Betrieb</translation>
        </message>
        <message>
            <source>bench</source>
            <translation>Werkbank</translation>
        </message>
        <message>
            <source>material</source>
            <translation>Material</translation>
        </message>
        <message>
            <source>supplier</source>
            <translation>Lieferant</translation>
        </message>
        <message>
            <source>pack</source>
            <translation>Packung</translation>
        </message>
        <message>
            <source>kit</source>
            <translation>Set</translation>
        </message>
        <message>
            <source>design</source>
            <translation>Motiv</translation>
        </message>
        <message>
            <source>customer</source>
            <translation>Kunde</translation>
        </message>
        <message>
            <source>adding %1</source>
            <translation>%1 hinzufügen</translation>
        </message>
        <message>
            <source>customers out of a file</source>
            <translation>Kunden aus einer Datei</translation>
        </message>
        <message>
            <source>erasing a customer</source>
            <translation>einen Kunden löschen</translation>
        </message>
        <message>
            <source>merging %1 into %2</source>
            <translation>%1 mit %2 zusammenführen</translation>
        </message>
        <message>
            <source>removing %1</source>
            <translation>%1 entfernen</translation>
        </message>
        <message>
            <source>change of %1</source>
            <translation>Änderung an %1</translation>
        </message>
        <message>
            <source>%1 of %2</source>
            <translation>%1 von %2</translation>
        </message>
        <message>
            <source>change of the shop</source>
            <translation>Änderung am Betrieb</translation>
        </message>
        <message>
            <source>change of the bench</source>
            <translation>Änderung an der Werkbank</translation>
        </message>
        <message>
            <source>change of the quote</source>
            <translation>Änderung am Angebot</translation>
        </message>
        <message>
            <source>%1 of the quote</source>
            <translation>%1 des Angebots</translation>
        </message>
        <message>
            <source>lines of the quote</source>
            <translation>Positionen des Angebots</translation>
        </message>
        <message>
            <source>a line</source>
            <translation>Position</translation>
        </message>
        <message>
            <source>the quote</source>
            <translation>Angebot</translation>
        </message>
        <message>
            <source>new quote</source>
            <translation>neues Angebot</translation>
        </message>
        <message>
            <source>revising %1</source>
            <translation>%1 überarbeiten</translation>
        </message>
        <message>
            <source>giving %1</source>
            <translation>%1 abgeben</translation>
        </message>
        <message>
            <source>payment for %1</source>
            <translation>Zahlung für %1</translation>
        </message>
        <message>
            <source>%1 for %2</source>
            <translation>%1 für %2</translation>
        </message>
        <message>
            <source>choice taken of %1</source>
            <translation>gewählte Variante von %1</translation>
        </message>
        <message>
            <source>stage of %1</source>
            <translation>Stand von %1</translation>
        </message>
        <message>
            <source>movement of %1</source>
            <translation>Lagerbewegung von %1</translation>
        </message>
        <message>
            <source>drawing of %1</source>
            <translation>Zeichnung von %1</translation>
        </message>
        <message>
            <source>removing the drawing of %1</source>
            <translation>Zeichnung von %1 entfernen</translation>
        </message>
        <message>
            <source>the stone for a colour in cut files</source>
            <translation>der Stein für eine Farbe in Schnittdateien</translation>
        </message>
        <message>
            <source>columns of the price list of %1</source>
            <translation>Spalten der Preisliste von %1</translation>
        </message>
        <message>
            <source>In %1: %2</source>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>the lists</source>
            <translation>Listen</translation>
        </message>
        <message>
            <source>the drawings</source>
            <translation>Zeichnungen</translation>
        </message>
        <message>
            <source>the shelf</source>
            <translation>Lager</translation>
        </message>
        <message>
            <source>the quotes</source>
            <translation>Angebote</translation>
        </message>
        <message>
            <source>a quote</source>
            <translation>Angebot</translation>
        </message>
        <message>
            <source>the seals</source>
            <translation>Siegel</translation>
        </message>
        <message>
            <source>a given quote</source>
            <translation>abgegebenes Angebot</translation>
        </message>
        <message>
            <source>an invoice, receipt or credit note</source>
            <translation>Rechnung, Quittung oder Gutschrift</translation>
        </message>
        <message>
            <source>the numbers</source>
            <translation>Nummern</translation>
        </message>
        <message>
            <source>the records</source>
            <translation>Datensätze</translation>
        </message>
        <message>
            <source>the change log</source>
            <translation>Änderungsprotokoll</translation>
        </message>
        <message>
            <source>the columns of a price list</source>
            <translation>Spalten einer Preisliste</translation>
        </message>
        <message>
            <source>the shop</source>
            <translation>Betrieb</translation>
        </message>
        <message>
            <source>the bench</source>
            <translation>Werkbank</translation>
        </message>
        <message>
            <source>the stone of a colour</source>
            <translation>Stein einer Farbe</translation>
        </message>
        <message>
            <source>a payment</source>
            <translation>Zahlung</translation>
        </message>
        <message>
            <source>a movement of the shelf</source>
            <translation>Lagerbewegung</translation>
        </message>
        <message>
            <source>a draft</source>
            <translation>Entwurf</translation>
        </message>
        <message>
            <source>The structure of the file is damaged (%1).</source>
            <translation>Der Aufbau der Datei ist beschädigt (%1).</translation>
        </message>
        <message>
            <source>Behind the end of the book lie %1 bytes more, which do not belong to it; save a copy.</source>
            <translation>Hinter dem Ende des Buchs liegen noch %1 Bytes, die nicht dazugehören; speichern Sie eine Kopie.</translation>
        </message>
        <message>
            <source>An index, by which things are found, is damaged; what was written is not: %1</source>
            <translation>Ein Index, über den gesucht wird, ist beschädigt; das Geschriebene ist es nicht: %1</translation>
        </message>
        <message>
            <source>A row of the table “%1” refers to a row that is missing.</source>
            <translation>Eine Zeile der Tabelle „%1“ verweist auf eine fehlende Zeile.</translation>
        </message>
        <message>
            <source>“%1” is not as it was last saved; compare it with a backup.</source>
            <translation>„%1“ ist nicht so, wie es zuletzt gespeichert wurde; vergleichen Sie mit einer Sicherung.</translation>
        </message>
        <message>
            <source>The stage of %1 is not as it was last saved; compare it with a backup.</source>
            <translation>Der Stand von %1 ist nicht so, wie er zuletzt gespeichert wurde; vergleichen Sie mit einer Sicherung.</translation>
        </message>
        <message>
            <source>The rates and rules of the shop are missing; open a backup.</source>
            <translation>Die Sätze und Regeln des Betriebs fehlen; öffnen Sie eine Sicherung.</translation>
        </message>
        <message>
            <source>The bench standards are missing; open a backup.</source>
            <translation>Die Richtwerte der Werkbank fehlen; öffnen Sie eine Sicherung.</translation>
        </message>
        <message>
            <source>Less than nothing of a material is on the shelf; count it.</source>
            <translation>Von einem Material ist weniger als nichts auf Lager; zählen Sie nach.</translation>
        </message>
        <message>
            <source>The order of a quote is missing; open a backup.</source>
            <translation>Die Bestellung eines Angebots fehlt; öffnen Sie eine Sicherung.</translation>
        </message>
        <message>
            <source>A given quote is missing from the book; open a backup.</source>
            <translation>Im Buch fehlt ein abgegebenes Angebot; öffnen Sie eine Sicherung.</translation>
        </message>
        <message>
            <source>Between two given quotes another one was taken out or exchanged; open a backup.</source>
            <translation>Zwischen zwei abgegebenen Angeboten wurde ein weiteres herausgenommen oder ausgetauscht; öffnen Sie eine Sicherung.</translation>
        </message>
        <message>
            <source>The seal of quote %1 is missing; open a backup.</source>
            <translation>Das Siegel von Angebot %1 fehlt; öffnen Sie eine Sicherung.</translation>
        </message>
        <message>
            <source>Quote %1 was given but is no longer listed; open a backup.</source>
            <translation>Angebot %1 wurde abgegeben, ist aber nicht mehr aufgeführt; öffnen Sie eine Sicherung.</translation>
        </message>
        <message>
            <source>Quote %1 is not as it was sealed; open a backup.</source>
            <translation>Angebot %1 ist nicht so, wie es versiegelt wurde; öffnen Sie eine Sicherung.</translation>
        </message>
        <message>
            <source>Quote %1 does not follow the one that it replaced; open a backup.</source>
            <translation>Angebot %1 schließt nicht an das an, das es ersetzt hat; öffnen Sie eine Sicherung.</translation>
        </message>
        <message>
            <source>There are numbers of papers that nobody issued; open a backup.</source>
            <translation>Es gibt Belegnummern, die niemand vergeben hat; öffnen Sie eine Sicherung.</translation>
        </message>
        <message>
            <source>Quote %1 was given but cannot be read; open a backup.</source>
            <translation>Angebot %1 wurde abgegeben, kann aber nicht gelesen werden; öffnen Sie eine Sicherung.</translation>
        </message>
        <message>
            <source>The count of quotes has lost %1; open a backup.</source>
            <translation>In der Zählung der Angebote fehlt %1; öffnen Sie eine Sicherung.</translation>
        </message>
        <message>
            <source>%1 was issued but is missing or cannot be read; open a backup.</source>
            <translation>%1 wurde ausgestellt, fehlt aber oder kann nicht gelesen werden; öffnen Sie eine Sicherung.</translation>
        </message>
        <message>
            <source>The count of papers has lost %1; open a backup.</source>
            <translation>In der Zählung der Belege fehlt %1; öffnen Sie eine Sicherung.</translation>
        </message>
        <message>
            <source>%1 is for a payment or an invoice that is missing; open a backup.</source>
            <translation>%1 gehört zu einer Zahlung oder Rechnung, die fehlt; öffnen Sie eine Sicherung.</translation>
        </message>
        <message>
            <source>More of %1 is credited than was invoiced; open a backup.</source>
            <translation>Von %1 ist mehr gutgeschrieben, als in Rechnung gestellt wurde; öffnen Sie eine Sicherung.</translation>
        </message>
        <message>
            <source>A row of the change log is missing; open a backup.</source>
            <translation>Eine Zeile des Änderungsprotokolls fehlt; öffnen Sie eine Sicherung.</translation>
        </message>
        <message>
            <source>Record %1 of the change log does not follow from the one before it.</source>
            <translation>Datensatz %1 des Änderungsprotokolls schließt nicht an den vorigen an.</translation>
        </message>
        <message>
            <source>Of %1 the customer was taken out, and no erasing of a customer says so.</source>
            <translation>Aus %1 wurde der Kunde herausgenommen, und kein Löschen eines Kunden erklärt es.</translation>
        </message>
        <message>
            <source>A thing and the change log do not agree on when it was last changed; compare with a backup.</source>
            <translation>Ein Eintrag und das Änderungsprotokoll sind sich nicht einig, wann er zuletzt geändert wurde; vergleichen Sie mit einer Sicherung.</translation>
        </message>
        <message>
            <source>What of “%1” goes back to a supplier is for no job; leave the job out.</source>
            <translation>Was von „%1“ an einen Lieferanten zurückgeht, ist für keinen Auftrag; lassen Sie den Auftrag weg.</translation>
        </message>
    </context>
    <context>
        <name>Difference</name>
        <message>
            <source>%1 × %2</source>
            <translation>%1 × %2</translation>
        </message>
        <message>
            <source>%1 changed</source>
            <translation>%1 geändert</translation>
        </message>
        <message>
            <source>%1: %2 (was none)</source>
            <translation>%1: %2 (vorher nichts)</translation>
        </message>
        <message>
            <source>%1: none (was %2)</source>
            <translation>%1: nichts (vorher %2)</translation>
        </message>
        <message>
            <source>%1: %2 (was %3)</source>
            <translation>%1: %2 (vorher %3)</translation>
        </message>
        <message>
            <source>added</source>
            <translation>hinzugefügt</translation>
        </message>
        <message>
            <source>taken out</source>
            <translation>herausgenommen</translation>
        </message>
        <message>
            <source>Replaced by %1 on %2</source>
            <translation>Ersetzt durch %1 am %2</translation>
        </message>
        <message>
            <source>%1 is invoiced: once the revision is agreed to, a credit note and another invoice settle the difference.</source>
            <translation>%1 ist in Rechnung gestellt: Sobald die Überarbeitung beauftragt ist, gleichen eine Gutschrift und eine weitere Rechnung den Unterschied aus.</translation>
        </message>
    </context>
    <context>
        <name>Fields</name>
        <message>
            <source>%1 must be from %2 to %3.</source>
            <translation>%1 muss von %2 bis %3 liegen.</translation>
        </message>
        <message>
            <source>%1 is none of those there are; choose one of the list.</source>
            <translation>%1 ist keine von den vorhandenen; wählen Sie eine aus der Liste.</translation>
        </message>
        <message>
            <source>%1 is missing; choose one.</source>
            <translation>%1 fehlt; wählen Sie etwas aus.</translation>
        </message>
        <message>
            <source>%1 are more than %2; take some out.</source>
            <translation>%1 hat mehr als %2 Einträge; nehmen Sie einige heraus.</translation>
        </message>
        <message>
            <source>%1 holds characters that are not text; type it again.</source>
            <translation>%1 enthält Zeichen, die kein Text sind; tippen Sie sie neu.</translation>
        </message>
        <message>
            <source>%1 is missing; type one.</source>
            <translation>%1 fehlt; tippen Sie etwas ein.</translation>
        </message>
        <message>
            <source>%1 is longer than %2 bytes; shorten it.</source>
            <translation>%1 ist länger als %2 Bytes; kürzen Sie sie.</translation>
        </message>
        <message>
            <source>%1 holds control characters; type it again.</source>
            <translation>%1 enthält Steuerzeichen; tippen Sie sie neu.</translation>
        </message>
        <message>
            <source>%1 must be a day of the years 1 to 9999.</source>
            <translation>%1 muss ein Tag in den Jahren 1 bis 9999 sein.</translation>
        </message>
        <message>
            <source>%1 must be from -50 to 500 °C.</source>
            <translation>%1 muss von -50 bis 500 °C liegen.</translation>
        </message>
        <message>
            <source>%1 must begin with a row from 1.</source>
            <translation>%1 muss mit einer Zeile ab 1 beginnen.</translation>
        </message>
        <message>
            <source>%1 must have its rows in ascending order.</source>
            <translation>%1 muss ihre Zeilen in aufsteigender Folge haben.</translation>
        </message>
        <message>
            <source>%1 must have its days in ascending order.</source>
            <translation>%1 muss ihre Tage in aufsteigender Folge haben.</translation>
        </message>
        <message>
            <source>%1 is not in the table of sizes; choose one from SS6 to SS40.</source>
            <translation>%1 steht nicht in der Größentabelle; wählen Sie eine von SS6 bis SS40.</translation>
        </message>
        <message>
            <source>%1 name a size twice; rename one.</source>
            <translation>%1 nennt eine Größe zweimal; benennen Sie eine um.</translation>
        </message>
        <message>
            <source>%1 lies before the first one; correct one of them.</source>
            <translation>%1 liegt vor dem ersten Tag; berichtigen Sie einen von beiden.</translation>
        </message>
        <message>
            <source>%1 lies before the day of issue; correct one of them.</source>
            <translation>%1 liegt vor dem Ausstellungstag; berichtigen Sie einen von beiden.</translation>
        </message>
        <message>
            <source>%1 is missing in a row; choose one.</source>
            <translation>%1 fehlt in einer Zeile; wählen Sie etwas aus.</translation>
        </message>
        <message>
            <source>%1 name a material twice; put the two rows into one.</source>
            <translation>%1 nennt ein Material zweimal; fassen Sie die beiden Zeilen zusammen.</translation>
        </message>
        <message>
            <source>%1 name a place twice; rename one.</source>
            <translation>%1 nennt eine Stelle zweimal; benennen Sie eine um.</translation>
        </message>
        <message>
            <source>%1 cannot be a part of the currency’s smallest unit; type a whole one.</source>
            <translation>%1 darf kein Bruchteil der kleinsten Währungseinheit sein; tippen Sie eine ganze Zahl davon.</translation>
        </message>
        <message>
            <source>%1 have a name twice; rename one.</source>
            <translation>%1 enthält einen Namen zweimal; benennen Sie einen um.</translation>
        </message>
        <message>
            <source>%1 name a rate twice; rename one.</source>
            <translation>%1 nennt einen Satz zweimal; benennen Sie einen um.</translation>
        </message>
        <message>
            <source>%1 say the same twice; choose one column for each.</source>
            <translation>%1 sagt dasselbe zweimal; wählen Sie für jedes eine Spalte.</translation>
        </message>
        <message>
            <source>%1 is given twice; keep the share or the amount.</source>
            <translation>%1 ist zweimal angegeben; behalten Sie den Anteil oder den Betrag.</translation>
        </message>
        <message>
            <source>The %1</source>
            <translation>Die Angabe „%1“</translation>
        </message>
        <message>
            <source>The %1 of “%2”</source>
            <translation>Die Angabe „%1“ bei „%2“</translation>
        </message>
    </context>
    <context>
        <name>FirstSteps</name>
        <message>
            <source>Done. %1</source>
            <translation>Erledigt. %1</translation>
        </message>
        <message>
            <source>Left open. %1</source>
            <translation>Offen gelassen. %1</translation>
        </message>
    </context>
    <context>
        <name>KitWords</name>
        <message>
            <source> and </source>
            <translation> und </translation>
        </message>
        <message>
            <source>No piece comes out of it: %1 is missing or too little.</source>
            <translation>Kein Stück kommt dabei heraus: %1 fehlt oder reicht nicht.</translation>
        </message>
        <message>
            <source>%1 for sure</source>
            <translation>%1 sicher</translation>
        </message>
        <message>
            <source>%1 %2</source>
            <translation>%1 %2</translation>
        </message>
        <message numerus="yes">
            <source>Makes %1; %2 run out first.</source>
            <translation>
                <numerusform>Ergibt %1; zuerst geht %2 aus.</numerusform>
                <numerusform>Ergibt %1; zuerst gehen %2 aus.</numerusform>
            </translation>
        </message>
        <message>
            <source>%1 for %2 more</source>
            <translation>%1 für weitere %2</translation>
        </message>
        <message>
            <source> (%1)</source>
            <translation> (%1)</translation>
        </message>
        <message>
            <source>Nothing is left over.</source>
            <translation>Nichts bleibt übrig.</translation>
        </message>
        <message>
            <source>Left over: %1.</source>
            <translation>Übrig bleibt: %1.</translation>
        </message>
        <message>
            <source>%1 Worth %2 at bulk prices.</source>
            <translation>%1 Wert %2 zu Packungspreisen.</translation>
        </message>
        <message>
            <source>now and then</source>
            <translation>ab und zu</translation>
        </message>
        <message>
            <source>one time in ten</source>
            <translation>in einem von zehn Fällen</translation>
        </message>
        <message>
            <source>one time in five</source>
            <translation>in einem von fünf Fällen</translation>
        </message>
        <message>
            <source>one time in four</source>
            <translation>in einem von vier Fällen</translation>
        </message>
        <message>
            <source>one time in three</source>
            <translation>in einem von drei Fällen</translation>
        </message>
        <message>
            <source>every other time</source>
            <translation>jedes zweite Mal</translation>
        </message>
        <message>
            <source>two times in three</source>
            <translation>in zwei von drei Fällen</translation>
        </message>
        <message>
            <source>three times in four</source>
            <translation>in drei von vier Fällen</translation>
        </message>
        <message>
            <source>four times in five</source>
            <translation>in vier von fünf Fällen</translation>
        </message>
        <message>
            <source>nine times in ten</source>
            <translation>in neun von zehn Fällen</translation>
        </message>
        <message>
            <source>nearly always</source>
            <translation>fast immer</translation>
        </message>
        <message>
            <source>That is %1 a piece.</source>
            <translation>Das sind %1 je Stück.</translation>
        </message>
        <message>
            <source>One more gross of %1 would add one piece.</source>
            <translation>Ein Gros %1 mehr brächte ein Stück mehr.</translation>
        </message>
        <message numerus="yes">
            <source>One more gross of %1 would add %2 pieces.</source>
            <translation>
                <numerusform>Ein Gros %1 mehr brächte %2 Stück mehr.</numerusform>
                <numerusform>Ein Gros %1 mehr brächte %2 Stück mehr.</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>Ladder</name>
        <message>
            <source>%1 &gt; %2</source>
            <translation>%1 &gt; %2</translation>
        </message>
        <message>
            <source>%1–%2 &gt; %3</source>
            <comment>from, to, and what they cost more than</comment>
            <translation>%1–%2 &gt; %3</translation>
        </message>
        <message numerus="yes">
            <source>%1 pieces: %2 each, %3 in all</source>
            <translation>
                <numerusform>%1 Stück: je %2, zusammen %3</numerusform>
                <numerusform>%1 Stück: je %2, zusammen %3</numerusform>
            </translation>
        </message>
        <message>
            <source>; %1 come to less, %2</source>
            <translation>; %1 ergeben weniger, %2</translation>
        </message>
        <message>
            <source>%1 come to more than %2, which are %3.</source>
            <translation>%1 kosten mehr als %2, die %3 kosten.</translation>
        </message>
        <message>
            <source>%1 to %2 come to more than %3, which are %4.</source>
            <translation>%1 bis %2 kosten mehr als %3, die %4 kosten.</translation>
        </message>
        <message>
            <source>More pieces always come to as much or more.</source>
            <translation>Mehr Stück kosten immer gleich viel oder mehr.</translation>
        </message>
    </context>
    <context>
        <name>Language</name>
        <message>
            <source>English</source>
            <extracomment>What the language that this file translates into calls itself.</extracomment>
            <translation>Deutsch</translation>
        </message>
    </context>
    <context>
        <name>Layout</name>
        <message>
            <source>The number of pieces must be 1 to %1; enter a number in that range.</source>
            <translation>Die Stückzahl muss 1 bis %1 sein; geben Sie eine Zahl in diesem Bereich ein.</translation>
        </message>
        <message numerus="yes">
            <source>%n pieces of %2 need more than 1 km of roll; ask for fewer pieces.</source>
            <translation>
                <numerusform>%n Stück von %2 braucht mehr als 1 km Rolle; verlangen Sie weniger Stück.</numerusform>
                <numerusform>%n Stück von %2 brauchen mehr als 1 km Rolle; verlangen Sie weniger Stück.</numerusform>
            </translation>
        </message>
        <message>
            <source>Margin and gap must be 0 or more: change them.</source>
            <translation>Rand und Abstand müssen 0 oder mehr sein: Ändern Sie sie.</translation>
        </message>
        <message>
            <source>There is nothing to lay: say what is to be cut.</source>
            <translation>Es gibt nichts zu legen: Sagen Sie, was geschnitten werden soll.</translation>
        </message>
        <message>
            <source>More than 1,000 different pieces are not planned at once: plan them in parts.</source>
            <translation>Mehr als 1000 verschiedene Stücke werden nicht auf einmal geplant: Planen Sie sie in Teilen.</translation>
        </message>
        <message>
            <source>Piece %1 must have sides above 0 and up to 1 km: change its size.</source>
            <translation>Stück %1 muss Seiten über 0 und bis zu 1 km haben: Ändern Sie seine Größe.</translation>
        </message>
        <message>
            <source>Of piece %1 1 or more must be cut: change its count.</source>
            <translation>Von Stück %1 muss 1 oder mehr geschnitten werden: Ändern Sie seine Anzahl.</translation>
        </message>
        <message>
            <source>More than 20,000 pieces are not planned at once: plan them in parts.</source>
            <translation>Mehr als 20 000 Stücke werden nicht auf einmal geplant: Planen Sie sie in Teilen.</translation>
        </message>
        <message>
            <source>Piece %1 fits no sheet, whichever way round: take a larger sheet or a smaller margin.</source>
            <translation>Stück %1 passt auf keinen Bogen, wie herum auch immer: Nehmen Sie einen größeren Bogen oder einen kleineren Rand.</translation>
        </message>
        <message>
            <source>The sheets that can be had do not take all pieces: allow more of them.</source>
            <translation>Die erhältlichen Bögen fassen nicht alle Stücke: Erlauben Sie mehr davon.</translation>
        </message>
        <message>
            <source>No way was found to lay all pieces on the sheets that can be had: allow one more.</source>
            <translation>Es fand sich kein Weg, alle Stücke auf die erhältlichen Bögen zu legen: Erlauben Sie einen mehr.</translation>
        </message>
        <message>
            <source>There is no sheet to lay on: name one.</source>
            <translation>Es gibt keinen Bogen zum Auflegen: Nennen Sie einen.</translation>
        </message>
        <message>
            <source>More than 50 kinds of sheets are not compared at once: leave some out.</source>
            <translation>Mehr als 50 Arten von Bögen werden nicht auf einmal verglichen: Lassen Sie einige weg.</translation>
        </message>
        <message>
            <source>Sheet %1 must have sides above 0 and up to 1 km: change its size.</source>
            <translation>Bogen %1 muss Seiten über 0 und bis zu 1 km haben: Ändern Sie seine Größe.</translation>
        </message>
        <message>
            <source>Price and number of sheet %1 must be 0 or more: change them.</source>
            <translation>Preis und Anzahl von Bogen %1 müssen 0 oder mehr sein: Ändern Sie sie.</translation>
        </message>
        <message>
            <source>No sheet has anything left inside its margin, or none can be had: change margin or sheets.</source>
            <translation>Kein Bogen hat innerhalb seines Randes etwas übrig, oder es ist keiner zu haben: Ändern Sie den Rand oder die Bögen.</translation>
        </message>
        <message>
            <source>The sizes are larger than the program works with: change them.</source>
            <translation>Die Größen übersteigen, was das Programm verarbeiten kann: Ändern Sie sie.</translation>
        </message>
        <message>
            <source>The roll has no width left inside its margin: change one of them.</source>
            <translation>Die Rolle hat innerhalb ihres Randes keine Breite übrig: Ändern Sie eines von beiden.</translation>
        </message>
        <message>
            <source>Piece %1 is wider than the roll, whichever way round: take a wider roll or a smaller margin.</source>
            <translation>Stück %1 ist breiter als die Rolle, wie herum auch immer: Nehmen Sie eine breitere Rolle oder einen kleineren Rand.</translation>
        </message>
        <message>
            <source>The pieces take more than 1 km of roll: plan them in parts.</source>
            <translation>Die Stücke brauchen mehr als 1 km Rolle: Planen Sie sie in Teilen.</translation>
        </message>
        <message>
            <source>More than %1 pieces of %2 would fit the sheet; check the unit the piece was entered in.</source>
            <translation>Mehr als %1 Stück von %2 würden auf den Bogen passen; prüfen Sie die Einheit, in der das Stück eingegeben wurde.</translation>
        </message>
        <message>
            <source>The roll width must be more than zero; enter its size.</source>
            <translation>Die Rollenbreite muss größer als null sein; geben Sie ihr Maß ein.</translation>
        </message>
        <message>
            <source>The roll width is longer than 1 km; check the unit it was entered in.</source>
            <translation>Die Rollenbreite ist größer als 1 km; prüfen Sie die Einheit der Eingabe.</translation>
        </message>
        <message>
            <source>The sheet width must be more than zero; enter its size.</source>
            <translation>Die Bogenbreite muss größer als null sein; geben Sie ihr Maß ein.</translation>
        </message>
        <message>
            <source>The sheet width is longer than 1 km; check the unit it was entered in.</source>
            <translation>Die Bogenbreite ist größer als 1 km; prüfen Sie die Einheit der Eingabe.</translation>
        </message>
        <message>
            <source>The sheet height must be more than zero; enter its size.</source>
            <translation>Die Bogenhöhe muss größer als null sein; geben Sie ihr Maß ein.</translation>
        </message>
        <message>
            <source>The sheet height is longer than 1 km; check the unit it was entered in.</source>
            <translation>Die Bogenhöhe ist größer als 1 km; prüfen Sie die Einheit der Eingabe.</translation>
        </message>
        <message>
            <source>The piece width must be more than zero; enter its size.</source>
            <translation>Die Stückbreite muss größer als null sein; geben Sie ihr Maß ein.</translation>
        </message>
        <message>
            <source>The piece width is longer than 1 km; check the unit it was entered in.</source>
            <translation>Die Stückbreite ist größer als 1 km; prüfen Sie die Einheit der Eingabe.</translation>
        </message>
        <message>
            <source>The piece height must be more than zero; enter its size.</source>
            <translation>Die Stückhöhe muss größer als null sein; geben Sie ihr Maß ein.</translation>
        </message>
        <message>
            <source>The piece height is longer than 1 km; check the unit it was entered in.</source>
            <translation>Die Stückhöhe ist größer als 1 km; prüfen Sie die Einheit der Eingabe.</translation>
        </message>
        <message>
            <source>The margin cannot be less than zero; enter 0 for none.</source>
            <translation>Der Rand kann nicht kleiner als null sein; geben Sie 0 für keinen ein.</translation>
        </message>
        <message>
            <source>The margin is longer than 1 km; check the unit it was entered in.</source>
            <translation>Der Rand ist größer als 1 km; prüfen Sie die Einheit der Eingabe.</translation>
        </message>
        <message>
            <source>The gap cannot be less than zero; enter 0 for none.</source>
            <translation>Der Abstand kann nicht kleiner als null sein; geben Sie 0 für keinen ein.</translation>
        </message>
        <message>
            <source>The gap is longer than 1 km; check the unit it was entered in.</source>
            <translation>Der Abstand ist größer als 1 km; prüfen Sie die Einheit der Eingabe.</translation>
        </message>
        <message>
            <source>A margin of %1 all round leaves nothing of a roll of %2; make the margin smaller.</source>
            <translation>Ein Rand von %1 ringsum lässt von einer Rolle mit %2 nichts übrig; machen Sie den Rand kleiner.</translation>
        </message>
        <message>
            <source>A margin of %1 all round leaves nothing of a sheet of %2; make the margin smaller.</source>
            <translation>Ein Rand von %1 ringsum lässt von einem Bogen mit %2 nichts übrig; machen Sie den Rand kleiner.</translation>
        </message>
        <message>
            <source>A piece of %1 does not fit the usable width of the roll, %2, either way round; make the piece smaller or choose a larger roll.</source>
            <translation>Ein Stück von %1 passt nicht in die nutzbare Breite der Rolle, %2, wie herum auch immer; machen Sie das Stück kleiner oder wählen Sie eine größere Rolle.</translation>
        </message>
        <message>
            <source>A piece of %1 does not fit the usable width of the roll, %2, the way the material runs; make the piece smaller or choose a larger roll.</source>
            <translation>Ein Stück von %1 passt nicht in die nutzbare Breite der Rolle, %2, in Laufrichtung des Materials; machen Sie das Stück kleiner oder wählen Sie eine größere Rolle.</translation>
        </message>
        <message>
            <source>A piece of %1 does not fit the usable part of the sheet, %2, either way round; make the piece smaller or choose a larger sheet.</source>
            <translation>Ein Stück von %1 passt nicht auf den nutzbaren Teil des Bogens, %2, wie herum auch immer; machen Sie das Stück kleiner oder wählen Sie einen größeren Bogen.</translation>
        </message>
        <message>
            <source>A piece of %1 does not fit the usable part of the sheet, %2, the way the material runs; make the piece smaller or choose a larger sheet.</source>
            <translation>Ein Stück von %1 passt nicht auf den nutzbaren Teil des Bogens, %2, in Laufrichtung des Materials; machen Sie das Stück kleiner oder wählen Sie einen größeren Bogen.</translation>
        </message>
    </context>
    <context>
        <name>Names</name>
        <message>
            <source>stone</source>
            <translation>Stein</translation>
        </message>
        <message>
            <source>tape</source>
            <translation>Folie</translation>
        </message>
        <message>
            <source>template</source>
            <translation>Schablone</translation>
        </message>
        <message>
            <source>backing</source>
            <translation>Träger</translation>
        </message>
        <message>
            <source>blank</source>
            <translation>Rohling</translation>
        </message>
        <message>
            <source>packing</source>
            <translation>Verpackung</translation>
        </message>
        <message>
            <source>art</source>
            <translation>Grafik</translation>
        </message>
        <message>
            <source>cut</source>
            <translation>Schneiden</translation>
        </message>
        <message>
            <source>weed</source>
            <translation>Entgittern</translation>
        </message>
        <message>
            <source>set up</source>
            <translation>Rüsten</translation>
        </message>
        <message>
            <source>brush</source>
            <translation>Einbürsten</translation>
        </message>
        <message>
            <source>lift</source>
            <translation>Abheben</translation>
        </message>
        <message>
            <source>press</source>
            <translation>Pressen</translation>
        </message>
        <message>
            <source>trim</source>
            <translation>Beschneiden</translation>
        </message>
        <message>
            <source>pack</source>
            <translation>Verpacken</translation>
        </message>
        <message>
            <source>Crystal</source>
            <translation>Kristall</translation>
        </message>
        <message>
            <source>Pearl</source>
            <translation>Perle</translation>
        </message>
        <message>
            <source>Silver</source>
            <translation>Silber</translation>
        </message>
        <message>
            <source>Black diamond</source>
            <translation>Schwarzer Diamant</translation>
        </message>
        <message>
            <source>Hematite</source>
            <translation>Hämatit</translation>
        </message>
        <message>
            <source>Jet</source>
            <translation>Jet</translation>
        </message>
        <message>
            <source>Rose</source>
            <translation>Rosa</translation>
        </message>
        <message>
            <source>Light rose</source>
            <translation>Hellrosa</translation>
        </message>
        <message>
            <source>Fuchsia</source>
            <translation>Fuchsia</translation>
        </message>
        <message>
            <source>Coral</source>
            <translation>Koralle</translation>
        </message>
        <message>
            <source>Red</source>
            <translation>Rot</translation>
        </message>
        <message>
            <source>Siam</source>
            <translation>Siam</translation>
        </message>
        <message>
            <source>Orange</source>
            <translation>Orange</translation>
        </message>
        <message>
            <source>Amber</source>
            <translation>Bernstein</translation>
        </message>
        <message>
            <source>Topaz</source>
            <translation>Topas</translation>
        </message>
        <message>
            <source>Citrine</source>
            <translation>Citrin</translation>
        </message>
        <message>
            <source>Peridot</source>
            <translation>Peridot</translation>
        </message>
        <message>
            <source>Emerald</source>
            <translation>Smaragd</translation>
        </message>
        <message>
            <source>Turquoise</source>
            <translation>Türkis</translation>
        </message>
        <message>
            <source>Aquamarine</source>
            <translation>Aquamarin</translation>
        </message>
        <message>
            <source>Light sapphire</source>
            <translation>Heller Saphir</translation>
        </message>
        <message>
            <source>Sapphire</source>
            <translation>Saphir</translation>
        </message>
        <message>
            <source>Lilac</source>
            <translation>Flieder</translation>
        </message>
        <message>
            <source>Amethyst</source>
            <translation>Amethyst</translation>
        </message>
        <message>
            <source>Brown</source>
            <translation>Braun</translation>
        </message>
        <message>
            <source>Untitled</source>
            <translation>Ohne Titel</translation>
        </message>
        <message>
            <source>%1 and %2 more</source>
            <translation>%1 und %2 weitere</translation>
        </message>
    </context>
    <context>
        <name>Needs</name>
        <message>
            <source>The platen of the press has no size; give its width and depth in Shop.</source>
            <translation>Die Pressplatte der Presse hat keine Größe; geben Sie Breite und Tiefe unter „Betrieb“ an.</translation>
        </message>
        <message>
            <source>The %1 of %2 is no longer among the supplies; choose another.</source>
            <translation>Bei %2: %1 ist nicht mehr im Material; wählen Sie neu.</translation>
        </message>
        <message>
            <source>%1 cannot be the %2 of %3: it is %4; choose another.</source>
            <translation>%1 kann nicht %2 von %3 sein: Die Art ist %4; wählen Sie etwas anderes.</translation>
        </message>
        <message>
            <source>%1 has no price; add a pack with a price to it in Supplies.</source>
            <translation>%1 hat keinen Preis; fügen Sie unter „Material“ eine Packung mit Preis hinzu.</translation>
        </message>
        <message>
            <source>%1 names %2 twice; put both counts in one row.</source>
            <translation>%1 nennt %2 zweimal; fassen Sie beide Zahlen in einer Zeile zusammen.</translation>
        </message>
        <message>
            <source>%1 of %2 is not from 0 to %3, the pieces of the line; correct the sizes.</source>
            <translation>%1 von %2 liegt nicht zwischen 0 und %3, der Stückzahl der Position; berichtigen Sie die Größen.</translation>
        </message>
        <message>
            <source>%1 is not a size of what %2 goes on; choose one of its sizes.</source>
            <translation>%1 ist keine Größe von dem, worauf %2 kommt; wählen Sie eine seiner Größen.</translation>
        </message>
        <message>
            <source>The sizes of %1 add up to %2, more than its pieces, %3; correct one of them.</source>
            <translation>Die Größen von %1 ergeben zusammen %2, mehr als die Stückzahl, %3; berichtigen Sie eines von beiden.</translation>
        </message>
        <message>
            <source>%2 has %1 pieces; give a number from 1 to 1,000,000.</source>
            <translation>%2 hat %1 Stück; geben Sie eine Zahl von 1 bis 1 000 000 ein.</translation>
        </message>
        <message>
            <source>%1 needs a width and a height above nothing and up to a kilometre.</source>
            <translation>%1 braucht eine Breite und eine Höhe über null und bis zu einem Kilometer.</translation>
        </message>
        <message>
            <source>The price asked for %1 is below nothing; type 0 or more.</source>
            <translation>Der verlangte Preis für %1 liegt unter null; tippen Sie 0 oder mehr.</translation>
        </message>
        <message>
            <source>The templates of %1 cannot be spread over %2 pieces; plan for 1 or more.</source>
            <translation>Die Schablonen von %1 lassen sich nicht auf %2 Stück umlegen; planen Sie 1 oder mehr.</translation>
        </message>
        <message>
            <source>%1 has designs at more than %2 places; leave some out.</source>
            <translation>%1 hat Motive an mehr als %2 Stellen; lassen Sie einige weg.</translation>
        </message>
        <message>
            <source>%1 has no price; type one, or say what is sold.</source>
            <translation>%1 hat keinen Preis; tippen Sie einen oder sagen Sie, was verkauft wird.</translation>
        </message>
        <message>
            <source>%1 has no stones; add a colour and how many a piece takes.</source>
            <translation>%1 hat keine Steine; fügen Sie eine Farbe hinzu und wie viele ein Stück braucht.</translation>
        </message>
        <message>
            <source>%1 has more than %2 colours; leave some out.</source>
            <translation>%1 hat mehr als %2 Farben; lassen Sie einige weg.</translation>
        </message>
        <message>
            <source>%1 takes %2 of %3 a piece; give a number from 1 to 1,000,000.</source>
            <translation>%1 braucht %2 von %3 je Stück; geben Sie eine Zahl von 1 bis 1 000 000 ein.</translation>
        </message>
        <message>
            <source>The loss of %1 must be from 0 to below 100 %; correct it in Supplies.</source>
            <translation>Der Verlust von %1 muss von 0 bis unter 100 % liegen; berichtigen Sie ihn unter „Material“.</translation>
        </message>
        <message>
            <source>Say what %1 goes on: a backing, a blank, or the customer's own garment.</source>
            <translation>Sagen Sie, worauf %1 kommt: einen Träger, einen Rohling oder das eigene Textil des Kunden.</translation>
        </message>
        <message>
            <source>The bench minutes of this order are more than can be reckoned with; make it smaller.</source>
            <translation>Diese Bestellung hat mehr Werkbankminuten, als sich rechnen lassen; machen Sie sie kleiner.</translation>
        </message>
        <message>
            <source>This line</source>
            <translation>Diese Position</translation>
        </message>
        <message>
            <source>base</source>
            <translation>Untergrund</translation>
        </message>
        <message>
            <source>tape</source>
            <translation>Folie</translation>
        </message>
        <message>
            <source>template</source>
            <translation>Schablone</translation>
        </message>
        <message>
            <source>packing</source>
            <translation>Verpackung</translation>
        </message>
        <message>
            <source>stone in row %1</source>
            <translation>Stein in Zeile %1</translation>
        </message>
        <message>
            <source>No spares: only %1 of %2 is expected to be spoiled.</source>
            <translation>Keine Reserve: Nur %1 von %2 wird voraussichtlich Ausschuss.</translation>
        </message>
        <message>
            <source>Spares: %1, as %2 of %3 are expected to be spoiled.</source>
            <translation>Reserve: %1, da voraussichtlich %2 von %3 Ausschuss werden.</translation>
        </message>
        <message>
            <source>Spares: %1 in %4, as %2 of %3 are expected to be spoiled.</source>
            <translation>Reserve: %1 in %4, da voraussichtlich %2 von %3 Ausschuss werden.</translation>
        </message>
        <message>
            <source>Spares: %1 with another line on the same, as %2 of %3 are expected to be spoiled.</source>
            <translation>Reserve: %1 zusammen mit einer anderen Position auf demselben, da voraussichtlich %2 von %3 Ausschuss werden.</translation>
        </message>
    </context>
    <context>
        <name>Owner</name>
        <message>
            <source>Below what it costs with your own time, wear and overhead.</source>
            <translation>Unter den Kosten mit eigener Zeit, Verschleiß und Gemeinkosten.</translation>
        </message>
        <message>
            <source>Below the floor: it does not cover the %1 a piece that is paid out.</source>
            <translation>Unter der Untergrenze: Es deckt nicht die %1 je Stück, die ausgegeben werden.</translation>
        </message>
        <message>
            <source>The whole order is below what it costs with your own time, wear and overhead.</source>
            <translation>Die ganze Bestellung liegt unter den Kosten mit eigener Zeit, Verschleiß und Gemeinkosten.</translation>
        </message>
        <message>
            <source>The whole order is below the floor: it does not cover the %1 that is paid out.</source>
            <translation>Die ganze Bestellung liegt unter der Untergrenze: Sie deckt nicht die %1, die ausgegeben werden.</translation>
        </message>
        <message>
            <source>Of the price the card takes %1 a piece, %2 on the line.</source>
            <translation>Vom Preis nimmt die Karte %1 je Stück, %2 auf die Position.</translation>
        </message>
        <message>
            <source>Of the line’s cost %1 is tax on what is given away.</source>
            <translation>Von den Kosten der Position sind %1 Steuer auf Verschenktes.</translation>
        </message>
        <message>
            <source>%1 cost less than %2, %3 instead of %4: offer %1.</source>
            <translation>%1 kosten weniger als %2, %3 statt %4: Bieten Sie %1 an.</translation>
        </message>
        <message>
            <source>%1 – %2</source>
            <comment>a line of an order and what is said of it</comment>
            <translation>%1 – %2</translation>
        </message>
    </context>
    <context>
        <name>PageFrame</name>
        <message>
            <source>customer removed</source>
            <translation>Kunde gelöscht</translation>
        </message>
        <message>
            <source>Date</source>
            <translation>Datum</translation>
        </message>
    </context>
    <context>
        <name>Payments</name>
        <message>
            <source>Cash</source>
            <translation>Bar</translation>
        </message>
        <message>
            <source>Card</source>
            <translation>Karte</translation>
        </message>
        <message>
            <source>Transfer</source>
            <translation>Überweisung</translation>
        </message>
        <message>
            <source>Other</source>
            <comment>way to pay</comment>
            <translation>Sonstiges</translation>
        </message>
        <message>
            <source>taken back</source>
            <translation>storniert</translation>
        </message>
        <message>
            <source>change taken back</source>
            <translation>Rückgeld storniert</translation>
        </message>
        <message>
            <source>change</source>
            <translation>Rückgeld</translation>
        </message>
        <message>
            <source>rounding taken back</source>
            <translation>Rundung storniert</translation>
        </message>
        <message>
            <source>rounded to the coin</source>
            <translation>auf die Münze gerundet</translation>
        </message>
    </context>
    <context>
        <name>PlanWords</name>
        <message>
            <source>%1, turned</source>
            <translation>%1, gedreht</translation>
        </message>
        <message>
            <source>%1, every %2</source>
            <translation>%1, alle %2</translation>
        </message>
        <message>
            <source>%1, %2: %3 from the left, %4 from the top</source>
            <translation>%1, %2: %3 von links, %4 von oben</translation>
        </message>
        <message>
            <source>; across %1</source>
            <translation>; waagerecht %1</translation>
        </message>
        <message>
            <source>; down %1</source>
            <translation>; senkrecht %1</translation>
        </message>
        <message>
            <source>Cutting plan</source>
            <translation>Schnittplan</translation>
        </message>
        <message>
            <source>Drawn to scale. A filled corner is a piece turned a quarter; dashes are what is left.</source>
            <translation>Maßstäblich gezeichnet. Eine gefüllte Ecke ist ein um ein Viertel gedrehtes Stück; gestrichelt ist, was übrig bleibt.</translation>
        </message>
        <message>
            <source>%1, continued</source>
            <translation>%1, Fortsetzung</translation>
        </message>
        <message>
            <source>%1 left</source>
            <translation>%1 übrig</translation>
        </message>
        <message>
            <source>Cutting plan, %1</source>
            <extracomment>The name of a document.</extracomment>
            <translation>Schnittplan, %1</translation>
        </message>
        <message>
            <source>roll %1 wide</source>
            <translation>Rolle, %1 breit</translation>
        </message>
        <message>
            <source>%1 off the roll, shortest possible</source>
            <translation>%1 von der Rolle, kürzer geht es nicht</translation>
        </message>
        <message>
            <source>%1 off the roll; no plan needs less than %2</source>
            <translation>%1 von der Rolle; kein Plan braucht weniger als %2</translation>
        </message>
        <message>
            <source>%1. That is more than one roll of %2: plan it in parts.</source>
            <translation>%1. Das ist mehr als eine Rolle mit %2: Planen Sie in Teilen.</translation>
        </message>
        <message numerus="yes">
            <source>%1 sheets, fewest possible</source>
            <translation>
                <numerusform>%1 Bogen, weniger geht nicht</numerusform>
                <numerusform>%1 Bögen, weniger geht nicht</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%1 sheets; no plan needs fewer than %2</source>
            <translation>
                <numerusform>%1 Bogen; kein Plan braucht weniger als %2</numerusform>
                <numerusform>%1 Bögen; kein Plan braucht weniger als %2</numerusform>
            </translation>
        </message>
        <message>
            <source>nothing left beside the pieces</source>
            <translation>neben den Stücken bleibt nichts</translation>
        </message>
        <message>
            <source>nothing left of the last sheet</source>
            <translation>vom letzten Bogen bleibt nichts</translation>
        </message>
        <message>
            <source>%1 left beside the pieces</source>
            <translation>%1 bleiben neben den Stücken</translation>
        </message>
        <message>
            <source>%1 left of the last sheet</source>
            <translation>%1 bleiben vom letzten Bogen</translation>
        </message>
        <message>
            <source>Roll</source>
            <translation>Rolle</translation>
        </message>
        <message>
            <source>%1 to %2</source>
            <translation>%1 bis %2</translation>
        </message>
        <message>
            <source>Sheet %1</source>
            <translation>Bogen %1</translation>
        </message>
        <message>
            <source>Sheets %1, cut alike</source>
            <translation>Bögen %1, gleich geschnitten</translation>
        </message>
    </context>
    <context>
        <name>Planning</name>
        <message>
            <source>A material of %1 is no longer in the book; choose another one.</source>
            <translation>Ein Material von %1 steht nicht mehr im Buch; wählen Sie ein anderes.</translation>
        </message>
        <message>
            <source>%1 needs a number of pieces, a width and a height before it can be laid on a sheet.</source>
            <translation>%1 braucht eine Stückzahl, eine Breite und eine Höhe, bevor es auf einen Bogen gelegt werden kann.</translation>
        </message>
        <message>
            <source>A line</source>
            <translation>Eine Position</translation>
        </message>
    </context>
    <context>
        <name>PriceList</name>
        <message>
            <source>pack of %1</source>
            <translation>Packung mit %1</translation>
        </message>
        <message>
            <source>“%1” holds no rows below its headings; choose another file.</source>
            <translation>„%1“ enthält keine Zeilen unter den Überschriften; wählen Sie eine andere Datei.</translation>
        </message>
    </context>
    <context>
        <name>PriceListDialog</name>
        <message numerus="yes">
            <source>&amp;Make the %n missing stones</source>
            <translation>
                <numerusform>%n fehlenden Stein a&amp;nlegen</numerusform>
                <numerusform>%n fehlende Steine a&amp;nlegen</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>PriceText</name>
        <message>
            <source>from %1 packs %2</source>
            <translation>ab %1 Packungen %2</translation>
        </message>
    </context>
    <context>
        <name>Pricing</name>
        <message>
            <source>There is no tax rate “%1” in the shop any more; choose another for “%2”.</source>
            <translation>Einen Steuersatz „%1“ gibt es im Betrieb nicht mehr; wählen Sie für „%2“ einen anderen.</translation>
        </message>
        <message>
            <source>The tax rate must be from 0 to 100 %; correct it in Shop.</source>
            <translation>Der Steuersatz muss von 0 bis 100 % liegen; berichtigen Sie ihn unter „Betrieb“.</translation>
        </message>
        <message>
            <source>The deposit must be from 0 to 100 %; correct it in Shop.</source>
            <translation>Die Anzahlung muss von 0 bis 100 % liegen; berichtigen Sie sie unter „Betrieb“.</translation>
        </message>
        <message>
            <source>The card fee takes the whole of a price with its tax; correct it in Shop.</source>
            <translation>Die Kartengebühr nimmt den ganzen Preis samt Steuer; berichtigen Sie sie unter „Betrieb“.</translation>
        </message>
        <message numerus="yes">
            <source>The mark-up from %n pieces must be from -100 to 10,000 %; correct it in Shop.</source>
            <translation>
                <numerusform>Der Aufschlag ab %n Stück muss von -100 bis 10 000 % liegen; berichtigen Sie ihn unter „Betrieb“.</numerusform>
                <numerusform>Der Aufschlag ab %n Stück muss von -100 bis 10 000 % liegen; berichtigen Sie ihn unter „Betrieb“.</numerusform>
            </translation>
        </message>
        <message>
            <source>A price ending is a number from 0 to 99; correct it in Shop.</source>
            <translation>Eine Preisendung ist eine Zahl von 0 bis 99; berichtigen Sie sie unter „Betrieb“.</translation>
        </message>
        <message>
            <source>A discount is from 0 to 100 %; type another.</source>
            <translation>Ein Rabatt liegt zwischen 0 und 100 %; tippen Sie einen anderen.</translation>
        </message>
        <message>
            <source>The discount is more than the order comes to, or below nothing; type another.</source>
            <translation>Der Rabatt ist höher als die Bestellung oder liegt unter null; tippen Sie einen anderen.</translation>
        </message>
        <message>
            <source>%1 comes to more than 1,000,000,000; check its pieces and prices.</source>
            <translation>%1 ergibt mehr als 1 000 000 000; prüfen Sie Stückzahl und Preise.</translation>
        </message>
        <message>
            <source>A payment of nothing is none; type how much it is.</source>
            <translation>Eine Zahlung von null ist keine; tippen Sie, wie viel es ist.</translation>
        </message>
        <message>
            <source>The day of the payment, %1, is still to come; type today’s or an earlier one.</source>
            <translation>Der Tag der Zahlung, %1, kommt erst noch; tippen Sie den heutigen oder einen früheren.</translation>
        </message>
        <message>
            <source>%1 cannot be counted out, the smallest there is being %2; type a multiple of it.</source>
            <translation>%1 lässt sich nicht abzählen, das Kleinste ist %2; tippen Sie ein Vielfaches davon.</translation>
        </message>
        <message>
            <source>%1 is more than the %2 that is left to pay, and change is given in cash alone; take what is left, or keep the rest as credit.</source>
            <translation>%1 ist mehr als die %2, die noch zu zahlen sind, und Rückgeld gibt es nur bar; nehmen Sie, was offen ist, oder behalten Sie den Rest als Guthaben.</translation>
        </message>
        <message>
            <source>%1 is more than the %2 that is left to pay; take what is left and give change, or keep it as the customer’s credit.</source>
            <translation>%1 ist mehr als die %2, die noch zu zahlen sind; nehmen Sie, was offen ist, und geben Sie Rückgeld, oder behalten Sie es als Guthaben des Kunden.</translation>
        </message>
        <message>
            <source>Nothing is left to pay; keep the %1 as the customer’s credit, or give them back.</source>
            <translation>Es ist nichts mehr zu zahlen; behalten Sie die %1 als Guthaben des Kunden oder geben Sie sie zurück.</translation>
        </message>
        <message>
            <source>%1 is more than the %2 that was paid; give back less.</source>
            <translation>%1 ist mehr als die %2, die gezahlt wurden; erstatten Sie weniger.</translation>
        </message>
        <message>
            <source>A credit note of nothing is no credit note; say how much it takes back.</source>
            <translation>Eine Gutschrift von null ist keine; sagen Sie, wie viel sie aufhebt.</translation>
        </message>
        <message>
            <source>%1 is not a whole number of the smallest coin; take back a whole one.</source>
            <translation>%1 ist kein Vielfaches der kleinsten Münze; heben Sie ein Vielfaches davon auf.</translation>
        </message>
        <message>
            <source>%1 is more than the %2 that is left of the invoice; take back less.</source>
            <translation>%1 ist mehr als die %2, die von der Rechnung übrig sind; heben Sie weniger auf.</translation>
        </message>
        <message>
            <source>Nothing is ordered yet; type a design or add a one-off.</source>
            <translation>Noch ist nichts bestellt; tippen Sie ein Motiv oder fügen Sie ein Einzelstück hinzu.</translation>
        </message>
        <message>
            <source>The day it is wanted, %1, lies before the day of the quote, %2; type a later one.</source>
            <translation>Der Tag, bis zu dem es gewünscht ist, %1, liegt vor dem Tag des Angebots, %2; tippen Sie einen späteren.</translation>
        </message>
        <message>
            <source>The order comes to more than 1,000,000,000; check its pieces and prices.</source>
            <translation>Die Bestellung ergibt mehr als 1 000 000 000; prüfen Sie Stückzahlen und Preise.</translation>
        </message>
        <message>
            <source>%1</source>
            <translation>%1</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>Exemption certificate</source>
            <translation>Befreiungsnachweis</translation>
        </message>
        <message>
            <source>What the program reckons otherwise</source>
            <translation>Was das Programm anders rechnet</translation>
        </message>
        <message>
            <source>none</source>
            <translation>keine</translation>
        </message>
        <message>
            <source>Wanted by a day</source>
            <translation>Wunschtermin</translation>
        </message>
        <message>
            <source>Day of the quote</source>
            <translation>Tag des Angebots</translation>
        </message>
        <message>
            <source>It was at no charge</source>
            <translation>Es war kostenlos</translation>
        </message>
        <message>
            <source>%1 was at no charge</source>
            <translation>%1 war kostenlos</translation>
        </message>
        <message>
            <source>Typed price of %1</source>
            <translation>Getippter Preis von %1</translation>
        </message>
        <message>
            <source>Templates of %1 are on the wall</source>
            <translation>Schablonen von %1 hängen an der Wand</translation>
        </message>
        <message>
            <source>brought by the customer</source>
            <translation>vom Kunden gebracht</translation>
        </message>
        <message>
            <source>Rush surcharge</source>
            <translation>Eilzuschlag</translation>
        </message>
        <message>
            <source>Discount</source>
            <translation>Rabatt</translation>
        </message>
        <message>
            <source>Up to the smallest order</source>
            <translation>Bis zum Mindestbetrag</translation>
        </message>
        <message>
            <source>Tax</source>
            <translation>Steuer</translation>
        </message>
        <message>
            <source>No tape is chosen</source>
            <translation>Es ist keine Folie gewählt</translation>
        </message>
        <message>
            <source>No template sheet is chosen</source>
            <translation>Es ist kein Schablonenbogen gewählt</translation>
        </message>
        <message>
            <source>Labour is %1 an hour</source>
            <translation>Der Lohn ist %1 je Stunde</translation>
        </message>
        <message>
            <source>Overhead is %1 a month</source>
            <translation>Die Gemeinkosten sind %1 im Monat</translation>
        </message>
        <message>
            <source>No step at the bench takes any time</source>
            <translation>Kein Schritt an der Werkbank braucht Zeit</translation>
        </message>
        <message>
            <source>Running the press is %1 an hour</source>
            <translation>Der Betrieb der Presse kostet %1 je Stunde</translation>
        </message>
        <message>
            <source>The press loses %1 of its worth</source>
            <translation>Die Presse verliert %1 an Wert</translation>
        </message>
        <message>
            <source>The cutter loses %1 of its worth</source>
            <translation>Der Plotter verliert %1 an Wert</translation>
        </message>
        <message>
            <source>%1 is %2</source>
            <translation>%1 kostet %2</translation>
        </message>
    </context>
    <context>
        <name>Promise</name>
        <message>
            <source>Can be promised for %1.</source>
            <translation>Kann für %1 zugesagt werden.</translation>
        </message>
        <message>
            <source>Holds, ready by %1.</source>
            <translation>Hält, fertig bis %1.</translation>
        </message>
        <message>
            <source>Holds if it is put in for %1, before others.</source>
            <translation>Hält, wenn es für %1 eingeschoben wird, vor anderen.</translation>
        </message>
        <message>
            <source>Not by then; %1 is the first day that holds.</source>
            <translation>Bis dahin nicht; %1 ist der erste Tag, der hält.</translation>
        </message>
        <message>
            <source>%1 is the first day that holds; sooner, %2 would be later.</source>
            <translation>%1 ist der erste Tag, der hält; früher würde %2 sich verspäten.</translation>
        </message>
        <message numerus="yes">
            <source>%1 is the first day that holds; sooner, %2 and %n more would be later.</source>
            <translation>
                <numerusform>%1 ist der erste Tag, der hält; früher würden %2 und %n weiterer sich verspäten.</numerusform>
                <numerusform>%1 ist der erste Tag, der hält; früher würden %2 und %n weitere sich verspäten.</numerusform>
            </translation>
        </message>
        <message>
            <source>%1 Not all of it is on the shelf, and when the rest comes is not known.</source>
            <translation>%1 Nicht alles davon ist auf Lager, und wann der Rest kommt, ist nicht bekannt.</translation>
        </message>
    </context>
    <context>
        <name>QObject</name>
        <message>
            <source>%1, %2</source>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>Job books (*.jobbook)</source>
            <translation>Auftragsbücher (*.jobbook)</translation>
        </message>
    </context>
    <context>
        <name>Scheduling</name>
        <message>
            <source>No day can be promised: no weekday has time at the bench yet; type it in Shop, under Bench hours.</source>
            <translation>Es lässt sich kein Tag zusagen: Noch hat kein Wochentag Zeit an der Werkbank; tippen Sie sie unter „Betrieb“, „Werkbankstunden“ ein.</translation>
        </message>
        <message>
            <source>The bench does not get to it within %1 years; look at the closed days and the hours in Shop.</source>
            <translation>Die Werkbank kommt innerhalb von %1 Jahren nicht dazu; sehen Sie unter „Betrieb“ nach den Schließtagen und Stunden.</translation>
        </message>
        <message>
            <source>No day can be promised, since the bench minutes of %1 are not known (%2); mend that job first.</source>
            <translation>Es lässt sich kein Tag zusagen, da die Werkbankminuten von %1 nicht bekannt sind (%2); bringen Sie zuerst diesen Auftrag in Ordnung.</translation>
        </message>
    </context>
    <context>
        <name>SheetWords</name>
        <message>
            <source>en</source>
            <extracomment>The BCP 47 tag of the language that this file translates into.</extracomment>
            <translation>de</translation>
        </message>
        <message>
            <source>For</source>
            <translation>Für</translation>
        </message>
        <message>
            <source>for %1</source>
            <translation>für %1</translation>
        </message>
        <message>
            <source>Pieces</source>
            <translation>Stück</translation>
        </message>
        <message>
            <source>What</source>
            <translation>Bezeichnung</translation>
        </message>
        <message>
            <source>Each</source>
            <translation>Einzelpreis</translation>
        </message>
        <message>
            <source>Amount</source>
            <translation>Betrag</translation>
        </message>
        <message>
            <source>Carried forward</source>
            <translation>Übertrag</translation>
        </message>
        <message>
            <source>Brought forward</source>
            <translation>Übertrag</translation>
        </message>
        <message>
            <source>Together</source>
            <translation>Zusammen</translation>
        </message>
        <message>
            <source>To pay</source>
            <translation>Zu zahlen</translation>
        </message>
        <message>
            <source>I take this one</source>
            <translation>Diese nehme ich</translation>
        </message>
        <message>
            <source>Deposit to start</source>
            <translation>Anzahlung zu Beginn</translation>
        </message>
        <message>
            <source>On collection</source>
            <translation>Bei Abholung</translation>
        </message>
        <message>
            <source>More or fewer</source>
            <translation>Mehr oder weniger</translation>
        </message>
        <message>
            <source>Terms</source>
            <translation>Bedingungen</translation>
        </message>
        <message>
            <source>Care and safety</source>
            <translation>Pflege und Sicherheit</translation>
        </message>
        <message>
            <source>Page %1 of %2</source>
            <translation>Seite %1 von %2</translation>
        </message>
        <message>
            <source>Draft</source>
            <translation>Entwurf</translation>
        </message>
        <message>
            <source>Quote %1</source>
            <translation>Angebot %1</translation>
        </message>
        <message>
            <source>Demo: invented names and prices</source>
            <translation>Beispiel: erfundene Namen und Preise</translation>
        </message>
        <message>
            <source>Quoted</source>
            <translation>Angeboten</translation>
        </message>
        <message>
            <source>Valid until</source>
            <translation>Gültig bis</translation>
        </message>
        <message>
            <source>Wanted by</source>
            <translation>Gewünscht bis</translation>
        </message>
        <message>
            <source>Choice %1</source>
            <translation>Variante %1</translation>
        </message>
        <message>
            <source>%1 choices: take one of them, the others fall away.</source>
            <translation>%1 Varianten: Nehmen Sie eine davon, die anderen entfallen.</translation>
        </message>
        <message>
            <source>one piece</source>
            <translation>ein Stück</translation>
        </message>
        <message>
            <source>%1 pieces</source>
            <translation>%1 Stück</translation>
        </message>
        <message>
            <source>on %1</source>
            <extracomment>What a line is made on: "on Tee, black".</extracomment>
            <translation>auf %1</translation>
        </message>
        <message>
            <source>without stones</source>
            <translation>ohne Steine</translation>
        </message>
        <message>
            <source>in one colour</source>
            <translation>in einer Farbe</translation>
        </message>
        <message>
            <source>in two colours</source>
            <translation>in zwei Farben</translation>
        </message>
        <message>
            <source>in %1 colours</source>
            <translation>in %1 Farben</translation>
        </message>
        <message>
            <source>one stone a piece</source>
            <translation>ein Stein je Stück</translation>
        </message>
        <message>
            <source>%1 stones a piece</source>
            <translation>%1 Steine je Stück</translation>
        </message>
        <message>
            <source>On your own garment</source>
            <translation>Auf Ihrem eigenen Textil</translation>
        </message>
        <message>
            <source>Templates on the wall: no set-up charged</source>
            <translation>Schablonen an der Wand: keine Rüstkosten</translation>
        </message>
        <message>
            <source>At no charge</source>
            <translation>Kostenlos</translation>
        </message>
        <message>
            <source>No %1</source>
            <translation>Ohne %1</translation>
        </message>
        <message>
            <source>%1 would cost you less: %2 instead of %3</source>
            <translation>%1 würden Sie weniger kosten: %2 statt %3</translation>
        </message>
        <message>
            <source>%1 at %2, + %3</source>
            <translation>%1 bei %2, + %3</translation>
        </message>
        <message>
            <source>Art and set-up</source>
            <translation>Grafik und Rüstkosten</translation>
        </message>
        <message>
            <source>Rush, wanted by %1 (%2)</source>
            <translation>Eilzuschlag, gewünscht bis %1 (%2)</translation>
        </message>
        <message>
            <source>Discount</source>
            <translation>Rabatt</translation>
        </message>
        <message>
            <source>Discount (%1)</source>
            <translation>Rabatt (%1)</translation>
        </message>
        <message>
            <source>Up to our smallest order, %1</source>
            <translation>Bis zu unserem Mindestbetrag, %1</translation>
        </message>
        <message>
            <source>%1 %2</source>
            <extracomment>A tax and its rate: "Sales tax 8.875 %".</extracomment>
            <translation>%1 %2</translation>
        </message>
        <message>
            <source>%1 %2 on %3</source>
            <extracomment>A tax, its rate and what it is charged on: "Sales tax 8.875 % on 170.40".</extracomment>
            <translation>%1 %2 auf %3</translation>
        </message>
        <message>
            <source>%1, exempt</source>
            <translation>%1, befreit</translation>
        </message>
        <message>
            <source>certificate %1</source>
            <translation>Nachweis %1</translation>
        </message>
        <message>
            <source>certificate %1, %2</source>
            <translation>Nachweis %1, %2</translation>
        </message>
        <message>
            <source>Issued %1</source>
            <translation>Ausgestellt %1</translation>
        </message>
        <message>
            <source>Issued %1, good until %2</source>
            <translation>Ausgestellt %1, gültig bis %2</translation>
        </message>
        <message>
            <source>Charged: no exemption certificate in force is on file</source>
            <translation>Berechnet: Es liegt kein gültiger Befreiungsnachweis vor</translation>
        </message>
        <message>
            <source>Rounded line by line</source>
            <translation>Je Position gerundet</translation>
        </message>
        <message>
            <source>%1 %2 is in the price: %3</source>
            <translation>%1 %2 ist im Preis enthalten: %3</translation>
        </message>
        <message>
            <source>Tax is charged as the shop has confirmed it with its authority or accountant.</source>
            <translation>Die Steuer wird so berechnet, wie der Betrieb es mit Behörde oder Steuerberater geklärt hat.</translation>
        </message>
        <message>
            <source>The lines of this quote can no longer be shown as they were given; its total stands.</source>
            <translation>Die Positionen dieses Angebots lassen sich nicht mehr so zeigen, wie sie abgegeben wurden; die Summe gilt.</translation>
        </message>
        <message>
            <source>Each, before surcharges, set-up, rush, discount and tax</source>
            <translation>Je Stück, vor Zuschlägen, Rüstkosten, Eilzuschlag, Rabatt und Steuer</translation>
        </message>
        <message>
            <source>Each, before surcharges, set-up, rush, discount</source>
            <translation>Je Stück, vor Zuschlägen, Rüstkosten, Eilzuschlag, Rabatt</translation>
        </message>
        <message>
            <source>Each, before surcharges, rush, discount and tax</source>
            <translation>Je Stück, vor Zuschlägen, Eilzuschlag, Rabatt und Steuer</translation>
        </message>
        <message>
            <source>Each, before surcharges, rush, discount</source>
            <translation>Je Stück, vor Zuschlägen, Eilzuschlag, Rabatt</translation>
        </message>
        <message>
            <source>Each, before size surcharges, set-up, rush, discount and tax</source>
            <translation>Je Stück, vor Größenzuschlägen, Rüstkosten, Eilzuschlag, Rabatt und Steuer</translation>
        </message>
        <message>
            <source>Each, before size surcharges, set-up, rush, discount</source>
            <translation>Je Stück, vor Größenzuschlägen, Rüstkosten, Eilzuschlag, Rabatt</translation>
        </message>
        <message>
            <source>Each, before size surcharges, rush, discount and tax</source>
            <translation>Je Stück, vor Größenzuschlägen, Eilzuschlag, Rabatt und Steuer</translation>
        </message>
        <message>
            <source>Each, before size surcharges, rush, discount</source>
            <translation>Je Stück, vor Größenzuschlägen, Eilzuschlag, Rabatt</translation>
        </message>
        <message>
            <source>Each, before set-up, rush, discount and tax</source>
            <translation>Je Stück, vor Rüstkosten, Eilzuschlag, Rabatt und Steuer</translation>
        </message>
        <message>
            <source>Each, before set-up, rush, discount</source>
            <translation>Je Stück, vor Rüstkosten, Eilzuschlag, Rabatt</translation>
        </message>
        <message>
            <source>Each, before rush, discount and tax</source>
            <translation>Je Stück, vor Eilzuschlag, Rabatt und Steuer</translation>
        </message>
        <message>
            <source>Each, before rush, discount</source>
            <translation>Je Stück, vor Eilzuschlag, Rabatt</translation>
        </message>
        <message>
            <source>Proof</source>
            <translation>Ansicht</translation>
        </message>
        <message>
            <source>the stones as they lie, scale %1</source>
            <extracomment>%1 is a scale, "1 : 2".</extracomment>
            <translation>die Steine, wie sie liegen, Maßstab %1</translation>
        </message>
        <message>
            <source>stones a piece</source>
            <translation>Steine je Stück</translation>
        </message>
        <message>
            <source>I agree to the proof</source>
            <translation>Mit der Ansicht einverstanden</translation>
        </message>
        <message>
            <source>Name</source>
            <translation>Name</translation>
        </message>
        <message>
            <source>Day</source>
            <translation>Tag</translation>
        </message>
        <message>
            <source>The picture is of another size than this line has.</source>
            <translation>Das Bild zeigt eine andere Größe, als diese Position hat.</translation>
        </message>
        <message>
            <source>The picture is of other stones or counts than this line has.</source>
            <translation>Das Bild zeigt andere Steine oder Mengen, als diese Position hat.</translation>
        </message>
        <message>
            <source>There is no room for a picture here; ask to see it.</source>
            <translation>Hier ist kein Platz für ein Bild; lassen Sie es sich zeigen.</translation>
        </message>
    </context>
    <context>
        <name>Shelf</name>
        <message>
            <source>%1 on the shelf</source>
            <translation>%1 auf Lager</translation>
        </message>
        <message>
            <source>%1 on the shelf, %2 promised, %3 lacking</source>
            <translation>%1 auf Lager, %2 zugesagt, %3 fehlen</translation>
        </message>
        <message>
            <source>%1 on the shelf, %2 promised, %3 free</source>
            <translation>%1 auf Lager, %2 zugesagt, %3 frei</translation>
        </message>
        <message>
            <source>%1 on the shelf, %2 lacking</source>
            <translation>%1 auf Lager, %2 fehlen</translation>
        </message>
        <message>
            <source>%1 on the shelf, %2 free</source>
            <translation>%1 auf Lager, %2 frei</translation>
        </message>
        <message>
            <source>Nothing was taken off the shelf, for what the job takes is not known: %1</source>
            <translation>Nichts wurde vom Lager genommen, denn was der Auftrag braucht, ist nicht bekannt: %1</translation>
        </message>
        <message>
            <source>The shelf has %1 of “%2” too few; count it, and book what was used besides.</source>
            <translation>Im Lager fehlen %1 von „%2“; zählen Sie nach und buchen Sie, was sonst verbraucht wurde.</translation>
        </message>
        <message>
            <source>The shelf has %1 of “%2” too few; what of it is there when the job is ready is taken then.</source>
            <translation>Im Lager fehlen %1 von „%2“; was davon da ist, wenn der Auftrag fertig ist, wird dann genommen.</translation>
        </message>
        <message>
            <source>For this job %1 of “%2” more were taken than it takes now; what of it is still there, count it in for this job in Supplies.</source>
            <translation>Für diesen Auftrag wurden %1 von „%2“ mehr genommen, als er jetzt braucht; was davon noch da ist, buchen Sie unter „Material“ für diesen Auftrag ein.</translation>
        </message>
        <message>
            <source>%1 of “%2” stay booked for this job; count in for it what is still there.</source>
            <translation>%1 von „%2“ bleiben für diesen Auftrag gebucht; buchen Sie für ihn ein, was noch da ist.</translation>
        </message>
    </context>
    <context>
        <name>ShopFields</name>
        <message>
            <source>Give the currency, three letters such as USD.</source>
            <translation>Geben Sie die Währung an, drei Buchstaben wie USD.</translation>
        </message>
        <message>
            <source>C&amp;urrency</source>
            <translation>Wäh&amp;rung</translation>
        </message>
        <message>
            <source>three letters, such as USD</source>
            <translation>drei Buchstaben, wie USD</translation>
        </message>
    </context>
    <context>
        <name>Stage</name>
        <message>
            <source>Enquiry</source>
            <translation>Anfrage</translation>
        </message>
        <message>
            <source>Quoted</source>
            <translation>Angeboten</translation>
        </message>
        <message>
            <source>Agreed</source>
            <translation>Beauftragt</translation>
        </message>
        <message>
            <source>Making</source>
            <translation>In Arbeit</translation>
        </message>
        <message>
            <source>Ready</source>
            <translation>Fertig</translation>
        </message>
        <message>
            <source>Collected</source>
            <translation>Abgeholt</translation>
        </message>
        <message>
            <source>Let go</source>
            <translation>Entfallen</translation>
        </message>
    </context>
    <context>
        <name>Supply</name>
        <message>
            <source>The share lost of %1 must be 0 or more and below 1: change it.</source>
            <translation>Der Verlustanteil von %1 muss 0 oder mehr und unter 1 sein: Ändern Sie ihn.</translation>
        </message>
        <message>
            <source>Pack %1 gives nothing: say what is in it.</source>
            <translation>Packung %1 ergibt nichts: Sagen Sie, was darin ist.</translation>
        </message>
        <message>
            <source>Pack %1 must give 1 or more of %2: change its count.</source>
            <translation>Packung %1 muss 1 oder mehr von %2 ergeben: Ändern Sie die Anzahl.</translation>
        </message>
        <message>
            <source>Pack %1 has no price: give it one.</source>
            <translation>Packung %1 hat keinen Preis: Geben Sie ihr einen.</translation>
        </message>
        <message>
            <source>Pack %1 has more than 100 prices: leave some out.</source>
            <translation>Packung %1 hat mehr als 100 Preise: Lassen Sie einige weg.</translation>
        </message>
        <message>
            <source>A price of pack %1 must hold from 1 or more packs: change it.</source>
            <translation>Ein Preis von Packung %1 muss ab 1 oder mehr Packungen gelten: Ändern Sie ihn.</translation>
        </message>
        <message>
            <source>Pack %1 cannot cost less than nothing: change its price.</source>
            <translation>Packung %1 kann nicht weniger als nichts kosten: Ändern Sie ihren Preis.</translation>
        </message>
        <message>
            <source>Pack %1 cannot be limited to less than none: change the limit.</source>
            <translation>Packung %1 kann nicht auf weniger als keine begrenzt sein: Ändern Sie die Grenze.</translation>
        </message>
        <message>
            <source>Shipping, minimum and free shipping of %1 must be 0 or more: change them.</source>
            <translation>Versand, Mindestbetrag und Freigrenze von %1 müssen 0 oder mehr sein: Ändern Sie sie.</translation>
        </message>
        <message numerus="yes">
            <source>Pack %1 has two prices from %n packs: keep one.</source>
            <translation>
                <numerusform>Packung %1 hat zwei Preise ab %n Packung: Behalten Sie einen.</numerusform>
                <numerusform>Packung %1 hat zwei Preise ab %n Packungen: Behalten Sie einen.</numerusform>
            </translation>
        </message>
        <message>
            <source>Nothing is needed: say what is to be bought.</source>
            <translation>Es wird nichts gebraucht: Sagen Sie, was gekauft werden soll.</translation>
        </message>
        <message>
            <source>The need of %1 must be 0 or more: change it or leave it out.</source>
            <translation>Der Bedarf an %1 muss 0 oder mehr sein: Ändern Sie ihn oder lassen Sie ihn weg.</translation>
        </message>
        <message>
            <source>More %1 is needed than the program plans for: need less.</source>
            <translation>Es wird mehr %1 gebraucht, als das Programm planen kann: Verlangen Sie weniger.</translation>
        </message>
        <message>
            <source>More than 1,000 materials are needed at once: plan for some of them at a time.</source>
            <translation>Mehr als 1000 Materialien werden auf einmal gebraucht: Planen Sie nur für einige zugleich.</translation>
        </message>
        <message>
            <source>The shelf cannot hold less than no %1: count it again.</source>
            <translation>Im Lager kann nicht weniger als nichts von %1 sein: Zählen Sie nach.</translation>
        </message>
        <message>
            <source>There are two suppliers %1: keep one.</source>
            <translation>Es gibt zwei Lieferanten %1: Behalten Sie einen.</translation>
        </message>
        <message>
            <source>The sums of %1 are larger than the program plans with.</source>
            <translation>Die Summen von %1 sind größer, als das Programm planen kann.</translation>
        </message>
        <message>
            <source>There are more than 100,000 packs: leave some out.</source>
            <translation>Es gibt mehr als 100 000 Packungen: Lassen Sie einige weg.</translation>
        </message>
        <message>
            <source>There are two packs %1: rename one.</source>
            <translation>Es gibt zwei Packungen %1: Benennen Sie eine um.</translation>
        </message>
        <message>
            <source>Pack %1 is sold by %2, which is not among the suppliers: add it.</source>
            <translation>Packung %1 wird von %2 verkauft, der nicht unter den Lieferanten ist: Fügen Sie ihn hinzu.</translation>
        </message>
        <message>
            <source>The purchase is larger than the program plans for: need less or round the prices.</source>
            <translation>Der Einkauf ist größer, als das Programm planen kann: Verlangen Sie weniger oder runden Sie die Preise.</translation>
        </message>
        <message>
            <source>No plan was found that keeps every minimum and every limit: leave out packs or suppliers, or change their minimum.</source>
            <translation>Es fand sich kein Plan, der jeden Mindestbetrag und jede Grenze einhält: Lassen Sie Packungen oder Lieferanten weg oder ändern Sie ihren Mindestbetrag.</translation>
        </message>
        <message>
            <source>The price list has no column “%1”; choose its columns anew.</source>
            <translation>Die Preisliste hat keine Spalte „%1“; wählen Sie ihre Spalten neu.</translation>
        </message>
        <message>
            <source>Choose the column that says what is sold.</source>
            <translation>Wählen Sie die Spalte, die sagt, was verkauft wird.</translation>
        </message>
        <message>
            <source>Choose the column that says the price.</source>
            <translation>Wählen Sie die Spalte, die den Preis sagt.</translation>
        </message>
        <message>
            <source>Line %1 of “%2” goes on after a closing quote; save the list as CSV again.</source>
            <translation>Zeile %1 von „%2“ geht nach einem schließenden Anführungszeichen weiter; speichern Sie die Liste noch einmal als CSV.</translation>
        </message>
        <message>
            <source>The quote that opens in line %1 of “%2” is never closed; save the list as CSV again.</source>
            <translation>Das Anführungszeichen, das in Zeile %1 von „%2“ beginnt, wird nie geschlossen; speichern Sie die Liste noch einmal als CSV.</translation>
        </message>
        <message>
            <source>“%1” is larger than a price list; choose another file.</source>
            <translation>„%1“ ist größer als eine Preisliste; wählen Sie eine andere Datei.</translation>
        </message>
        <message>
            <source>“%1” is not a list in text; save it as CSV where it was made.</source>
            <translation>„%1“ ist keine Liste in Textform; speichern Sie sie dort als CSV, wo sie gemacht wurde.</translation>
        </message>
        <message>
            <source>In line %1 of “%2” a cell is larger than a price list has; choose another file.</source>
            <translation>In Zeile %1 von „%2“ ist eine Zelle größer, als sie in einer Preisliste ist; wählen Sie eine andere Datei.</translation>
        </message>
        <message>
            <source>In line %1 of “%2” the number of columns is larger than a price list has; choose another file.</source>
            <translation>In Zeile %1 von „%2“ sind mehr Spalten, als eine Preisliste hat; wählen Sie eine andere Datei.</translation>
        </message>
        <message>
            <source>%1 must be either counted or cut from sheets: say which.</source>
            <translation>%1 muss entweder gezählt oder aus Bögen geschnitten werden: Sagen Sie, welches von beiden.</translation>
        </message>
        <message>
            <source>The count of %1 must lie between 0 and 1,000,000,000: change it.</source>
            <translation>Die Anzahl von %1 muss zwischen 0 und 1 000 000 000 liegen: Ändern Sie sie.</translation>
        </message>
        <message>
            <source>A piece cannot take less than no cut of %1: change it.</source>
            <translation>Ein Stück kann nicht weniger als keinen Zuschnitt von %1 brauchen: Ändern Sie es.</translation>
        </message>
        <message>
            <source>The sheets of %1 must be 0 or more and serve at least once: change them.</source>
            <translation>Die Bögen von %1 müssen 0 oder mehr sein und mindestens einmal dienen: Ändern Sie sie.</translation>
        </message>
        <message>
            <source>A kit cannot cost less than nothing: change its price.</source>
            <translation>Ein Set kann nicht weniger als nichts kosten: Ändern Sie seinen Preis.</translation>
        </message>
        <message>
            <source>A kit and a design of more than 200 materials are not compared: leave some out.</source>
            <translation>Ein Set und ein Motiv mit mehr als 200 Materialien werden nicht verglichen: Lassen Sie einige weg.</translation>
        </message>
        <message>
            <source>The design takes nothing that limits a kit: give it its stones or sheets.</source>
            <translation>Das Motiv braucht nichts, was ein Set begrenzt: Geben Sie ihm seine Steine oder Bögen.</translation>
        </message>
        <message>
            <source>The kit holds more than the program works with: make it smaller.</source>
            <translation>Das Set enthält mehr, als das Programm verarbeiten kann: Machen Sie es kleiner.</translation>
        </message>
        <message>
            <source>The design “%1” has no stones yet; count them first.</source>
            <translation>Das Motiv „%1“ hat noch keine Steine; zählen Sie sie zuerst.</translation>
        </message>
        <message>
            <source>A material of the kit “%1” or its design is no longer in the book; choose it anew.</source>
            <translation>Ein Material des Sets „%1“ oder seines Motivs steht nicht mehr im Buch; wählen Sie es neu.</translation>
        </message>
        <message>
            <source>The number of kits must be from 1 to 1000.</source>
            <translation>Die Anzahl der Sets muss von 1 bis 1000 sein.</translation>
        </message>
        <message>
            <source>A stone of %1 is no longer among the supplies; choose another.</source>
            <translation>Ein Stein von %1 ist nicht mehr im Material; wählen Sie einen anderen.</translation>
        </message>
        <message>
            <source>What %1 goes on is no longer among the supplies; choose another.</source>
            <translation>Worauf %1 kommt, ist nicht mehr im Material; wählen Sie etwas anderes.</translation>
        </message>
        <message>
            <source>The order is empty; put a design on it.</source>
            <translation>Die Bestellung ist leer; setzen Sie ein Motiv darauf.</translation>
        </message>
        <message>
            <source>In line %1 of “%2” the number of rows is larger than a price list has; choose another file.</source>
            <translation>Mit Zeile %1 hat „%2“ mehr Zeilen, als eine Preisliste hat; wählen Sie eine andere Datei.</translation>
        </message>
        <message>
            <source>The sample must be 1 to 1,000,000 things and weigh something: count some and weigh them without the tray.</source>
            <translation>Die Probe muss 1 bis 1 000 000 Teile umfassen und etwas wiegen: Zählen Sie einige ab und wiegen Sie sie ohne Schale.</translation>
        </message>
        <message>
            <source>A weight must be a number of grams from 0 to 1,000,000: change %1.</source>
            <translation>Ein Gewicht muss eine Zahl von 0 bis 1 000 000 Gramm sein: Ändern Sie %1.</translation>
        </message>
        <message>
            <source>%1 g on the scale is less than the %2 g of the empty tray: weigh again.</source>
            <translation>%1 g auf der Waage sind weniger als die %2 g der leeren Schale: Wiegen Sie noch einmal.</translation>
        </message>
        <message>
            <source>A scale in steps of %1 g cannot weigh a sample of %2 g: count a larger sample.</source>
            <translation>Eine Waage in Schritten von %1 g kann eine Probe von %2 g nicht wiegen: Zählen Sie eine größere Probe ab.</translation>
        </message>
        <message>
            <source>That would be more than %1 things: check the weights.</source>
            <translation>Das wären mehr als %1 Teile: Prüfen Sie die Gewichte.</translation>
        </message>
        <message>
            <source>There is no material of this name in the book; say what the row is, or add the material.</source>
            <translation>Ein Material mit diesem Namen gibt es im Buch nicht; sagen Sie, was die Zeile ist, oder fügen Sie das Material hinzu.</translation>
        </message>
        <message>
            <source>There is no stone %1 %2 in the book; have it made, or say what the row is.</source>
            <translation>Einen Stein %1 %2 gibt es im Buch nicht; lassen Sie ihn anlegen oder sagen Sie, was die Zeile ist.</translation>
        </message>
        <message>
            <source>Several stones in the book have this colour and size; say which it is.</source>
            <translation>Mehrere Steine im Buch haben diese Farbe und Größe; sagen Sie, welcher es ist.</translation>
        </message>
        <message>
            <source>“%1” is no size of stones that the program knows; say what the row is.</source>
            <translation>„%1“ ist keine Steingröße, die das Programm kennt; sagen Sie, was die Zeile ist.</translation>
        </message>
        <message>
            <source>How many are in a pack “%1” cannot be told; write a number in the list.</source>
            <translation>Wie viele in einer Packung „%1“ sind, lässt sich nicht sagen; schreiben Sie eine Zahl in die Liste.</translation>
        </message>
        <message>
            <source>Its price is not above nothing; ask the supplier.</source>
            <translation>Der Preis liegt nicht über null; fragen Sie den Lieferanten.</translation>
        </message>
        <message>
            <source>Its price holds from less than one pack on; ask the supplier.</source>
            <translation>Der Preis gilt ab weniger als einer Packung; fragen Sie den Lieferanten.</translation>
        </message>
        <message>
            <source>The list gives a second price for this pack; take one out.</source>
            <translation>Die Liste nennt für diese Packung einen zweiten Preis; nehmen Sie einen heraus.</translation>
        </message>
        <message>
            <source>There is nothing in this pack; ask the supplier.</source>
            <translation>In dieser Packung ist nichts; fragen Sie den Lieferanten.</translation>
        </message>
        <message>
            <source>The name of its pack is too long; shorten it.</source>
            <translation>Der Name der Packung ist zu lang; kürzen Sie ihn.</translation>
        </message>
        <message>
            <source>This pack is not in the book and the list does not say how many are in it; add the pack first.</source>
            <translation>Diese Packung steht nicht im Buch, und die Liste sagt nicht, wie viele darin sind; fügen Sie die Packung zuerst hinzu.</translation>
        </message>
        <message>
            <source>The list gives this pack two different contents; ask the supplier.</source>
            <translation>Die Liste nennt für diese Packung zwei verschiedene Inhalte; fragen Sie den Lieferanten.</translation>
        </message>
        <message>
            <source>Another row of this pack cannot be taken, so its prices stay as they are.</source>
            <translation>Eine andere Zeile dieser Packung kann nicht übernommen werden, deshalb bleiben ihre Preise, wie sie sind.</translation>
        </message>
        <message>
            <source>The list does not give the price of one pack; ask the supplier.</source>
            <translation>Die Liste nennt den Preis einer Packung nicht; fragen Sie den Lieferanten.</translation>
        </message>
        <message>
            <source>The price of pack %1 rises from %2 packs on: check it.</source>
            <translation>Der Preis von Packung %1 steigt ab %2 Packungen: Prüfen Sie ihn.</translation>
        </message>
        <message>
            <source>the minimum order of %1 cannot be reached, and %2 is not to be had otherwise</source>
            <translation>der Mindestbetrag von %1 ist nicht zu erreichen, und %2 ist nicht anders zu haben</translation>
        </message>
        <message>
            <source>the packs that give %1 cannot be had</source>
            <translation>die Packungen mit %1 sind nicht zu haben</translation>
        </message>
        <message>
            <source>no pack gives %1</source>
            <translation>keine Packung enthält %1</translation>
        </message>
        <message>
            <source>the packs that give %1 hold %2 at most, and %3 must be bought</source>
            <translation>die Packungen mit %1 enthalten höchstens %2, und %3 müssen gekauft werden</translation>
        </message>
        <message>
            <source>%1 come only with a kit: the shop cuts none itself.</source>
            <translation>%1 gibt es nur mit einem Set: Der Betrieb schneidet selbst keine.</translation>
        </message>
        <message>
            <source>%1 come with no kit, and the shop cuts none itself: add a kit that has them.</source>
            <translation>%1 sind in keinem Set, und der Betrieb schneidet selbst keine: Fügen Sie ein Set hinzu, das sie hat.</translation>
        </message>
        <message>
            <source>%1 is sold without a price: give its packs one in Supplies, or say there that 0.00 is meant.</source>
            <translation>%1 wird ohne Preis verkauft: Geben Sie den Packungen unter „Material“ einen oder sagen Sie dort, dass 0.00 gewollt ist.</translation>
        </message>
        <message>
            <source>No supplier sells %1: add a pack of it in Supplies.</source>
            <translation>Kein Lieferant verkauft %1: Fügen Sie unter „Material“ eine Packung davon hinzu.</translation>
        </message>
        <message>
            <source>There is no kit in the book: add one in Supplies.</source>
            <translation>Im Buch gibt es kein Set: Fügen Sie unter „Material“ eines hinzu.</translation>
        </message>
        <message>
            <source>No kit holds %1.</source>
            <translation>Kein Set enthält %1.</translation>
        </message>
        <message>
            <source>Nothing of it was used in these days: look at more of them.</source>
            <translation>In diesen Tagen wurde nichts davon verbraucht: Betrachten Sie mehr Tage.</translation>
        </message>
        <message>
            <source>The lead time must be 0 to %1 days: change it with the supplier.</source>
            <translation>Die Lieferzeit muss 0 bis %1 Tage betragen: Ändern Sie sie beim Lieferanten.</translation>
        </message>
        <message>
            <source>So much was used that no order can be worked out: look at fewer days.</source>
            <translation>Es wurde so viel verbraucht, dass sich keine Bestellung berechnen lässt: Betrachten Sie weniger Tage.</translation>
        </message>
        <message>
            <source>How much to order is known once an order and keeping a pack cost something: give both.</source>
            <translation>Wie viel zu bestellen ist, weiß man erst, wenn eine Bestellung und das Lagern einer Packung etwas kosten: Geben Sie beides an.</translation>
        </message>
        <message>
            <source>How much to order is not known, for its usual pack has no price: say what the pack costs.</source>
            <translation>Wie viel zu bestellen ist, ist nicht bekannt, denn die übliche Packung hat keinen Preis: Sagen Sie, was sie kostet.</translation>
        </message>
        <message>
            <source>An order would be of more than %1 packs: check what an order and keeping a pack cost.</source>
            <translation>Eine Bestellung hätte mehr als %1 Packungen: Prüfen Sie, was eine Bestellung und das Lagern einer Packung kosten.</translation>
        </message>
    </context>
    <context>
        <name>Terms</name>
        <message>
            <source>address</source>
            <translation>Adresse</translation>
        </message>
        <message>
            <source>address of the shop</source>
            <translation>Adresse des Betriebs</translation>
        </message>
        <message>
            <source>allowance for garments</source>
            <translation>Ersatz für Textilien</translation>
        </message>
        <message>
            <source>allowance of the holes</source>
            <translation>Zugabe der Löcher</translation>
        </message>
        <message>
            <source>amount</source>
            <translation>Menge</translation>
        </message>
        <message>
            <source>amount in a pack</source>
            <translation>Menge in einer Packung</translation>
        </message>
        <message>
            <source>art and cutting paid off</source>
            <translation>Grafik und Schneiden umgelegt</translation>
        </message>
        <message>
            <source>art time</source>
            <translation>Grafikzeit</translation>
        </message>
        <message>
            <source>at no charge</source>
            <translation>kostenlos</translation>
        </message>
        <message>
            <source>base</source>
            <translation>Untergrund</translation>
        </message>
        <message>
            <source>bench</source>
            <translation>Werkbank</translation>
        </message>
        <message>
            <source>bench hours of a month</source>
            <translation>Werkbankstunden im Monat</translation>
        </message>
        <message>
            <source>bench time on Friday</source>
            <translation>Werkbankzeit am Freitag</translation>
        </message>
        <message>
            <source>bench time on Monday</source>
            <translation>Werkbankzeit am Montag</translation>
        </message>
        <message>
            <source>bench time on Saturday</source>
            <translation>Werkbankzeit am Samstag</translation>
        </message>
        <message>
            <source>bench time on Sunday</source>
            <translation>Werkbankzeit am Sonntag</translation>
        </message>
        <message>
            <source>bench time on Thursday</source>
            <translation>Werkbankzeit am Donnerstag</translation>
        </message>
        <message>
            <source>bench time on Tuesday</source>
            <translation>Werkbankzeit am Dienstag</translation>
        </message>
        <message>
            <source>bench time on Wednesday</source>
            <translation>Werkbankzeit am Mittwoch</translation>
        </message>
        <message>
            <source>bench times</source>
            <translation>Werkbankzeiten</translation>
        </message>
        <message>
            <source>bench hours of a week</source>
            <translation>Werkbankstunden der Woche</translation>
        </message>
        <message>
            <source>border</source>
            <translation>Zugabe</translation>
        </message>
        <message>
            <source>card fee</source>
            <translation>Kartengebühr</translation>
        </message>
        <message>
            <source>card fee rate</source>
            <translation>Satz der Kartengebühr</translation>
        </message>
        <message>
            <source>care notes</source>
            <translation>Pflegehinweise</translation>
        </message>
        <message>
            <source>certificate</source>
            <translation>Nachweis</translation>
        </message>
        <message>
            <source>certificate number</source>
            <translation>Nummer des Nachweises</translation>
        </message>
        <message>
            <source>charge for setting up</source>
            <translation>Rüstkosten</translation>
        </message>
        <message>
            <source>choice looked at</source>
            <translation>angesehene Variante</translation>
        </message>
        <message>
            <source>choice taken</source>
            <translation>gewählte Variante</translation>
        </message>
        <message>
            <source>closed days</source>
            <translation>Schließtage</translation>
        </message>
        <message>
            <source>first closed day</source>
            <translation>erster Schließtag</translation>
        </message>
        <message>
            <source>last closed day</source>
            <translation>letzter Schließtag</translation>
        </message>
        <message>
            <source>colour</source>
            <translation>Farbe</translation>
        </message>
        <message>
            <source>colour in the drawing</source>
            <translation>Farbe in der Zeichnung</translation>
        </message>
        <message>
            <source>colour on the screen</source>
            <translation>Farbe auf dem Bildschirm</translation>
        </message>
        <message>
            <source>columns of the price list</source>
            <translation>Spalten der Preisliste</translation>
        </message>
        <message>
            <source>contents</source>
            <translation>Inhalt</translation>
        </message>
        <message>
            <source>cost</source>
            <translation>Kosten</translation>
        </message>
        <message>
            <source>cost of art and cutting</source>
            <translation>Kosten für Grafik und Schneiden</translation>
        </message>
        <message>
            <source>cost of the set of templates</source>
            <translation>Kosten des Schablonensatzes</translation>
        </message>
        <message>
            <source>cost of the templates</source>
            <translation>Kosten der Schablonen</translation>
        </message>
        <message>
            <source>counts of the drawing</source>
            <translation>Zählung der Zeichnung</translation>
        </message>
        <message>
            <source>currency</source>
            <translation>Währung</translation>
        </message>
        <message>
            <source>customer</source>
            <translation>Kunde</translation>
        </message>
        <message>
            <source>customer's garment</source>
            <translation>Textil des Kunden</translation>
        </message>
        <message>
            <source>cutter</source>
            <translation>Plotter</translation>
        </message>
        <message>
            <source>day</source>
            <translation>Tag</translation>
        </message>
        <message>
            <source>day it is wanted</source>
            <translation>Wunschtermin</translation>
        </message>
        <message>
            <source>day of expiry</source>
            <translation>Ablauftag</translation>
        </message>
        <message>
            <source>day of issue</source>
            <translation>Ausstellungstag</translation>
        </message>
        <message>
            <source>day of the price</source>
            <translation>Tag des Preises</translation>
        </message>
        <message>
            <source>days to pay an invoice</source>
            <translation>Zahlungsfrist in Tagen</translation>
        </message>
        <message>
            <source>days a quote is valid</source>
            <translation>Gültigkeit eines Angebots in Tagen</translation>
        </message>
        <message>
            <source>days of a rush surcharge</source>
            <translation>Tage eines Eilzuschlags</translation>
        </message>
        <message>
            <source>decimal comma</source>
            <translation>Dezimalkomma</translation>
        </message>
        <message>
            <source>demo mark</source>
            <translation>Beispielkennzeichen</translation>
        </message>
        <message>
            <source>deposit</source>
            <translation>Anzahlung</translation>
        </message>
        <message>
            <source>design</source>
            <translation>Motiv</translation>
        </message>
        <message>
            <source>direction</source>
            <translation>Richtung</translation>
        </message>
        <message>
            <source>discount</source>
            <translation>Rabatt</translation>
        </message>
        <message>
            <source>drawing</source>
            <translation>Zeichnung</translation>
        </message>
        <message>
            <source>dwell</source>
            <translation>Presszeit</translation>
        </message>
        <message>
            <source>ending of a price</source>
            <translation>Preisendung</translation>
        </message>
        <message>
            <source>exemption</source>
            <translation>Steuerbefreiung</translation>
        </message>
        <message>
            <source>extra cost of a size</source>
            <translation>Mehrkosten einer Größe</translation>
        </message>
        <message>
            <source>whether the first steps are shown</source>
            <translation>Anzeige der ersten Schritte</translation>
        </message>
        <message>
            <source>fixed card fee</source>
            <translation>feste Kartengebühr</translation>
        </message>
        <message>
            <source>fixed price</source>
            <translation>fester Preis</translation>
        </message>
        <message>
            <source>form</source>
            <translation>Form</translation>
        </message>
        <message>
            <source>freight in</source>
            <translation>Fracht</translation>
        </message>
        <message>
            <source>share of freight</source>
            <translation>Frachtanteil</translation>
        </message>
        <message>
            <source>further tax rates</source>
            <translation>weitere Steuersätze</translation>
        </message>
        <message>
            <source>gap</source>
            <translation>Abstand</translation>
        </message>
        <message>
            <source>handling at the press</source>
            <translation>Handhabung an der Presse</translation>
        </message>
        <message>
            <source>heading of a column</source>
            <translation>Überschrift einer Spalte</translation>
        </message>
        <message>
            <source>height</source>
            <translation>Höhe</translation>
        </message>
        <message>
            <source>height of the platen</source>
            <translation>Höhe der Pressplatte</translation>
        </message>
        <message>
            <source>key</source>
            <translation>Schlüssel</translation>
        </message>
        <message>
            <source>kind</source>
            <translation>Art</translation>
        </message>
        <message>
            <source>kind of file</source>
            <translation>Art der Datei</translation>
        </message>
        <message>
            <source>kind of payment</source>
            <translation>Art der Zahlung</translation>
        </message>
        <message>
            <source>kind of price</source>
            <translation>Art des Preises</translation>
        </message>
        <message>
            <source>labour rate</source>
            <translation>Lohnsatz</translation>
        </message>
        <message>
            <source>ladder on the sheet</source>
            <translation>Staffel auf dem Angebotsblatt</translation>
        </message>
        <message>
            <source>language</source>
            <translation>Sprache</translation>
        </message>
        <message>
            <source>language of papers</source>
            <translation>Sprache der Papiere</translation>
        </message>
        <message>
            <source>last day</source>
            <translation>letzter Tag</translation>
        </message>
        <message>
            <source>lead time in days</source>
            <translation>Lieferzeit in Tagen</translation>
        </message>
        <message>
            <source>learning rate</source>
            <translation>Lernrate</translation>
        </message>
        <message>
            <source>letterhead</source>
            <translation>Briefkopf</translation>
        </message>
        <message>
            <source>life of the cutter</source>
            <translation>Lebensdauer des Plotters</translation>
        </message>
        <message>
            <source>life of the press</source>
            <translation>Lebensdauer der Presse</translation>
        </message>
        <message>
            <source>lines</source>
            <translation>Positionen</translation>
        </message>
        <message>
            <source>mail address</source>
            <translation>E-Mail-Adresse</translation>
        </message>
        <message>
            <source>loss</source>
            <translation>Verlust</translation>
        </message>
        <message>
            <source>margin</source>
            <translation>Rand</translation>
        </message>
        <message>
            <source>mark-up</source>
            <translation>Aufschlag</translation>
        </message>
        <message>
            <source>material</source>
            <translation>Material</translation>
        </message>
        <message>
            <source>materials</source>
            <translation>Materialien</translation>
        </message>
        <message>
            <source>meaning of a column</source>
            <translation>Bedeutung einer Spalte</translation>
        </message>
        <message>
            <source>what is meant to cost nothing</source>
            <translation>bewusst ohne Kosten</translation>
        </message>
        <message>
            <source>moment</source>
            <translation>Zeitpunkt</translation>
        </message>
        <message>
            <source>more for less on the sheet</source>
            <translation>mehr für weniger auf dem Angebotsblatt</translation>
        </message>
        <message>
            <source>what the movement was</source>
            <translation>Art der Lagerbewegung</translation>
        </message>
        <message>
            <source>job it was for</source>
            <translation>Auftrag, zu dem sie gehört</translation>
        </message>
        <message>
            <source>when supplies count as used</source>
            <translation>Zeitpunkt des Materialverbrauchs</translation>
        </message>
        <message>
            <source>movement it takes back</source>
            <translation>stornierte Lagerbewegung</translation>
        </message>
        <message>
            <source>name</source>
            <translation>Name</translation>
        </message>
        <message>
            <source>name of a size</source>
            <translation>Name einer Größe</translation>
        </message>
        <message>
            <source>name of the file</source>
            <translation>Name der Datei</translation>
        </message>
        <message>
            <source>name of the shop</source>
            <translation>Name des Betriebs</translation>
        </message>
        <message>
            <source>name of the tax</source>
            <translation>Name der Steuer</translation>
        </message>
        <message>
            <source>note</source>
            <translation>Notiz</translation>
        </message>
        <message>
            <source>number</source>
            <translation>Nummer</translation>
        </message>
        <message>
            <source>number in the kit</source>
            <translation>Anzahl im Set</translation>
        </message>
        <message>
            <source>number it is for</source>
            <translation>Nummer, zu der es gehört</translation>
        </message>
        <message>
            <source>number of a size</source>
            <translation>Anzahl einer Größe</translation>
        </message>
        <message>
            <source>number of lifts</source>
            <translation>Anzahl der Abhebungen</translation>
        </message>
        <message>
            <source>number of packs</source>
            <translation>Anzahl der Packungen</translation>
        </message>
        <message>
            <source>number of packing</source>
            <translation>Anzahl der Verpackung</translation>
        </message>
        <message>
            <source>number of stones</source>
            <translation>Anzahl der Steine</translation>
        </message>
        <message>
            <source>number of test presses</source>
            <translation>Anzahl der Probepressungen</translation>
        </message>
        <message>
            <source>order</source>
            <translation>Bestellung</translation>
        </message>
        <message>
            <source>origin of the price</source>
            <translation>Herkunft des Preises</translation>
        </message>
        <message>
            <source>origin of the scale</source>
            <translation>Herkunft des Maßstabs</translation>
        </message>
        <message>
            <source>further certificates</source>
            <translation>weitere Nachweise</translation>
        </message>
        <message>
            <source>other choices</source>
            <translation>andere Varianten</translation>
        </message>
        <message>
            <source>overhead</source>
            <translation>Gemeinkosten</translation>
        </message>
        <message>
            <source>packing</source>
            <translation>Verpackung</translation>
        </message>
        <message>
            <source>paper</source>
            <translation>Papierformat</translation>
        </message>
        <message>
            <source>payment it is part of</source>
            <translation>Zahlung, zu der sie gehört</translation>
        </message>
        <message>
            <source>payment it takes back</source>
            <translation>stornierte Zahlung</translation>
        </message>
        <message>
            <source>pieces of a design counted together</source>
            <translation>zusammengezählte Stück eines Motivs</translation>
        </message>
        <message>
            <source>pieces sold</source>
            <translation>verkaufte Stück</translation>
        </message>
        <message>
            <source>place on the piece</source>
            <translation>Stelle auf dem Stück</translation>
        </message>
        <message>
            <source>places on the piece</source>
            <translation>Stellen auf dem Stück</translation>
        </message>
        <message>
            <source>place of a surcharge</source>
            <translation>Stelle eines Zuschlags</translation>
        </message>
        <message>
            <source>place of the certificate</source>
            <translation>Geltungsort des Nachweises</translation>
        </message>
        <message>
            <source>planned pieces</source>
            <translation>geplante Stück</translation>
        </message>
        <message>
            <source>press</source>
            <translation>Presse</translation>
        </message>
        <message>
            <source>price</source>
            <translation>Preis</translation>
        </message>
        <message>
            <source>price of the cutter</source>
            <translation>Preis des Plotters</translation>
        </message>
        <message>
            <source>price of the press</source>
            <translation>Preis der Presse</translation>
        </message>
        <message>
            <source>price rules</source>
            <translation>Preisregeln</translation>
        </message>
        <message>
            <source>price with templates cut</source>
            <translation>Preis mit geschnittenen Schablonen</translation>
        </message>
        <message>
            <source>prices</source>
            <translation>Preise</translation>
        </message>
        <message>
            <source>prices of more packs</source>
            <translation>Preise ab mehr Packungen</translation>
        </message>
        <message>
            <source>quantities of the ladder</source>
            <translation>Mengen der Staffel</translation>
        </message>
        <message>
            <source>quantity</source>
            <translation>Menge</translation>
        </message>
        <message>
            <source>quantity of a mark-up</source>
            <translation>Menge eines Aufschlags</translation>
        </message>
        <message>
            <source>quote before</source>
            <translation>voriges Angebot</translation>
        </message>
        <message>
            <source>quote it revises</source>
            <translation>überarbeitetes Angebot</translation>
        </message>
        <message>
            <source>rates</source>
            <translation>Sätze</translation>
        </message>
        <message>
            <source>what the row of the ledger is</source>
            <translation>Art der Zahlungszeile</translation>
        </message>
        <message>
            <source>rounding</source>
            <translation>Rundung</translation>
        </message>
        <message>
            <source>rounding of the tax</source>
            <translation>Rundung der Steuer</translation>
        </message>
        <message>
            <source>running cost of the press</source>
            <translation>Betriebskosten der Presse</translation>
        </message>
        <message>
            <source>rush surcharge</source>
            <translation>Eilzuschlag</translation>
        </message>
        <message>
            <source>salvage of the cutter</source>
            <translation>Restwert des Plotters</translation>
        </message>
        <message>
            <source>salvage of the press</source>
            <translation>Restwert der Presse</translation>
        </message>
        <message>
            <source>entry of the same person</source>
            <translation>Eintrag derselben Person</translation>
        </message>
        <message>
            <source>scale</source>
            <translation>Maßstab</translation>
        </message>
        <message>
            <source>second dwell</source>
            <translation>zweite Presszeit</translation>
        </message>
        <message>
            <source>share of second presses</source>
            <translation>Anteil zweiter Pressungen</translation>
        </message>
        <message>
            <source>sheet</source>
            <translation>Bogen</translation>
        </message>
        <message>
            <source>shipping</source>
            <translation>Versand</translation>
        </message>
        <message>
            <source>shop</source>
            <translation>Betrieb</translation>
        </message>
        <message>
            <source>short count</source>
            <translation>Fehlmenge</translation>
        </message>
        <message>
            <source>size</source>
            <translation>Größe</translation>
        </message>
        <message>
            <source>sizes</source>
            <translation>Größen</translation>
        </message>
        <message>
            <source>small picture</source>
            <translation>kleines Bild</translation>
        </message>
        <message>
            <source>name of the way to pay</source>
            <translation>Name der Zahlungsart</translation>
        </message>
        <message>
            <source>paid in cash</source>
            <translation>bar gezahlt</translation>
        </message>
        <message>
            <source>ways to pay</source>
            <translation>Zahlungsarten</translation>
        </message>
        <message>
            <source>smallest coin</source>
            <translation>kleinste Münze</translation>
        </message>
        <message>
            <source>smallest order</source>
            <translation>Mindestbetrag</translation>
        </message>
        <message>
            <source>spares</source>
            <translation>Reserve</translation>
        </message>
        <message>
            <source>spoilage</source>
            <translation>Ausschuss</translation>
        </message>
        <message>
            <source>stage</source>
            <translation>Stand</translation>
        </message>
        <message>
            <source>step of the deposit</source>
            <translation>Schritt der Anzahlung</translation>
        </message>
        <message>
            <source>step of the rounding</source>
            <translation>Schritt der Rundung</translation>
        </message>
        <message>
            <source>stone</source>
            <translation>Stein</translation>
        </message>
        <message>
            <source>stone size</source>
            <translation>Steingröße</translation>
        </message>
        <message>
            <source>item number</source>
            <translation>Artikelnummer</translation>
        </message>
        <message>
            <source>stones</source>
            <translation>Steine</translation>
        </message>
        <message>
            <source>sum for free shipping</source>
            <translation>Freigrenze für Versand</translation>
        </message>
        <message>
            <source>supplier</source>
            <translation>Lieferant</translation>
        </message>
        <message>
            <source>surcharge of a place</source>
            <translation>Zuschlag einer Stelle</translation>
        </message>
        <message>
            <source>surcharge of a size</source>
            <translation>Zuschlag einer Größe</translation>
        </message>
        <message>
            <source>surcharges by place</source>
            <translation>Zuschläge nach Stelle</translation>
        </message>
        <message>
            <source>tax</source>
            <translation>Steuer</translation>
        </message>
        <message>
            <source>tax in the price</source>
            <translation>Steuer im Preis</translation>
        </message>
        <message>
            <source>tax mark</source>
            <translation>Steuerkennzeichen</translation>
        </message>
        <message>
            <source>tax rate</source>
            <translation>Steuersatz</translation>
        </message>
        <message>
            <source>tax on what is given away</source>
            <translation>Steuer auf Verschenktes</translation>
        </message>
        <message>
            <source>tax rate of a line</source>
            <translation>Steuersatz einer Position</translation>
        </message>
        <message>
            <source>telephone</source>
            <translation>Telefon</translation>
        </message>
        <message>
            <source>temperature</source>
            <translation>Temperatur</translation>
        </message>
        <message>
            <source>templates on the wall</source>
            <translation>Schablonen an der Wand</translation>
        </message>
        <message>
            <source>terms</source>
            <translation>Bedingungen</translation>
        </message>
        <message>
            <source>time for 100 stones</source>
            <translation>Zeit je 100 Steine</translation>
        </message>
        <message>
            <source>time for a press cycle</source>
            <translation>Zeit je Pressgang</translation>
        </message>
        <message>
            <source>time for a colour</source>
            <translation>Zeit je Farbe</translation>
        </message>
        <message>
            <source>time for a job</source>
            <translation>Zeit je Auftrag</translation>
        </message>
        <message>
            <source>time for a piece</source>
            <translation>Zeit je Stück</translation>
        </message>
        <message>
            <source>title</source>
            <translation>Titel</translation>
        </message>
        <message>
            <source>title of a choice</source>
            <translation>Titel einer Variante</translation>
        </message>
        <message>
            <source>tools</source>
            <translation>Werkzeuge</translation>
        </message>
        <message>
            <source>total</source>
            <translation>Summe</translation>
        </message>
        <message>
            <source>typed price</source>
            <translation>getippter Preis</translation>
        </message>
        <message>
            <source>unit of length</source>
            <translation>Längeneinheit</translation>
        </message>
        <message>
            <source>unit of temperature</source>
            <translation>Temperatureinheit</translation>
        </message>
        <message>
            <source>unit of the drawing</source>
            <translation>Einheit der Zeichnung</translation>
        </message>
        <message>
            <source>usual base</source>
            <translation>üblicher Untergrund</translation>
        </message>
        <message>
            <source>usual order</source>
            <translation>übliche Bestellung</translation>
        </message>
        <message>
            <source>usual pack</source>
            <translation>übliche Packung</translation>
        </message>
        <message>
            <source>usual tape</source>
            <translation>übliche Folie</translation>
        </message>
        <message>
            <source>usual template</source>
            <translation>übliche Schablone</translation>
        </message>
        <message>
            <source>warm-up</source>
            <translation>Aufheizen</translation>
        </message>
        <message>
            <source>way of charging</source>
            <translation>Art der Berechnung</translation>
        </message>
        <message>
            <source>what packing goes with</source>
            <translation>wozu die Verpackung gehört</translation>
        </message>
        <message>
            <source>what tells a choice from the others</source>
            <translation>Merkmal der Variante</translation>
        </message>
        <message>
            <source>why the bench is closed</source>
            <translation>Grund der Schließung</translation>
        </message>
        <message>
            <source>width</source>
            <translation>Breite</translation>
        </message>
        <message>
            <source>width of the platen</source>
            <translation>Breite der Pressplatte</translation>
        </message>
        <message>
            <source>Allowance for a customer's garment</source>
            <translation>Ersatz für ein Textil des Kunden</translation>
        </message>
        <message>
            <source>Art and cutting paid off</source>
            <translation>Grafik und Schneiden umgelegt</translation>
        </message>
        <message>
            <source>Bench hours a month</source>
            <translation>Werkbankstunden im Monat</translation>
        </message>
        <message>
            <source>Bench times</source>
            <translation>Werkbankzeiten</translation>
        </message>
        <message>
            <source>Card fee</source>
            <translation>Kartengebühr</translation>
        </message>
        <message>
            <source>Charge for set-up</source>
            <translation>Rüstkosten</translation>
        </message>
        <message>
            <source>Currency</source>
            <translation>Währung</translation>
        </message>
        <message>
            <source>Cutter</source>
            <translation>Plotter</translation>
        </message>
        <message>
            <source>Deposit</source>
            <translation>Anzahlung</translation>
        </message>
        <message>
            <source>Labour an hour</source>
            <translation>Lohn je Stunde</translation>
        </message>
        <message>
            <source>what is lost</source>
            <translation>Verlust</translation>
        </message>
        <message>
            <source>Mark-up ladder</source>
            <translation>Aufschlagsstaffel</translation>
        </message>
        <message>
            <source>Overhead a month</source>
            <translation>Gemeinkosten im Monat</translation>
        </message>
        <message>
            <source>Packing</source>
            <translation>Verpackung</translation>
        </message>
        <message>
            <source>Pieces of a design counted over lines</source>
            <translation>Stück eines Motivs über Positionen gezählt</translation>
        </message>
        <message>
            <source>Heat press</source>
            <translation>Presse</translation>
        </message>
        <message>
            <source>Rounding of prices</source>
            <translation>Rundung der Preise</translation>
        </message>
        <message>
            <source>Rush surcharges</source>
            <translation>Eilzuschläge</translation>
        </message>
        <message>
            <source>its sheet</source>
            <translation>Bogen</translation>
        </message>
        <message>
            <source>its sizes</source>
            <translation>Größen</translation>
        </message>
        <message>
            <source>Smallest order</source>
            <translation>Mindestbetrag</translation>
        </message>
        <message>
            <source>Spoilage</source>
            <translation>Ausschuss</translation>
        </message>
        <message>
            <source>Surcharges by place</source>
            <translation>Zuschläge nach Stelle</translation>
        </message>
        <message>
            <source>Tax</source>
            <translation>Steuer</translation>
        </message>
        <message>
            <source>Usual tape</source>
            <translation>Übliche Folie</translation>
        </message>
        <message>
            <source>Usual template sheet</source>
            <translation>Üblicher Schablonenbogen</translation>
        </message>
    </context>
    <context>
        <name>Units</name>
        <message>
            <source>A currency is three capital letters, such as USD or EUR.</source>
            <translation>Eine Währung besteht aus drei Großbuchstaben, wie USD oder EUR.</translation>
        </message>
        <message>
            <source>“%1” is not a day; write it as 2026-12-11 (year-month-day).</source>
            <translation>„%1“ ist kein Tag; schreiben Sie ihn wie 2026-12-11 (Jahr-Monat-Tag).</translation>
        </message>
        <message>
            <source>This text is too long for %1; type at most 200 characters.</source>
            <translation>Dieser Text ist zu lang für %1; tippen Sie höchstens 200 Zeichen.</translation>
        </message>
        <message>
            <source>This text is damaged and cannot be read as %1; type it again.</source>
            <translation>Dieser Text ist beschädigt und kann nicht für %1 gelten; tippen Sie ihn neu.</translation>
        </message>
        <message>
            <source>Nothing is typed here; type %1 such as %2.</source>
            <translation>Hier ist nichts getippt; tippen Sie %1 wie %2.</translation>
        </message>
        <message>
            <source>%1 has a unit too many, %2; remove it.</source>
            <translation>%1 hat eine Einheit zu viel, %2; entfernen Sie sie.</translation>
        </message>
        <message>
            <source>%1 has %2, which cannot be read here; %3.</source>
            <translation>%1 enthält %2, was hier nicht gelesen werden kann; %3.</translation>
        </message>
        <message>
            <source>%1 needs a sign or a unit before %2; put +, -, * or / there.</source>
            <translation>%1 braucht vor %2 ein Zeichen oder eine Einheit; setzen Sie dort +, -, * oder /.</translation>
        </message>
        <message>
            <source>%1 has a closing bracket too many; remove it.</source>
            <translation>%1 hat eine schließende Klammer zu viel; entfernen Sie sie.</translation>
        </message>
        <message>
            <source>%1 has %2, which cannot be read here; remove it.</source>
            <translation>%1 enthält %2, was hier nicht gelesen werden kann; entfernen Sie es.</translation>
        </message>
        <message>
            <source>%1 divides %2 by %2, which leaves a plain number; divide by a plain number.</source>
            <translation>%1 teilt %2 durch %2, das ergibt eine bloße Zahl; teilen Sie durch eine bloße Zahl.</translation>
        </message>
        <message>
            <source>%1 could be a range; type one number, or give both numbers a unit.</source>
            <translation>%1 könnte ein Bereich sein; tippen Sie eine Zahl oder geben Sie beiden eine Einheit.</translation>
        </message>
        <message>
            <source>%1 could be a size of two lengths; type one length, or * to multiply.</source>
            <translation>%1 könnte eine Größe aus zwei Längen sein; tippen Sie eine Länge oder * zum Malnehmen.</translation>
        </message>
        <message>
            <source>%1 divides by nothing; change the number after the division sign.</source>
            <translation>%1 teilt durch nichts; ändern Sie die Zahl nach dem Geteiltzeichen.</translation>
        </message>
        <message>
            <source>%1 has more than 50 brackets inside each other; use fewer.</source>
            <translation>%1 hat mehr als 50 Klammern ineinander; nehmen Sie weniger.</translation>
        </message>
        <message>
            <source>%1 has a bracket that is not closed; add a closing bracket.</source>
            <translation>%1 hat eine offene Klammer; fügen Sie eine schließende Klammer hinzu.</translation>
        </message>
        <message>
            <source>%1 could add or subtract the inches; put a space or " - " after the feet.</source>
            <translation>%1 könnte die Zoll dazuzählen oder abziehen; setzen Sie ein Leerzeichen oder " - " nach den Fuß.</translation>
        </message>
        <message>
            <source>%1 is not minutes and seconds; type 1:30, or 1 h 30 min, with seconds below 60.</source>
            <translation>%1 sind keine Minuten und Sekunden; tippen Sie 1:30 oder 1 h 30 min, mit Sekunden unter 60.</translation>
        </message>
        <message>
            <source>%1 could mean %2 %3 or %2 - %3; write one of these.</source>
            <translation>%1 könnte %2 %3 oder %2 - %3 heißen; schreiben Sie eines davon.</translation>
        </message>
        <message>
            <source>%1 adds a plain number to %2; give every part of the sum a unit.</source>
            <translation>%1 addiert %2 und eine bloße Zahl; geben Sie jedem Teil der Summe eine Einheit.</translation>
        </message>
        <message>
            <source>%1 multiplies %2 by %2; multiply by a plain number.</source>
            <translation>%1 multipliziert %2 mal %2; nehmen Sie mit einer bloßen Zahl mal.</translation>
        </message>
        <message>
            <source>%1 divides by %2; divide by a plain number.</source>
            <translation>%1 teilt durch %2; teilen Sie durch eine bloße Zahl.</translation>
        </message>
        <message>
            <source>%1 could mean %2 or %3; write one of these.</source>
            <translation>%1 könnte %2 oder %3 heißen; schreiben Sie eines davon.</translation>
        </message>
        <message>
            <source>%1 has %2, which could mean %3 or %4; write one of these.</source>
            <translation>%1 enthält %2, was %3 oder %4 heißen könnte; schreiben Sie eines davon.</translation>
        </message>
        <message>
            <source>%1 is written with a power of ten; write the number out in full.</source>
            <translation>%1 ist mit einer Zehnerpotenz geschrieben; schreiben Sie die Zahl aus.</translation>
        </message>
        <message>
            <source>%1 has a number of more than 30 digits; use fewer.</source>
            <translation>%1 enthält eine Zahl mit mehr als 30 Ziffern; nehmen Sie weniger.</translation>
        </message>
        <message>
            <source>%1 has marks in odd places; write at most one decimal mark.</source>
            <translation>%1 hat Zeichen an seltsamen Stellen; schreiben Sie höchstens ein Dezimalzeichen.</translation>
        </message>
        <message>
            <source>%1 has %2, which has marks in odd places; write at most one decimal mark.</source>
            <translation>%1 enthält %2 mit Zeichen an seltsamen Stellen; schreiben Sie höchstens ein Dezimalzeichen.</translation>
        </message>
        <message>
            <source>%1 stops where a number should stand; type %2 such as %3.</source>
            <translation>%1 bricht ab, wo eine Zahl stehen sollte; tippen Sie %2 wie %3.</translation>
        </message>
        <message>
            <source>%1 is not a number; type %2 such as %3.</source>
            <translation>%1 ist keine Zahl; tippen Sie %2 wie %3.</translation>
        </message>
        <message>
            <source>%1 has %2 where a number should stand; type %3 such as %4.</source>
            <translation>%1 enthält %2, wo eine Zahl stehen sollte; tippen Sie %3 wie %4.</translation>
        </message>
        <message>
            <source>%1 leads to figures too large or too fine to work with; use fewer digits.</source>
            <translation>%1 führt zu Zahlen, die zum Rechnen zu groß oder zu fein sind; nehmen Sie weniger Ziffern.</translation>
        </message>
        <message>
            <source>%1 is out of range; type %2 %3.</source>
            <translation>%1 liegt außerhalb des Bereichs; tippen Sie %2 %3.</translation>
        </message>
        <message>
            <source>%1 does not come to a whole number; type a whole number.</source>
            <translation>%1 ergibt keine ganze Zahl; tippen Sie eine ganze Zahl.</translation>
        </message>
        <message>
            <source>a length</source>
            <translation>eine Länge</translation>
        </message>
        <message>
            <source>an amount</source>
            <translation>einen Betrag</translation>
        </message>
        <message>
            <source>a rate</source>
            <translation>einen Prozentsatz</translation>
        </message>
        <message>
            <source>a count</source>
            <translation>eine Anzahl</translation>
        </message>
        <message>
            <source>a time</source>
            <translation>eine Zeit</translation>
        </message>
        <message>
            <source>a temperature</source>
            <translation>eine Temperatur</translation>
        </message>
        <message>
            <source>3 1/2 in</source>
            <translation>3 1/2 in</translation>
        </message>
        <message>
            <source>24*0.29</source>
            <translation>24*0.29</translation>
        </message>
        <message>
            <source>8.875 %</source>
            <translation>8.875 %</translation>
        </message>
        <message>
            <source>24 or 10 gross</source>
            <translation>24 oder 10 gross</translation>
        </message>
        <message>
            <source>1 min 30 s</source>
            <translation>1 min 30 s</translation>
        </message>
        <message>
            <source>320 F or 160 C</source>
            <translation>320 F oder 160 C</translation>
        </message>
        <message>
            <source>use in, ft, yd, mm, cm or m</source>
            <translation>nehmen Sie in, ft, yd, mm, cm oder m</translation>
        </message>
        <message>
            <source>type the amount in %1</source>
            <translation>tippen Sie den Betrag in %1</translation>
        </message>
        <message>
            <source>type a number of percent</source>
            <translation>tippen Sie eine Zahl in Prozent</translation>
        </message>
        <message>
            <source>use dozen, gross or great gross</source>
            <translation>nehmen Sie dozen, gross oder great gross</translation>
        </message>
        <message>
            <source>use s, min or h</source>
            <translation>nehmen Sie s, min oder h</translation>
        </message>
        <message>
            <source>write F or C once, at the end</source>
            <translation>schreiben Sie F oder C einmal, am Ende</translation>
        </message>
        <message>
            <source>from 0 to 1 km</source>
            <translation>von 0 bis 1 km</translation>
        </message>
        <message>
            <source>of at most 1,000,000,000 either way</source>
            <translation>von höchstens 1 000 000 000 im Plus oder Minus</translation>
        </message>
        <message>
            <source>of at most 10,000 % either way</source>
            <translation>von höchstens 10 000 % im Plus oder Minus</translation>
        </message>
        <message>
            <source>from 0 to 1,000,000,000</source>
            <translation>von 0 bis 1 000 000 000</translation>
        </message>
        <message>
            <source>from 0 to 10,000 hours</source>
            <translation>von 0 bis 10 000 Stunden</translation>
        </message>
        <message>
            <source>from -50 to 500 °C</source>
            <translation>von -50 bis 500 °C</translation>
        </message>
        <message>
            <source>from -58 to 932 °F</source>
            <translation>von -58 bis 932 °F</translation>
        </message>
    </context>
    <context>
        <name>UsualSupplies</name>
        <message>
            <source>%1 sheets</source>
            <translation>%1 Bögen</translation>
        </message>
        <message>
            <source>Hot-fix tape</source>
            <translation>Hotfix-Folie</translation>
        </message>
        <message>
            <source>Template sheet</source>
            <translation>Schablone</translation>
        </message>
        <message>
            <source>Clear decal backing</source>
            <translation>Klarer Träger</translation>
        </message>
        <message>
            <source>Clear bag</source>
            <translation>Klarsichtbeutel</translation>
        </message>
        <message>
            <source>%1 bags</source>
            <translation>%1 Beutel</translation>
        </message>
        <message>
            <source>Care card</source>
            <translation>Pflegekarte</translation>
        </message>
        <message>
            <source>%1 cards</source>
            <translation>%1 Karten</translation>
        </message>
        <message>
            <source>%1 gross</source>
            <translation>%1 Gros</translation>
        </message>
    </context>
    <context>
        <name>Words</name>
        <message>
            <source>%1 mm (%2 in)</source>
            <translation>%1 mm (%2 in)</translation>
        </message>
        <message>
            <source>%1 s</source>
            <translation>%1 s</translation>
        </message>
        <message>
            <source>%1 %</source>
            <translation>%1 %</translation>
        </message>
        <message>
            <source>%1 x %2 mm (%3 x %4 in)</source>
            <translation>%1 x %2 mm (%3 x %4 in)</translation>
        </message>
        <message>
            <source>, </source>
            <comment>between the parts of a list</comment>
            <translation>, </translation>
        </message>
    </context>
    <context>
        <name>artwork</name>
        <message>
            <source>Smaller (−)</source>
            <translation>Kleiner (−)</translation>
        </message>
        <message>
            <source>Larger (+)</source>
            <translation>Größer (+)</translation>
        </message>
        <message>
            <source>Fit</source>
            <translation>Einpassen</translation>
        </message>
        <message>
            <source>All of it (0)</source>
            <translation>Alles (0)</translation>
        </message>
    </context>
    <context>
        <name>customers</name>
        <message>
            <source>certificate on file</source>
            <translation>Nachweis liegt vor</translation>
        </message>
    </context>
    <context>
        <name>places</name>
        <message>
            <source>Counter</source>
            <translation>Theke</translation>
        </message>
        <message>
            <source>Designs</source>
            <translation>Motive</translation>
        </message>
        <message>
            <source>Supplies</source>
            <translation>Material</translation>
        </message>
        <message>
            <source>Buying</source>
            <translation>Einkauf</translation>
        </message>
        <message>
            <source>Jobs</source>
            <translation>Aufträge</translation>
        </message>
        <message>
            <source>Bench</source>
            <translation>Werkbank</translation>
        </message>
        <message>
            <source>Customers</source>
            <translation>Kunden</translation>
        </message>
        <message>
            <source>Figures</source>
            <translation>Auswertung</translation>
        </message>
        <message>
            <source>Shop</source>
            <translation>Betrieb</translation>
        </message>
        <message>
            <source>Set up</source>
            <translation>Einrichten</translation>
        </message>
    </context>
    <context>
        <name>sp::artwork::ArtworkPage</name>
        <message>
            <source>Stones a piece</source>
            <translation>Steine je Stück</translation>
        </message>
        <message>
            <source>&amp;Holes are larger than their stones by</source>
            <translation>&amp;Löcher sind größer als ihre Steine um</translation>
        </message>
        <message>
            <source>empty: drawn at the size of the stone</source>
            <translation>leer: in Steingröße gezeichnet</translation>
        </message>
        <message>
            <source>How long is one unit of this file?</source>
            <translation>Wie lang ist eine Einheit dieser Datei?</translation>
        </message>
        <message>
            <source>The file does not say. The likeliest is first and shown; choose the one whose size is right.</source>
            <translation>Die Datei sagt es nicht. Die wahrscheinlichste steht oben und ist gezeigt; wählen Sie die, deren Größe stimmt.</translation>
        </message>
        <message>
            <source>This one stone is</source>
            <translation>Dieser eine Stein ist</translation>
        </message>
        <message>
            <source>which stone?</source>
            <translation>welcher Stein?</translation>
        </message>
        <message>
            <source>Picked stone</source>
            <translation>Gewählter Stein</translation>
        </message>
        <message>
            <source>Give the design a name.</source>
            <translation>Geben Sie dem Motiv einen Namen.</translation>
        </message>
        <message>
            <source>Design &amp;name</source>
            <translation>&amp;Name des Motivs</translation>
        </message>
        <message>
            <source>&amp;Use for a new design</source>
            <translation>Für ein neues &amp;Motiv nehmen</translation>
        </message>
        <message>
            <source>&amp;Close</source>
            <translation>&amp;Schließen</translation>
        </message>
        <message>
            <source>Drawn twice, counted once.</source>
            <translation>Doppelt gezeichnet, einmal gezählt.</translation>
        </message>
        <message>
            <source>No stone: %1.</source>
            <translation>Kein Stein: %1.</translation>
        </message>
        <message>
            <source>Estimate from its shape</source>
            <translation>Nach der Form schätzen</translation>
        </message>
        <message>
            <source>no stone fits</source>
            <translation>kein Stein passt</translation>
        </message>
        <message>
            <source>%1: nothing could be a stone</source>
            <translation>%1: Nichts könnte ein Stein sein</translation>
        </message>
        <message>
            <source>%1 of them with no stone chosen yet</source>
            <translation>%1 davon noch ohne gewählten Stein</translation>
        </message>
        <message>
            <source>Use for “%1”</source>
            <translation>Für „%1“ nehmen</translation>
        </message>
        <message>
            <source>None. Click one, or Page Down in the picture.</source>
            <translation>Keiner. Klicken Sie einen an oder drücken Sie im Bild „Bild ab“.</translation>
        </message>
        <message>
            <source>Drag or the arrows move it, Ctrl and the wheel or + and − zoom; click a stone to see its size.</source>
            <translation>Ziehen oder Pfeiltasten verschieben, Strg mit Mausrad oder + und − zoomt; ein Klick auf einen Stein zeigt seine Größe.</translation>
        </message>
        <message>
            <source>no size fits</source>
            <translation>keine Größe passt</translation>
        </message>
        <message>
            <source>%1 mm across</source>
            <translation>%1 mm Durchmesser</translation>
        </message>
        <message>
            <source>no colour</source>
            <translation>keine Farbe</translation>
        </message>
        <message>
            <source>layer %1</source>
            <translation>Ebene %1</translation>
        </message>
        <message>
            <source>overlaps its neighbour</source>
            <translation>überlappt seinen Nachbarn</translation>
        </message>
        <message>
            <source>left out</source>
            <translation>ausgelassen</translation>
        </message>
        <message>
            <source>no stone chosen yet</source>
            <translation>noch kein Stein gewählt</translation>
        </message>
        <message>
            <source>Stone %1 of %2: %3</source>
            <translation>Stein %1 von %2: %3</translation>
        </message>
        <message>
            <source>it is counted and no longer estimated</source>
            <translation>es ist gezählt und nicht mehr geschätzt</translation>
        </message>
        <message>
            <source>%1 becomes %2</source>
            <translation>aus %1 wird %2</translation>
        </message>
        <message>
            <source>%1 from %2 to %3</source>
            <translation>%1 von %2 auf %3</translation>
        </message>
        <message>
            <source>templates are to be cut anew</source>
            <translation>Schablonen sind neu zu schneiden</translation>
        </message>
        <message numerus="yes">
            <source>%1 pieces: %2 becomes %3 each</source>
            <translation>
                <numerusform>%1 Stück: je Stück %3 statt %2</numerusform>
                <numerusform>%1 Stück: je Stück %3 statt %2</numerusform>
            </translation>
        </message>
        <message>
            <source>“%1” is so already.</source>
            <translation>„%1“ ist schon so.</translation>
        </message>
        <message>
            <source>“%1” would change: %2.</source>
            <translation>„%1“ würde sich ändern: %2.</translation>
        </message>
    </context>
    <context>
        <name>sp::artwork::ArtworkPresenter</name>
        <message>
            <source>like %1</source>
            <translation>wie %1</translation>
        </message>
        <message>
            <source>%1 for %2</source>
            <translation>%1 für %2</translation>
        </message>
        <message>
            <source>%1 and %2 more</source>
            <translation>%1 und %2 weitere</translation>
        </message>
        <message>
            <source>Check these: no stone of the size looks like the colour drawn: %1.</source>
            <translation>Prüfen Sie diese: Kein Stein der Größe sieht aus wie die gezeichnete Farbe: %1.</translation>
        </message>
        <message>
            <source>No file has been counted.</source>
            <translation>Es ist keine Datei gezählt.</translation>
        </message>
        <message>
            <source>Choose how the file is to be read first: it does not say how long its unit is.</source>
            <translation>Wählen Sie erst, wie die Datei zu lesen ist: Sie sagt nicht, wie lang ihre Einheit ist.</translation>
        </message>
        <message>
            <source>Some holes fit no stone size; choose a stone for them or leave them out.</source>
            <translation>Manche Löcher passen zu keiner Steingröße; wählen Sie einen Stein dafür oder lassen Sie sie aus.</translation>
        </message>
        <message>
            <source>There is no %1 stone among the supplies; choose another or leave them out.</source>
            <translation>Im Material gibt es keinen Stein in %1; wählen Sie einen anderen oder lassen Sie sie aus.</translation>
        </message>
        <message>
            <source>Everything is left out; choose a stone for at least one colour.</source>
            <translation>Alles ist ausgelassen; wählen Sie für mindestens eine Farbe einen Stein.</translation>
        </message>
        <message>
            <source>New design</source>
            <translation>Neues Motiv</translation>
        </message>
    </context>
    <context>
        <name>sp::artwork::ArtworkView</name>
        <message>
            <source>Picture of the artwork</source>
            <translation>Bild der Zeichnung</translation>
        </message>
    </context>
    <context>
        <name>sp::artwork::ColourRows</name>
        <message>
            <source>no size</source>
            <translation>keine Größe</translation>
        </message>
        <message>
            <source>no colour</source>
            <translation>keine Farbe</translation>
        </message>
        <message>
            <source>Leave out</source>
            <translation>Auslassen</translation>
        </message>
        <message>
            <source>no stone</source>
            <translation>kein Stein</translation>
        </message>
        <message>
            <source>%1 %2</source>
            <translation>%1 %2</translation>
        </message>
        <message>
            <source>%1 left out</source>
            <translation>%1 ausgelassen</translation>
        </message>
        <message>
            <source>Set one by one: %1</source>
            <translation>Einzeln gesetzt: %1</translation>
        </message>
        <message>
            <source>Further colours: %1, stones: %2. They go to the stone whose colour is nearest.</source>
            <translation>Weitere Farben: %1, Steine: %2. Sie gehen an den Stein mit der nächsten Farbe.</translation>
        </message>
        <message>
            <source>Stone for %1 %2</source>
            <translation>Stein für %1 %2</translation>
        </message>
        <message>
            <source>which stone?</source>
            <translation>welcher Stein?</translation>
        </message>
        <message>
            <source>looks different; the nearest there is</source>
            <translation>sieht anders aus; näher kommt keiner</translation>
        </message>
        <message>
            <source>Stones</source>
            <translation>Steine</translation>
        </message>
    </context>
    <context>
        <name>sp::artwork::DesignView</name>
        <message>
            <source>Picture of %1</source>
            <translation>Bild von %1</translation>
        </message>
        <message>
            <source>No picture of %1</source>
            <translation>Kein Bild von %1</translation>
        </message>
        <message>
            <source>%1, %2 wide, %3 high</source>
            <comment>522 stones, 5 in wide, 7 in high</comment>
            <translation>%1, %2 breit, %3 hoch</translation>
        </message>
        <message>
            <source>No drawing is kept with this design.</source>
            <translation>Zu diesem Motiv ist keine Zeichnung aufbewahrt.</translation>
        </message>
    </context>
    <context>
        <name>sp::artwork::EstimateColours</name>
        <message>
            <source>Each colour in a stone of its o&amp;wn</source>
            <translation>Jede &amp;Farbe in einem eigenen Stein</translation>
        </message>
        <message>
            <source>It has %1 colours, too many for a stone each; all are set as one.</source>
            <translation>Es hat %1 Farben, zu viele für je einen Stein; alle werden als eine gesetzt.</translation>
        </message>
        <message>
            <source>Stone for %1</source>
            <translation>Stein für %1</translation>
        </message>
        <message>
            <source>which stone?</source>
            <translation>welcher Stein?</translation>
        </message>
        <message>
            <source>no stone fits, or nothing of it is to be seen</source>
            <translation>kein Stein passt, oder davon ist nichts zu sehen</translation>
        </message>
        <message>
            <source>%1, by hand %2 to %3</source>
            <translation>%1, von Hand %2 bis %3</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1: %2</translation>
        </message>
    </context>
    <context>
        <name>sp::artwork::EstimateFields</name>
        <message>
            <source>&amp;Lettering</source>
            <translation>Schriftz&amp;ug</translation>
        </message>
        <message>
            <source>S&amp;hape in a file</source>
            <translation>F&amp;orm aus einer Datei</translation>
        </message>
        <message>
            <source>&amp;Text, on one or several lines</source>
            <translation>&amp;Text, ein- oder mehrzeilig</translation>
        </message>
        <message>
            <source>No font is called “%1” here; choose from the list.</source>
            <translation>Keine Schrift heißt hier „%1“; wählen Sie aus der Liste.</translation>
        </message>
        <message>
            <source>F&amp;ont</source>
            <translation>Sch&amp;rift</translation>
        </message>
        <message>
            <source>Height of c&amp;apitals</source>
            <translation>Höhe der &amp;Großbuchstaben</translation>
        </message>
        <message>
            <source>&amp;Choose a file…</source>
            <translation>&amp;Datei wählen…</translation>
        </message>
        <message>
            <source>An SVG, DXF or PLT file with closed or filled outlines</source>
            <translation>Eine SVG-, DXF- oder PLT-Datei mit geschlossenen oder gefüllten Konturen</translation>
        </message>
        <message>
            <source>He&amp;ight of all of it</source>
            <translation>Ges&amp;amthöhe</translation>
        </message>
        <message>
            <source>&amp;Stone</source>
            <translation>&amp;Stein</translation>
        </message>
        <message>
            <source>Pitch, cent&amp;re to centre</source>
            <translation>Tei&amp;lung, Mitte zu Mitte</translation>
        </message>
        <message>
            <source>&amp;Free at the edge</source>
            <translation>Am Rand fr&amp;ei</translation>
        </message>
        <message>
            <source>empty: stones touch the edge</source>
            <translation>leer: Steine berühren den Rand</translation>
        </message>
        <message>
            <source>Stones stand</source>
            <translation>Steine stehen</translation>
        </message>
        <message>
            <source>along the o&amp;utline</source>
            <translation>entlang der &amp;Kontur</translation>
        </message>
        <message>
            <source>in ro&amp;ws</source>
            <translation>&amp;in Reihen</translation>
        </message>
        <message>
            <source>&amp;both</source>
            <translation>&amp;beides</translation>
        </message>
        <message>
            <source>How the stones stand in the shape</source>
            <translation>Wie die Steine in der Form stehen</translation>
        </message>
        <message>
            <source>Stone of the outline</source>
            <translation>Stein der Kontur</translation>
        </message>
        <message>
            <source>empty: the same stone</source>
            <translation>leer: derselbe Stein</translation>
        </message>
        <message>
            <source>empty: %1</source>
            <translation>leer: %1</translation>
        </message>
        <message>
            <source>empty: as drawn, %1</source>
            <translation>leer: wie gezeichnet, %1</translation>
        </message>
        <message>
            <source>No file is chosen yet.</source>
            <translation>Es ist noch keine Datei gewählt.</translation>
        </message>
        <message>
            <source>the font</source>
            <translation>die Schrift</translation>
        </message>
        <message>
            <source>the height</source>
            <translation>die Höhe</translation>
        </message>
        <message>
            <source>what is free at the edge</source>
            <translation>der freie Rand</translation>
        </message>
        <message>
            <source>the stone of each colour</source>
            <translation>der Stein jeder Farbe</translation>
        </message>
        <message>
            <source>the stone</source>
            <translation>der Stein</translation>
        </message>
        <message>
            <source>the stone of the outline</source>
            <translation>der Stein der Kontur</translation>
        </message>
        <message>
            <source>the pitch</source>
            <translation>die Teilung</translation>
        </message>
        <message>
            <source>There is no estimate until %1 is right.</source>
            <translation>Keine Schätzung, solange %1 nicht stimmt.</translation>
        </message>
        <message>
            <source>This stone is %1 mm across; give at least that.</source>
            <translation>Dieser Stein hat %1 mm Durchmesser; geben Sie mindestens so viel an.</translation>
        </message>
    </context>
    <context>
        <name>sp::artwork::EstimatePage</name>
        <message>
            <source>Picture of where the stones would sit</source>
            <translation>Bild, wo die Steine säßen</translation>
        </message>
        <message>
            <source>Give the design a name.</source>
            <translation>Geben Sie dem Motiv einen Namen.</translation>
        </message>
        <message>
            <source>Design &amp;name</source>
            <translation>&amp;Name des Motivs</translation>
        </message>
        <message>
            <source>&amp;Price it</source>
            <translation>&amp;Preis berechnen</translation>
        </message>
        <message>
            <source>Makes a design of it and puts it on the order</source>
            <translation>Macht ein Motiv daraus und setzt es auf die Bestellung</translation>
        </message>
        <message>
            <source>Make a &amp;design of it</source>
            <translation>&amp;Motiv daraus machen</translation>
        </message>
        <message>
            <source>Clos&amp;e</source>
            <translation>S&amp;chließen</translation>
        </message>
        <message>
            <source>Estimate stones</source>
            <translation>Steine schätzen</translation>
        </message>
        <message>
            <source>Setting stones…</source>
            <translation>Steine werden gesetzt…</translation>
        </message>
        <message>
            <source>An estimate, for a price before there is artwork. A cut file is counted, not estimated.</source>
            <translation>Eine Schätzung, für einen Preis, bevor es eine Zeichnung gibt. Eine Schnittdatei wird gezählt, nicht geschätzt.</translation>
        </message>
        <message>
            <source>About %1</source>
            <translation>Etwa %1</translation>
        </message>
        <message>
            <source>An estimate: laid out by hand it takes %1 to %2. %3 over all.</source>
            <translation>Eine Schätzung: Von Hand gelegt braucht es %1 bis %2. %3 im Ganzen.</translation>
        </message>
        <message>
            <source>Drag or the arrows move it, Ctrl and the wheel or + and − zoom.</source>
            <translation>Ziehen oder Pfeiltasten verschieben, Strg mit Mausrad oder + und − zoomt.</translation>
        </message>
        <message>
            <source>%1. %2</source>
            <translation>%1. %2</translation>
        </message>
    </context>
    <context>
        <name>sp::artwork::EstimatePresenter</name>
        <message>
            <source>There is no stone among the supplies yet; add one at Supplies first.</source>
            <translation>Im Material gibt es noch keinen Stein; fügen Sie erst unter „Material“ einen hinzu.</translation>
        </message>
        <message>
            <source>Choose a file with the shape to set with stones.</source>
            <translation>Wählen Sie eine Datei mit der Form, die mit Steinen besetzt werden soll.</translation>
        </message>
        <message>
            <source>Type what is to be spelled in stones.</source>
            <translation>Tippen Sie, was in Steinen geschrieben werden soll.</translation>
        </message>
        <message>
            <source>Choose a font.</source>
            <translation>Wählen Sie eine Schrift.</translation>
        </message>
        <message>
            <source>%1 does not say how large it is; type how high it shall be.</source>
            <translation>%1 sagt nicht, wie groß es ist; tippen Sie, wie hoch es werden soll.</translation>
        </message>
        <message>
            <source>Choose a stone.</source>
            <translation>Wählen Sie einen Stein.</translation>
        </message>
        <message>
            <source>Choose a stone for each colour, or leave it out.</source>
            <translation>Wählen Sie für jede Farbe einen Stein oder lassen Sie sie aus.</translation>
        </message>
        <message>
            <source>%1 takes more than is estimated at once; estimate a part of it.</source>
            <translation>%1 braucht mehr, als auf einmal geschätzt wird; schätzen Sie einen Teil davon.</translation>
        </message>
        <message>
            <source>lettering in %1.svg</source>
            <translation>Schriftzug in %1.svg</translation>
        </message>
        <message>
            <source>The stones are still being set; try again in a moment.</source>
            <translation>Die Steine werden noch gesetzt; versuchen Sie es gleich noch einmal.</translation>
        </message>
        <message>
            <source>Estimated, not counted</source>
            <translation>Geschätzt, nicht gezählt</translation>
        </message>
        <message>
            <source>%1: %2 to %3 stones laid out by hand.</source>
            <translation>%1: %2 bis %3 Steine, von Hand gelegt.</translation>
        </message>
    </context>
    <context>
        <name>sp::artwork::LeftOutList</name>
        <message>
            <source>To look at</source>
            <translation>Zum Ansehen</translation>
        </message>
        <message>
            <source>drawn twice, counted once</source>
            <translation>doppelt gezeichnet, einmal gezählt</translation>
        </message>
        <message>
            <source>pairs of holes that overlap and would tear</source>
            <translation>Paare von Löchern, die sich überlappen und einreißen würden</translation>
        </message>
        <message>
            <source>Left out</source>
            <translation>Ausgelassen</translation>
        </message>
        <message>
            <source>Nothing: every outline is a stone.</source>
            <translation>Nichts: Jede Kontur ist ein Stein.</translation>
        </message>
        <message>
            <source>show</source>
            <translation>zeigen</translation>
        </message>
        <message>
            <source>Show in the picture: %1</source>
            <translation>Im Bild zeigen: %1</translation>
        </message>
    </context>
    <context>
        <name>sp::backups::BackupKeeper</name>
        <message>
            <source>No backup was made: the folder %1 cannot be written. See who may use it, or make room.</source>
            <translation>Es wurde nicht gesichert: Der Ordner %1 kann nicht beschrieben werden. Sehen Sie nach, wer ihn benutzen darf, oder schaffen Sie Platz.</translation>
        </message>
        <message>
            <source>No backup was made, because this book is damaged; the earlier backups are kept. %1</source>
            <translation>Es wurde nicht gesichert, weil dieses Buch beschädigt ist; die früheren Sicherungen bleiben. %1</translation>
        </message>
        <message>
            <source>No backup was made; the earlier ones are kept. %1</source>
            <translation>Es wurde nicht gesichert; die früheren Sicherungen bleiben. %1</translation>
        </message>
        <message>
            <source>The backup was made here, but not in the second place. %1</source>
            <translation>Die Sicherung wurde hier gemacht, aber nicht am zweiten Ort. %1</translation>
        </message>
    </context>
    <context>
        <name>sp::backups::BackupsDialog</name>
        <message>
            <source>Backups</source>
            <translation>Sicherungen</translation>
        </message>
        <message>
            <source>One is made when the book is closed and every 30 minutes, if something was changed, and is gone through before it counts. Kept are the last ten, one a day for two weeks and one a week for two months, in %1.</source>
            <translation>Gesichert wird beim Schließen des Buchs und alle 30 Minuten, wenn etwas geändert wurde; jede Sicherung wird durchgesehen, bevor sie zählt. Aufbewahrt werden die letzten zehn, eine am Tag für zwei Wochen und eine in der Woche für zwei Monate, in %1.</translation>
        </message>
        <message>
            <source>Made</source>
            <translation>Gemacht</translation>
        </message>
        <message>
            <source>Jobs</source>
            <translation>Aufträge</translation>
        </message>
        <message>
            <source>Last job</source>
            <translation>Letzter Auftrag</translation>
        </message>
        <message>
            <source>Gone through</source>
            <translation>Durchgesehen</translation>
        </message>
        <message>
            <source>&amp;Make one now</source>
            <translation>&amp;Jetzt sichern</translation>
        </message>
        <message>
            <source>&amp;Second place…</source>
            <translation>&amp;Zweiter Ort…</translation>
        </message>
        <message>
            <source>&amp;Restore this one</source>
            <translation>Diese &amp;wiederherstellen</translation>
        </message>
        <message>
            <source>&amp;Close</source>
            <translation>&amp;Schließen</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>being read…</source>
            <translation>wird gelesen…</translation>
        </message>
        <message>
            <source>There is no backup yet.</source>
            <translation>Es gibt noch keine Sicherung.</translation>
        </message>
        <message>
            <source>sound</source>
            <translation>in Ordnung</translation>
        </message>
        <message>
            <source>damaged</source>
            <translation>beschädigt</translation>
        </message>
        <message>
            <source>What was done since then cannot be read. %1</source>
            <translation>Was seitdem getan wurde, kann nicht gelesen werden. %1</translation>
        </message>
        <message>
            <source>Nothing was changed since then.</source>
            <translation>Seitdem wurde nichts geändert.</translation>
        </message>
        <message>
            <source>Since then: %1, no quote among them.</source>
            <translation>Seitdem: %1, kein Angebot dabei.</translation>
        </message>
        <message>
            <source>Lost would be %1 since then: %2 and others; with them %3.</source>
            <translation>Verloren wären %1 von seither: %2 und andere; mit ihnen %3.</translation>
        </message>
        <message>
            <source>Lost would be %1 since then: %2; with them %3.</source>
            <translation>Verloren wären %1 von seither: %2; mit ihnen %3.</translation>
        </message>
        <message>
            <source>It is restored into a file of its own, %1; the book that is there stays as it is.</source>
            <translation>Sie wird in eine eigene Datei wiederhergestellt, %1; das vorhandene Buch bleibt, wie es ist.</translation>
        </message>
        <message>
            <source>%1 %2</source>
            <translation>%1 %2</translation>
        </message>
        <message>
            <source>It is being restored…</source>
            <translation>Sie wird wiederhergestellt…</translation>
        </message>
        <message>
            <source>It is being restored: %1 %</source>
            <translation>Sie wird wiederhergestellt: %1 %</translation>
        </message>
        <message>
            <source>A second place for backups, on another disk or stick</source>
            <translation>Ein zweiter Ort für Sicherungen, auf einem anderen Datenträger oder Stick</translation>
        </message>
        <message>
            <source>If this disk fails, the backups on it go with the book: choose a second place on another disk or a stick.</source>
            <translation>Fällt dieser Datenträger aus, sind mit dem Buch auch die Sicherungen darauf verloren: Wählen Sie einen zweiten Ort auf einem anderen Datenträger oder einem Stick.</translation>
        </message>
        <message>
            <source>Each backup is put in %1 as well.</source>
            <translation>Jede Sicherung wird auch in %1 abgelegt.</translation>
        </message>
        <message>
            <source>The second place %1 is not there now; plug it in for the next backup.</source>
            <translation>Der zweite Ort %1 ist gerade nicht da; schließen Sie ihn für die nächste Sicherung an.</translation>
        </message>
    </context>
    <context>
        <name>sp::bench::BenchPage</name>
        <message>
            <source>Bench</source>
            <translation>Werkbank</translation>
        </message>
        <message>
            <source>What a new job of an hour at the bench would be told</source>
            <translation>Was für einen neuen Auftrag mit einer Werkbankstunde zugesagt würde</translation>
        </message>
        <message>
            <source>Nothing is agreed to and waits to be made.</source>
            <translation>Nichts Beauftragtes wartet auf die Fertigung.</translation>
        </message>
        <message>
            <source>To the jobs</source>
            <translation>Zu den Aufträgen</translation>
        </message>
        <message>
            <source>When a job is ready is known once Shop has the hours of the bench.</source>
            <translation>Wann ein Auftrag fertig ist, ist bekannt, sobald unter „Betrieb“ die Stunden der Werkbank stehen.</translation>
        </message>
        <message>
            <source>Type the bench hours</source>
            <translation>Werkbankstunden eintippen</translation>
        </message>
        <message>
            <source>The coming days</source>
            <translation>Die nächsten Tage</translation>
        </message>
        <message>
            <source>minutes, numbered as below</source>
            <translation>Minuten, nummeriert wie unten</translation>
        </message>
        <message>
            <source>To make, in this order</source>
            <translation>Zu fertigen, in dieser Reihenfolge</translation>
        </message>
        <message>
            <source>No.</source>
            <translation>Nr.</translation>
        </message>
        <message>
            <source>What</source>
            <translation>Was</translation>
        </message>
        <message>
            <source>For</source>
            <translation>Für</translation>
        </message>
        <message>
            <source>Minutes</source>
            <translation>Minuten</translation>
        </message>
        <message>
            <source>Ready</source>
            <translation>Fertig</translation>
        </message>
        <message>
            <source>Wanted by</source>
            <translation>Gewünscht</translation>
        </message>
        <message>
            <source>Holds</source>
            <translation>Termin</translation>
        </message>
        <message>
            <source>&amp;Open at the Counter</source>
            <translation>An der &amp;Theke öffnen</translation>
        </message>
        <message>
            <source>Bench &amp;sheet</source>
            <translation>&amp;Laufzettel</translation>
        </message>
        <message>
            <source>What it is made by: colours in brushing order, what to fetch and cut, press and steps</source>
            <translation>Wonach gefertigt wird: Farben in Bürstfolge, was zu holen und zu schneiden ist, Presse und Schritte</translation>
        </message>
        <message>
            <source>Moves it on to the next stage; undo takes it back</source>
            <translation>Setzt ihn auf den nächsten Stand; Rückgängig nimmt es zurück</translation>
        </message>
        <message>
            <source>not known, see No. %1</source>
            <translation>nicht bekannt, siehe Nr. %1</translation>
        </message>
        <message>
            <source>not within %1 years</source>
            <translation>nicht innerhalb von %1 Jahren</translation>
        </message>
        <message numerus="yes">
            <source>late, by %n days</source>
            <translation>
                <numerusform>zu spät, um %n Tag</numerusform>
                <numerusform>zu spät, um %n Tage</numerusform>
            </translation>
        </message>
        <message>
            <source>holds</source>
            <translation>hält</translation>
        </message>
        <message>
            <source>deposit missing</source>
            <translation>Anzahlung fehlt</translation>
        </message>
        <message>
            <source>waits for supplies, %1</source>
            <translation>wartet auf Material, %1</translation>
        </message>
        <message>
            <source>supplies missing</source>
            <translation>Material fehlt</translation>
        </message>
        <message numerus="yes">
            <source>%n jobs to make</source>
            <translation>
                <numerusform>%n Auftrag zu fertigen</numerusform>
                <numerusform>%n Aufträge zu fertigen</numerusform>
            </translation>
        </message>
        <message>
            <source>%1, %2 late</source>
            <translation>%1, %2 zu spät</translation>
        </message>
        <message>
            <source>An hour more: ready %1</source>
            <translation>Eine Stunde mehr: fertig %1</translation>
        </message>
        <message>
            <source>&amp;Next: %1</source>
            <translation>&amp;Weiter: %1</translation>
        </message>
    </context>
    <context>
        <name>sp::bench::LoadPicture</name>
        <message>
            <source>The coming days</source>
            <translation>Die nächsten Tage</translation>
        </message>
        <message>
            <source>closed</source>
            <translation>geschlossen</translation>
        </message>
        <message>
            <source>no hours</source>
            <translation>keine Stunden</translation>
        </message>
        <message>
            <source>full</source>
            <translation>voll</translation>
        </message>
        <message>
            <source>%1 free</source>
            <translation>%1 frei</translation>
        </message>
        <message>
            <source>job %1: %2 min</source>
            <translation>Auftrag %1: %2 min</translation>
        </message>
    </context>
    <context>
        <name>sp::buying::BuyingPage</name>
        <message>
            <source>Here stands the cheapest way to buy for a design or an order, once there is a design.</source>
            <translation>Hier steht der günstigste Einkauf für ein Motiv oder eine Bestellung, sobald es ein Motiv gibt.</translation>
        </message>
        <message>
            <source>Go to Designs</source>
            <translation>Zu den Motiven</translation>
        </message>
        <message>
            <source>Buying</source>
            <translation>Einkauf</translation>
        </message>
        <message>
            <source>List as &amp;CSV…</source>
            <translation>Liste als &amp;CSV…</translation>
        </message>
        <message>
            <source>Shopping &amp;list…</source>
            <translation>Einkaufs&amp;liste…</translation>
        </message>
        <message>
            <source>The packs of the cheapest way, supplier by supplier, as a PDF to print</source>
            <translation>Die Packungen des günstigsten Einkaufs, Lieferant für Lieferant, als PDF zum Drucken</translation>
        </message>
        <message>
            <source>&amp;Design</source>
            <translation>&amp;Motiv</translation>
        </message>
        <message>
            <source>&amp;Pieces</source>
            <translation>&amp;Stück</translation>
        </message>
        <message>
            <source>The &amp;order at the Counter instead</source>
            <translation>Stattdessen die &amp;Bestellung an der Theke</translation>
        </message>
        <message>
            <source>Use &amp;up what is on the shelf</source>
            <translation>Lager a&amp;ufbrauchen</translation>
        </message>
        <message>
            <source>This shop cuts its own te&amp;mplates</source>
            <translation>Dieser Betrieb schneidet seine Sc&amp;hablonen selbst</translation>
        </message>
        <message>
            <source>Otherwise templates come ready cut with a kit</source>
            <translation>Sonst kommen Schablonen fertig geschnitten mit einem Set</translation>
        </message>
        <message>
            <source>Working…</source>
            <translation>Wird berechnet…</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <comment>a pack, and of what</comment>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>Left out, because no price is given: %1</source>
            <translation>Ausgelassen, weil kein Preis angegeben ist: %1</translation>
        </message>
        <message>
            <source>Saved as %1.</source>
            <translation>Gespeichert als %1.</translation>
        </message>
        <message>
            <source>What was bought for %1 is on the shelf, at what it cost.</source>
            <translation>Was für %1 gekauft wurde, ist im Lager, zu seinen Kosten.</translation>
        </message>
        <message>
            <source>Shopping list</source>
            <translation>Einkaufsliste</translation>
        </message>
        <message>
            <source>Staircase</source>
            <translation>Kostentreppe</translation>
        </message>
        <message>
            <source>Save the shopping list</source>
            <translation>Einkaufsliste speichern</translation>
        </message>
        <message>
            <source>Tables (*.csv)</source>
            <translation>Tabellen (*.csv)</translation>
        </message>
    </context>
    <context>
        <name>sp::buying::BuyingPresenter</name>
        <message>
            <source>There is no order at the Counter: put a design on it there.</source>
            <translation>An der Theke ist keine Bestellung: Setzen Sie dort ein Motiv darauf.</translation>
        </message>
        <message>
            <source>Choose a design to buy for.</source>
            <translation>Wählen Sie ein Motiv, für das gekauft wird.</translation>
        </message>
        <message>
            <source>Say how many pieces are to be made.</source>
            <translation>Sagen Sie, wie viele Stück zu fertigen sind.</translation>
        </message>
        <message>
            <source>There is no plan to put on the shelf yet.</source>
            <translation>Es gibt noch keinen Plan, der ins Lager gebucht werden könnte.</translation>
        </message>
        <message>
            <source>The order at the Counter</source>
            <translation>Die Bestellung an der Theke</translation>
        </message>
    </context>
    <context>
        <name>sp::buying::CostCurvePanel</name>
        <message>
            <source>Cost of one piece by quantity</source>
            <translation>Kosten eines Stücks nach Menge</translation>
        </message>
        <message>
            <source>&amp;Table</source>
            <translation>&amp;Tabelle</translation>
        </message>
        <message>
            <source>Shows the figures behind the picture (T)</source>
            <translation>Zeigt die Zahlen hinter dem Bild (T)</translation>
        </message>
        <message>
            <source>Print the st&amp;aircase…</source>
            <translation>Kostentrepp&amp;e drucken…</translation>
        </message>
        <message>
            <source>Pieces</source>
            <translation>Stück</translation>
        </message>
        <message>
            <source>Kits, each</source>
            <translation>Sets, je Stück</translation>
        </message>
        <message>
            <source>Bulk, each</source>
            <translation>Packungen, je Stück</translation>
        </message>
        <message>
            <source>Mix, each</source>
            <translation>Mischung, je Stück</translation>
        </message>
        <message>
            <source>Cheapest</source>
            <translation>Am günstigsten</translation>
        </message>
        <message>
            <source>Proven</source>
            <translation>Nachgewiesen</translation>
        </message>
        <message>
            <source>Working…</source>
            <translation>Wird berechnet…</translation>
        </message>
        <message>
            <source>working on more…</source>
            <translation>wird weiter berechnet…</translation>
        </message>
        <message>
            <source>Nothing to buy</source>
            <translation>Nichts zu kaufen</translation>
        </message>
        <message>
            <source>No way</source>
            <translation>Nicht möglich</translation>
        </message>
        <message>
            <source>yes</source>
            <translation>ja</translation>
        </message>
        <message>
            <source>no</source>
            <translation>nein</translation>
        </message>
    </context>
    <context>
        <name>sp::buying::CostCurvePicture</name>
        <message>
            <source>Staircase: cost of one piece by quantity</source>
            <translation>Kostentreppe: Kosten eines Stücks nach Menge</translation>
        </message>
        <message>
            <source>Left and Right move along the quantities; T shows the table</source>
            <translation>Links und Rechts gehen die Mengen entlang; T zeigt die Tabelle</translation>
        </message>
        <message>
            <source>Working out the staircase…</source>
            <translation>Die Kostentreppe wird berechnet…</translation>
        </message>
    </context>
    <context>
        <name>sp::buying::KitPanel</name>
        <message>
            <source>Nothing is taken from the shelf here.</source>
            <translation>Hier wird nichts vom Lager genommen.</translation>
        </message>
        <message>
            <source>What one %1 makes</source>
            <translation>Was ein Set „%1“ ergibt</translation>
        </message>
        <message>
            <source>A piece, shipping in</source>
            <translation>Je Stück, mit Versand</translation>
        </message>
        <message>
            <source>from kits</source>
            <translation>mit Sets</translation>
        </message>
        <message>
            <source>from bulk</source>
            <translation>in Packungen</translation>
        </message>
        <message>
            <source>if you make %1</source>
            <translation>bei %1 Stück</translation>
        </message>
    </context>
    <context>
        <name>sp::buying::StrategyColumn</name>
        <message>
            <source>Opens to what it is made of</source>
            <translation>Lässt sich aufklappen und zeigt, woraus es besteht</translation>
        </message>
        <message>
            <source>%1, figure by figure</source>
            <translation>%1, Zahl für Zahl</translation>
        </message>
        <message>
            <source>Bought: put it on the shelf</source>
            <translation>Gekauft: ins Lager buchen</translation>
        </message>
        <message>
            <source>%1 bought: put it on the shelf</source>
            <translation>%1 gekauft: ins Lager buchen</translation>
        </message>
        <message>
            <source>Counts these packs in at what they cost, with their share of the shipping</source>
            <translation>Bucht diese Packungen zu ihren Kosten ein, mit ihrem Anteil am Versand</translation>
        </message>
        <message>
            <source>✓ cheapest</source>
            <translation>✓ am günstigsten</translation>
        </message>
        <message>
            <source>%1 a piece</source>
            <translation>%1 je Stück</translation>
        </message>
        <message>
            <source>Proven: it cannot be bought for less this way.</source>
            <translation>Nachgewiesen: So ist es nicht für weniger zu kaufen.</translation>
        </message>
        <message>
            <source>At most %1 above the cheapest possible.</source>
            <translation>Höchstens %1 über dem günstigsten Möglichen.</translation>
        </message>
        <message>
            <source>Proving… at most %1 above the cheapest possible.</source>
            <translation>Wird nachgewiesen… höchstens %1 über dem günstigsten Möglichen.</translation>
        </message>
        <message>
            <source>Nothing has to be bought: the shelf is enough.</source>
            <translation>Es muss nichts gekauft werden: Das Lager reicht.</translation>
        </message>
        <message>
            <source>No mix is cheaper than %1.</source>
            <translation>Keine Mischung ist günstiger als %1.</translation>
        </message>
    </context>
    <context>
        <name>sp::counter::ChoiceBar</name>
        <message>
            <source>Name of this c&amp;hoice</source>
            <translation>Name dieser &amp;Variante</translation>
        </message>
        <message>
            <source>The same order once more, to change and to choose from (Ctrl+D); at most four</source>
            <translation>Dieselbe Bestellung noch einmal, zum Ändern und zur Wahl (Strg+D); höchstens vier</translation>
        </message>
        <message>
            <source>Offer another choice</source>
            <translation>Weitere Variante anbieten</translation>
        </message>
        <message>
            <source>+ choice</source>
            <translation>+ Variante</translation>
        </message>
        <message>
            <source>Take this choice out</source>
            <translation>Diese Variante herausnehmen</translation>
        </message>
    </context>
    <context>
        <name>sp::counter::ChoiceCard</name>
        <message>
            <source>%1 each</source>
            <translation>je %1</translation>
        </message>
    </context>
    <context>
        <name>sp::counter::CostTreeModel</name>
        <message numerus="yes">
            <source> = %1 for %2 pieces</source>
            <translation>
                <numerusform> = %1 für %2 Stück</numerusform>
                <numerusform> = %1 für %2 Stück</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>sp::counter::CounterPage</name>
        <message>
            <source>Order</source>
            <translation>Bestellung</translation>
        </message>
        <message>
            <source>Line</source>
            <translation>Position</translation>
        </message>
        <message>
            <source>Slip</source>
            <translation>Zettel</translation>
        </message>
        <message>
            <source>To pay</source>
            <translation>Zu zahlen</translation>
        </message>
        <message>
            <source>This revises quote %1, which is kept as it was given.</source>
            <translation>Dies überarbeitet Angebot %1, das bleibt, wie es abgegeben wurde.</translation>
        </message>
        <message>
            <source>What is different</source>
            <translation>Was anders ist</translation>
        </message>
        <message>
            <source>Quote %1 was given on %2 and stays as it is.</source>
            <translation>Angebot %1 wurde am %2 abgegeben und bleibt, wie es ist.</translation>
        </message>
        <message>
            <source>Reckoned by today’s rules from the prices of that day it would be %1; what was given is shown.</source>
            <translation>Nach heutigen Regeln mit den Preisen jenes Tages wären es %1; gezeigt wird das Abgegebene.</translation>
        </message>
        <message>
            <source>New order</source>
            <translation>Neue Bestellung</translation>
        </message>
        <message>
            <source>This quote cannot be given yet: %1</source>
            <translation>Dieses Angebot kann noch nicht abgegeben werden: %1</translation>
        </message>
        <message>
            <source>There is no sheet to print yet: %1</source>
            <translation>Es gibt noch kein Blatt zu drucken: %1</translation>
        </message>
        <message>
            <source>Draft</source>
            <translation>Entwurf</translation>
        </message>
        <message>
            <source>Quote %1</source>
            <translation>Angebot %1</translation>
        </message>
    </context>
    <context>
        <name>sp::counter::CounterPresenter</name>
        <message>
            <source>Line %1, %2: %3</source>
            <translation>Position %1, %2: %3</translation>
        </message>
        <message>
            <source>Choice %1: %2</source>
            <translation>Variante %1: %2</translation>
        </message>
    </context>
    <context>
        <name>sp::counter::LinePanel</name>
        <message>
            <source>Take this line out of the order</source>
            <translation>Diese Position aus der Bestellung nehmen</translation>
        </message>
        <message>
            <source>Give the line a name; the customer reads it on the sheet.</source>
            <translation>Geben Sie der Position einen Namen; der Kunde liest ihn auf dem Blatt.</translation>
        </message>
        <message>
            <source>&amp;Pieces</source>
            <translation>&amp;Stück</translation>
        </message>
        <message>
            <source>&amp;On</source>
            <translation>&amp;Auf</translation>
        </message>
        <message>
            <source>&amp;Name on the sheet</source>
            <translation>&amp;Name auf dem Blatt</translation>
        </message>
        <message>
            <source>Pr&amp;ice each</source>
            <translation>Pre&amp;is je Stück</translation>
        </message>
        <message>
            <source>Front</source>
            <comment>where on the piece</comment>
            <translation>Vorne</translation>
        </message>
        <message>
            <source>&amp;Templates on the wall</source>
            <translation>Schablonen an &amp;Wand</translation>
        </message>
        <message>
            <source>Taxab&amp;le</source>
            <translation>S&amp;teuerpflichtig</translation>
        </message>
        <message>
            <source>&amp;Where on it</source>
            <translation>Wo dara&amp;uf</translation>
        </message>
        <message>
            <source>Wi&amp;dth</source>
            <translation>Br&amp;eite</translation>
        </message>
        <message>
            <source>&amp;Height</source>
            <translation>&amp;Höhe</translation>
        </message>
        <message>
            <source>Tax rate</source>
            <translation>Steuersatz</translation>
        </message>
        <message>
            <source>At no charge</source>
            <translation>Kostenlos</translation>
        </message>
        <message>
            <source>Done again, a sample, a gift: no price, its cost counts in the figures</source>
            <translation>Noch einmal gemacht, ein Muster, ein Geschenk: kein Preis, die Kosten zählen in der Auswertung</translation>
        </message>
        <message>
            <source>Type part of a design’s name</source>
            <translation>Teil des Motivnamens tippen</translation>
        </message>
        <message>
            <source>Add a design els&amp;ewhere on it</source>
            <translation>&amp;Motiv an weiterer Stelle</translation>
        </message>
        <message>
            <source>Bench</source>
            <translation>Werkbank</translation>
        </message>
        <message>
            <source>Nothing is ordered yet.</source>
            <translation>Noch ist nichts bestellt.</translation>
        </message>
        <message>
            <source>Type a design</source>
            <translation>Motiv tippen</translation>
        </message>
        <message>
            <source>The picture is of other counts than this line has.</source>
            <translation>Das Bild gehört zu anderen Zahlen als denen dieser Position.</translation>
        </message>
        <message>
            <source>The customer’s own garment</source>
            <translation>Das eigene Textil des Kunden</translation>
        </message>
        <message>
            <source>%1 %2 %</source>
            <translation>%1 %2 %</translation>
        </message>
        <message>
            <source>line %1 of %2</source>
            <translation>Position %1 von %2</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <comment>a place and its design</comment>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>Take this place off the piece</source>
            <translation>Diese Stelle vom Stück nehmen</translation>
        </message>
        <message>
            <source>%1 for %2</source>
            <translation>%1 für %2</translation>
        </message>
        <message>
            <source>Its stones are estimated, not counted.</source>
            <translation>Die Steine sind geschätzt, nicht gezählt.</translation>
        </message>
        <message>
            <source>Made with the set of line %1.</source>
            <translation>Wird mit dem Satz von Position %1 gemacht.</translation>
        </message>
        <message>
            <source>A set of its own: its size, stones or plan are not those of line %1.</source>
            <translation>Ein eigener Satz: Größe, Steine oder Plan sind nicht die von Position %1.</translation>
        </message>
        <message>
            <source>Templates on the wall: no set-up charged.</source>
            <translation>Schablonen an der Wand: keine Rüstkosten.</translation>
        </message>
        <message>
            <source>Templates on the wall: each piece bears its share of the set.</source>
            <translation>Schablonen an der Wand: Jedes Stück trägt seinen Anteil am Satz.</translation>
        </message>
        <message>
            <source>A second press of %1 in %2 of the pieces.</source>
            <translation>Eine zweite Pressung von %1 bei %2 der Stücke.</translation>
        </message>
        <message numerus="yes">
            <source>%1 is short by %2 stones.</source>
            <translation>
                <numerusform>Von %1 fehlt %2 Stein.</numerusform>
                <numerusform>Von %1 fehlen %2 Steine.</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>sp::counter::OrderList</name>
        <message>
            <source>Lines of the order</source>
            <translation>Positionen der Bestellung</translation>
        </message>
    </context>
    <context>
        <name>sp::counter::OrderListDelegate</name>
        <message>
            <source>each</source>
            <translation>je Stück</translation>
        </message>
    </context>
    <context>
        <name>sp::counter::OrderListModel</name>
        <message>
            <source>an entry cannot be read</source>
            <translation>eine Eingabe ist nicht lesbar</translation>
        </message>
        <message>
            <source>the customer’s garment</source>
            <translation>das Textil des Kunden</translation>
        </message>
        <message numerus="yes">
            <source>%1 places</source>
            <translation>
                <numerusform>%1 Stelle</numerusform>
                <numerusform>%1 Stellen</numerusform>
            </translation>
        </message>
        <message>
            <source>%1, %2, %3 each</source>
            <translation>%1, %2, je %3</translation>
        </message>
    </context>
    <context>
        <name>sp::counter::OrderPanel</name>
        <message>
            <source>Add “%1” as a customer</source>
            <translation>„%1“ als Kunden hinzufügen</translation>
        </message>
        <message>
            <source>“%1” is nobody yet; choose somebody, or press Enter to add the name.</source>
            <translation>„%1“ ist noch niemand; wählen Sie jemanden oder fügen Sie den Namen mit Enter hinzu.</translation>
        </message>
        <message>
            <source>Ta&amp;x exempt</source>
            <translation>Steuer&amp;befreit</translation>
        </message>
        <message>
            <source>All at no charge</source>
            <translation>Alles kostenlos</translation>
        </message>
        <message>
            <source>Done again, a sample, a gift: no price, its cost counts in the figures</source>
            <translation>Noch einmal gemacht, ein Muster, ein Geschenk: kein Preis, die Kosten zählen in der Auswertung</translation>
        </message>
        <message>
            <source>Custo&amp;mer</source>
            <translation>&amp;Kunde</translation>
        </message>
        <message>
            <source>Phone or mail</source>
            <translation>Telefon oder E-Mail</translation>
        </message>
        <message>
            <source>Wanted &amp;by</source>
            <translation>&amp;Gewünscht bis</translation>
        </message>
        <message>
            <source>Dis&amp;count</source>
            <translation>&amp;Rabatt</translation>
        </message>
        <message>
            <source>Order</source>
            <translation>Bestellung</translation>
        </message>
        <message>
            <source>Type part of a design’s name</source>
            <translation>Teil des Motivnamens tippen</translation>
        </message>
        <message>
            <source>“%1” as a one-off</source>
            <translation>„%1“ als Einzelstück</translation>
        </message>
        <message>
            <source>&amp;Add to the order</source>
            <translation>&amp;Zur Bestellung hinzufügen</translation>
        </message>
        <message>
            <source>Charge</source>
            <translation>Posten</translation>
        </message>
        <message>
            <source>Add a charge without stones</source>
            <translation>Posten ohne Steine hinzufügen</translation>
        </message>
        <message>
            <source>Postage, art, a repair, a plain tee: a line without stones</source>
            <translation>Porto, Grafik, eine Reparatur, ein schlichtes T-Shirt: eine Position ohne Steine</translation>
        </message>
        <message>
            <source>Charge</source>
            <comment>the name of a line until it has another</comment>
            <translation>Posten</translation>
        </message>
        <message>
            <source>New, kept from now on. Or &lt;a href="0"&gt;%1&lt;/a&gt;?</source>
            <translation>Neu, ab jetzt im Buch. Oder &lt;a href="0"&gt;%1&lt;/a&gt;?</translation>
        </message>
        <message>
            <source>New, kept from now on.</source>
            <translation>Neu, ab jetzt im Buch.</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>Reckoned from tomorrow on.</source>
            <translation>Gerechnet ab morgen.</translation>
        </message>
        <message>
            <source>What is missing for it can be here by %1, bought today.</source>
            <translation>Was dafür fehlt, kann bis %1 hier sein, wenn es heute gekauft wird.</translation>
        </message>
        <message>
            <source>Reckoned as if its deposit came today.</source>
            <translation>Gerechnet, als käme die Anzahlung heute.</translation>
        </message>
        <message>
            <source>No day is promised until Shop knows the &lt;a href="0"&gt;bench hours&lt;/a&gt;.</source>
            <translation>Kein Tag wird zugesagt, solange unter „Betrieb“ keine &lt;a href="0"&gt;Werkbankstunden&lt;/a&gt; stehen.</translation>
        </message>
        <message>
            <source>rush, %1</source>
            <translation>Eilzuschlag, %1</translation>
        </message>
    </context>
    <context>
        <name>sp::counter::SheetRow</name>
        <message>
            <source>on the wall</source>
            <translation>an der Wand</translation>
        </message>
        <message>
            <source>%1 off the roll</source>
            <translation>%1 von der Rolle</translation>
        </message>
        <message>
            <source>%1 a sheet</source>
            <translation>%1 je Bogen</translation>
        </message>
        <message>
            <source>lifts once</source>
            <translation>hebt einmal ab</translation>
        </message>
        <message numerus="yes">
            <source>lifts %1 times</source>
            <translation>
                <numerusform>hebt %1-mal ab</numerusform>
                <numerusform>hebt %1-mal ab</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>sp::counter::SlipBack</name>
        <message>
            <source>Cost each</source>
            <translation>Kosten je Stück</translation>
        </message>
        <message>
            <source>Mark-up</source>
            <translation>Aufschlag</translation>
        </message>
        <message>
            <source>Margin</source>
            <translation>Marge</translation>
        </message>
        <message>
            <source>Owner’s side</source>
            <translation>Inhaberseite</translation>
        </message>
        <message>
            <source>Earned per bench hour</source>
            <translation>Verdient je Werkbankstunde</translation>
        </message>
        <message>
            <source>What one piece costs, part by part</source>
            <translation>Was ein Stück kostet, Teil für Teil</translation>
        </message>
        <message>
            <source>As&amp;k for instead</source>
            <translation>Stattdessen ver&amp;langen</translation>
        </message>
        <message>
            <source>&amp;Sheet plan</source>
            <translation>Bogen&amp;plan</translation>
        </message>
        <message>
            <source>How everything this order needs cut lies on its sheets</source>
            <translation>Wie alles, was diese Bestellung an Zuschnitten braucht, auf seinen Bögen liegt</translation>
        </message>
        <message>
            <source>The cheapest packs for the whole order; opens Buying</source>
            <translation>Die günstigsten Packungen für die ganze Bestellung; öffnet „Einkauf“</translation>
        </message>
        <message>
            <source>Buy…</source>
            <translation>Einkaufen…</translation>
        </message>
        <message>
            <source>this order</source>
            <translation>diese Bestellung</translation>
        </message>
        <message>
            <source>quote %1</source>
            <translation>Angebot %1</translation>
        </message>
        <message>
            <source>leaves %1 a piece, %2 on the line; the ladder asks %3 (%4)</source>
            <translation>Überschuss %1 je Stück, %2 auf die Position; die Staffel verlangt %3 (%4)</translation>
        </message>
        <message>
            <source>leaves %1 a piece, %2 on the line, %5 of discount, rush and minimum counted in; the ladder asks %3 (%4)</source>
            <translation>Überschuss %1 je Stück, %2 auf die Position, %5 aus Rabatt, Eilzuschlag und Mindestbetrag eingerechnet; die Staffel verlangt %3 (%4)</translation>
        </message>
        <message>
            <source>%1 without tax</source>
            <translation>%1 ohne Steuer</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>More or fewer, each — %1</source>
            <translation>Mehr oder weniger, je Stück — %1</translation>
        </message>
        <message>
            <source>Whole order: costs %1, leaves %2, margin %3, %4 a bench hour.</source>
            <translation>Ganze Bestellung: Kosten %1, Überschuss %2, Marge %3, %4 je Werkbankstunde.</translation>
        </message>
        <message>
            <source>Whole order: costs %1, leaves %2, margin %3.</source>
            <translation>Ganze Bestellung: Kosten %1, Überschuss %2, Marge %3.</translation>
        </message>
        <message>
            <source>Not in the price: %1</source>
            <translation>Nicht im Preis: %1</translation>
        </message>
    </context>
    <context>
        <name>sp::counter::SlipLines</name>
        <message>
            <source>The slip, as the customer gets it</source>
            <translation>Der Zettel, wie der Kunde ihn bekommt</translation>
        </message>
    </context>
    <context>
        <name>sp::counter::SlipPanel</name>
        <message>
            <source>R&amp;evise this quote</source>
            <translation>Angebot &amp;überarbeiten</translation>
        </message>
        <message>
            <source>P&amp;rint</source>
            <translation>Dru&amp;cken</translation>
        </message>
        <message>
            <source>Turn o&amp;ver</source>
            <translation>Um&amp;drehen</translation>
        </message>
        <message>
            <source>Shows the owner’s side, or the customer’s again (F9)</source>
            <translation>Zeigt die Inhaberseite oder wieder die des Kunden (F9)</translation>
        </message>
        <message>
            <source>%1 each, to pay %2</source>
            <translation>je %1, zu zahlen %2</translation>
        </message>
        <message>
            <source>To pay %1</source>
            <translation>Zu zahlen %1</translation>
        </message>
        <message>
            <source>More or fewer of %1, each</source>
            <translation>Mehr oder weniger von %1, je Stück</translation>
        </message>
        <message>
            <source>Order a&amp;gain</source>
            <translation>N&amp;och einmal bestellen</translation>
        </message>
        <message>
            <source>&amp;Give the revision</source>
            <translation>&amp;Überarbeitung abgeben</translation>
        </message>
        <message>
            <source>&amp;Give this quote</source>
            <translation>Angeb&amp;ot abgeben</translation>
        </message>
        <message>
            <source>Changes what was ordered, at today’s prices; this quote is kept as it is</source>
            <translation>Ändert, was bestellt wurde, zu heutigen Preisen; dieses Angebot bleibt, wie es ist</translation>
        </message>
        <message>
            <source>Shows the quote sheet to print or save (Ctrl+P)</source>
            <translation>Zeigt das Angebotsblatt zum Drucken oder Speichern (Strg+P)</translation>
        </message>
        <message>
            <source>Starts a new order with what this quote holds, at today’s prices</source>
            <translation>Beginnt eine neue Bestellung mit dem Inhalt dieses Angebots, zu heutigen Preisen</translation>
        </message>
        <message>
            <source>Numbers the quote and keeps it as it is (Ctrl+Enter)</source>
            <translation>Nummeriert das Angebot und bewahrt es so auf, wie es ist (Strg+Enter)</translation>
        </message>
    </context>
    <context>
        <name>sp::counter::SlipTotals</name>
        <message>
            <source>%1 at %2 each</source>
            <translation>%1 zu je %2</translation>
        </message>
    </context>
    <context>
        <name>sp::counter::StoneRows</name>
        <message>
            <source>Type part of its name</source>
            <translation>Teil des Namens tippen</translation>
        </message>
        <message>
            <source>Add a colo&amp;ur</source>
            <translation>&amp;Farbe hinzufügen</translation>
        </message>
        <message>
            <source>Stones</source>
            <translation>Steine</translation>
        </message>
        <message>
            <source>per piece</source>
            <translation>je Stück</translation>
        </message>
        <message>
            <source>to brush</source>
            <translation>zu bürsten</translation>
        </message>
        <message>
            <source>on the shelf</source>
            <translation>auf Lager</translation>
        </message>
        <message>
            <source>a stone that is gone</source>
            <translation>ein Stein, der nicht mehr da ist</translation>
        </message>
        <message>
            <source>%1 per piece</source>
            <translation>%1 je Stück</translation>
        </message>
        <message>
            <source>%1 to brush</source>
            <translation>%1 zu bürsten</translation>
        </message>
        <message>
            <source>%1 on the shelf</source>
            <translation>%1 auf Lager</translation>
        </message>
        <message>
            <source>Take %1 out</source>
            <translation>%1 herausnehmen</translation>
        </message>
    </context>
    <context>
        <name>sp::customers::CertificateRows</name>
        <message>
            <source>+ further certificate</source>
            <translation>+ weiterer Nachweis</translation>
        </message>
        <message>
            <source>number</source>
            <translation>Nummer</translation>
        </message>
        <message>
            <source>good for</source>
            <translation>gilt für</translation>
        </message>
        <message>
            <source>issued on</source>
            <translation>ausgestellt am</translation>
        </message>
        <message>
            <source>expires on</source>
            <translation>läuft ab am</translation>
        </message>
        <message>
            <source>number of further certificate %1</source>
            <translation>Nummer des weiteren Nachweises %1</translation>
        </message>
        <message>
            <source>what further certificate %1 is good for</source>
            <translation>wofür der weitere Nachweis %1 gilt</translation>
        </message>
        <message>
            <source>day of issue of further certificate %1</source>
            <translation>Ausstellungstag des weiteren Nachweises %1</translation>
        </message>
        <message>
            <source>day of expiry of further certificate %1</source>
            <translation>Ablauftag des weiteren Nachweises %1</translation>
        </message>
        <message>
            <source>Take further certificate %1 out</source>
            <translation>Weiteren Nachweis %1 herausnehmen</translation>
        </message>
    </context>
    <context>
        <name>sp::customers::ContactsDialog</name>
        <message>
            <source>there already; what was lacking is filled in, with a certificate of exemption</source>
            <translation>schon vorhanden; Fehlendes wird ergänzt, mit Befreiungsnachweis</translation>
        </message>
        <message>
            <source>new</source>
            <translation>neu</translation>
        </message>
        <message>
            <source>there already; what was lacking is filled in</source>
            <translation>schon vorhanden; Fehlendes wird ergänzt</translation>
        </message>
        <message>
            <source>there already</source>
            <translation>schon vorhanden</translation>
        </message>
        <message>
            <source>left out: somebody else has the name, telephone or mail</source>
            <translation>ausgelassen: Jemand anders hat Name, Telefon oder E-Mail</translation>
        </message>
        <message>
            <source>Customers out of a file</source>
            <translation>Kunden aus einer Datei</translation>
        </message>
        <message>
            <source>Name</source>
            <translation>Name</translation>
        </message>
        <message>
            <source>What becomes of it</source>
            <translation>Was daraus wird</translation>
        </message>
        <message>
            <source>left out: %1</source>
            <translation>ausgelassen: %1</translation>
        </message>
        <message>
            <source>&amp;Take them into the book</source>
            <translation>&amp;Ins Buch übernehmen</translation>
        </message>
        <message>
            <source>&amp;Back</source>
            <translation>&amp;Zurück</translation>
        </message>
    </context>
    <context>
        <name>sp::customers::CustomerFields</name>
        <message>
            <source>Give the customer a name.</source>
            <translation>Geben Sie dem Kunden einen Namen.</translation>
        </message>
        <message>
            <source>as the shop</source>
            <translation>wie der Betrieb</translation>
        </message>
        <message>
            <source>Name</source>
            <translation>Name</translation>
        </message>
        <message>
            <source>Telephone</source>
            <translation>Telefon</translation>
        </message>
        <message>
            <source>Mail</source>
            <translation>E-Mail</translation>
        </message>
        <message>
            <source>Address</source>
            <translation>Adresse</translation>
        </message>
        <message>
            <source>Note, for the shop alone</source>
            <translation>Notiz, nur für den Betrieb</translation>
        </message>
        <message>
            <source>Exemption certificate, number</source>
            <translation>Befreiungsnachweis, Nummer</translation>
        </message>
        <message>
            <source>Good for (state or country)</source>
            <translation>Gilt für (Land oder Bundesstaat)</translation>
        </message>
        <message>
            <source>Issued on</source>
            <translation>Ausgestellt am</translation>
        </message>
        <message>
            <source>Expires on, if it does</source>
            <translation>Läuft ab am, falls er abläuft</translation>
        </message>
        <message>
            <source>Language</source>
            <translation>Sprache</translation>
        </message>
        <message>
            <source>The same person as</source>
            <translation>Dieselbe Person wie</translation>
        </message>
        <message>
            <source>makes the two one; quotes given stay as they are</source>
            <translation>macht aus beiden einen; abgegebene Angebote bleiben, wie sie sind</translation>
        </message>
        <message>
            <source>of quotes and bills for them</source>
            <translation>von Angeboten und Rechnungen für sie</translation>
        </message>
    </context>
    <context>
        <name>sp::customers::CustomerPictures</name>
        <message>
            <source>Designs of their jobs</source>
            <translation>Motive der Aufträge</translation>
        </message>
        <message>
            <source>Picture of %1</source>
            <translation>Bild von %1</translation>
        </message>
    </context>
    <context>
        <name>sp::customers::CustomersPage</name>
        <message>
            <source>Customers</source>
            <translation>Kunden</translation>
        </message>
        <message>
            <source>&amp;Find by name, telephone or mail</source>
            <translation>&amp;Suchen nach Name, Telefon oder E-Mail</translation>
        </message>
        <message>
            <source>No customer is called so.</source>
            <translation>Kein Kunde heißt so.</translation>
        </message>
        <message>
            <source>&amp;New customer</source>
            <translation>&amp;Neuer Kunde</translation>
        </message>
        <message>
            <source>&amp;Read from a file…</source>
            <translation>Aus Datei &amp;lesen…</translation>
        </message>
        <message>
            <source>&amp;Write to a file…</source>
            <translation>In Datei sch&amp;reiben…</translation>
        </message>
        <message>
            <source>No customer is here yet.</source>
            <translation>Hier ist noch kein Kunde.</translation>
        </message>
        <message>
            <source>New customer</source>
            <translation>Neuer Kunde</translation>
        </message>
        <message>
            <source>E&amp;xport…</source>
            <translation>E&amp;xportieren…</translation>
        </message>
        <message>
            <source>Writes all that the book has of this customer, and their papers as PDF</source>
            <translation>Schreibt alles, was das Buch über diesen Kunden hat, und seine Belege als PDF</translation>
        </message>
        <message>
            <source>&amp;Erase…</source>
            <translation>Lösc&amp;hen…</translation>
        </message>
        <message>
            <source>Takes the person out of the book for good; jobs and sums stay</source>
            <translation>Nimmt die Person endgültig aus dem Buch; Aufträge und Summen bleiben</translation>
        </message>
        <message>
            <source>Whether a certificate holds is for you to confirm with your tax authority. Without one in force on file tax is charged.</source>
            <translation>Ob ein Nachweis gilt, klären Sie bitte mit Ihrem Finanzamt. Liegt kein gültiger vor, wird Steuer berechnet.</translation>
        </message>
        <message>
            <source>Jobs</source>
            <translation>Aufträge</translation>
        </message>
        <message>
            <source>Number</source>
            <translation>Nummer</translation>
        </message>
        <message>
            <source>Day</source>
            <translation>Tag</translation>
        </message>
        <message>
            <source>What</source>
            <translation>Was</translation>
        </message>
        <message>
            <source>Stage</source>
            <translation>Stand</translation>
        </message>
        <message>
            <source>Total</source>
            <translation>Summe</translation>
        </message>
        <message>
            <source>Paid</source>
            <translation>Gezahlt</translation>
        </message>
        <message>
            <source>The certificate of exemption for %1 ended on %2; ask for a new one.</source>
            <translation>Der Befreiungsnachweis für %1 ist am %2 abgelaufen; bitten Sie um einen neuen.</translation>
        </message>
        <message>
            <source>The certificate of exemption for %1 ends on %2; ask for a new one.</source>
            <translation>Der Befreiungsnachweis für %1 läuft am %2 ab; bitten Sie um einen neuen.</translation>
        </message>
        <message>
            <source>Nothing was ordered yet.</source>
            <translation>Noch wurde nichts bestellt.</translation>
        </message>
        <message>
            <source>Owes nothing.</source>
            <translation>Schuldet nichts.</translation>
        </message>
        <message>
            <source>Owes %1.</source>
            <translation>Schuldet %1.</translation>
        </message>
        <message>
            <source>Owes %1, has a credit of %2.</source>
            <translation>Schuldet %1, hat ein Guthaben von %2.</translation>
        </message>
        <message>
            <source>Where the customer’s folder is to be</source>
            <translation>Wohin der Ordner des Kunden soll</translation>
        </message>
        <message>
            <source>All of the customer is in “%1”; keep it as you keep the book.</source>
            <translation>Alles über den Kunden ist in „%1“; verwahren Sie es wie das Buch.</translation>
        </message>
        <message>
            <source>Read customers</source>
            <translation>Kunden lesen</translation>
        </message>
        <message>
            <source>Contacts (*.vcf *.csv)</source>
            <translation>Kontakte (*.vcf *.csv)</translation>
        </message>
        <message>
            <source>“%1” cannot be read; look whether it is there and yours to read.</source>
            <translation>„%1“ kann nicht gelesen werden; prüfen Sie, ob die Datei da ist und Sie sie lesen dürfen.</translation>
        </message>
        <message>
            <source>Write customers</source>
            <translation>Kunden schreiben</translation>
        </message>
        <message>
            <source>Cards (*.vcf);;Table (*.csv)</source>
            <translation>Karten (*.vcf);;Tabelle (*.csv)</translation>
        </message>
        <message>
            <source>“%1” is written; it names customers, keep it as you keep the book.</source>
            <translation>„%1“ ist geschrieben; darin stehen Kunden, verwahren Sie die Datei wie das Buch.</translation>
        </message>
    </context>
    <context>
        <name>sp::customers::CustomersPresenter</name>
        <message>
            <source>Customer</source>
            <translation>Kunde</translation>
        </message>
        <message>
            <source>New customer</source>
            <translation>Neuer Kunde</translation>
        </message>
    </context>
    <context>
        <name>sp::customers::EraseDialog</name>
        <message>
            <source>Erase %1?</source>
            <translation>%1 löschen?</translation>
        </message>
        <message>
            <source>These copies of the book hold the person still. The days hold if the book is used every day; a copy that you delete yourself is gone at once.</source>
            <translation>Diese Kopien des Buchs enthalten die Person noch. Die Tage gelten, wenn das Buch täglich benutzt wird; eine Kopie, die Sie selbst löschen, ist sofort weg.</translation>
        </message>
        <message>
            <source>Copy</source>
            <translation>Kopie</translation>
        </message>
        <message>
            <source>Goes on</source>
            <translation>Verschwindet</translation>
        </message>
        <message>
            <source>%1, in the second place</source>
            <translation>%1, am zweiten Ort</translation>
        </message>
        <message>
            <source>when you delete it</source>
            <translation>wenn Sie sie löschen</translation>
        </message>
        <message>
            <source>&amp;Erase for good</source>
            <translation>&amp;Endgültig löschen</translation>
        </message>
        <message>
            <source>&amp;Keep</source>
            <translation>&amp;Behalten</translation>
        </message>
        <message>
            <source>&amp;Close</source>
            <translation>&amp;Schließen</translation>
        </message>
    </context>
    <context>
        <name>sp::designs::DesignStones</name>
        <message>
            <source>Stones a piece</source>
            <translation>Steine je Stück</translation>
        </message>
        <message>
            <source>Add a colour</source>
            <translation>Farbe hinzufügen</translation>
        </message>
        <message>
            <source>+ colour: type part of its name</source>
            <translation>+ Farbe: Teil des Namens tippen</translation>
        </message>
        <message>
            <source>a stone that is gone</source>
            <translation>ein Stein, der nicht mehr da ist</translation>
        </message>
        <message>
            <source>%1 a piece</source>
            <translation>%1 je Stück</translation>
        </message>
        <message>
            <source>Take %1 out</source>
            <translation>%1 herausnehmen</translation>
        </message>
    </context>
    <context>
        <name>sp::designs::DesignsPage</name>
        <message>
            <source>Designs</source>
            <translation>Motive</translation>
        </message>
        <message>
            <source>&amp;Find by name</source>
            <translation>&amp;Suchen nach Name</translation>
        </message>
        <message>
            <source>No design is called that.</source>
            <translation>Kein Motiv heißt so.</translation>
        </message>
        <message>
            <source>&amp;New design</source>
            <translation>&amp;Neues Motiv</translation>
        </message>
        <message>
            <source>&amp;Count a cut file…</source>
            <translation>Schnitt&amp;datei zählen…</translation>
        </message>
        <message>
            <source>Esti&amp;mate stones…</source>
            <translation>Steine schä&amp;tzen…</translation>
        </message>
        <message>
            <source>No design is here yet.</source>
            <translation>Hier ist noch kein Motiv.</translation>
        </message>
        <message>
            <source>New design</source>
            <translation>Neues Motiv</translation>
        </message>
        <message>
            <source>&amp;Duplicate</source>
            <translation>Du&amp;plizieren</translation>
        </message>
        <message>
            <source>&amp;Remove</source>
            <translation>&amp;Entfernen</translation>
        </message>
        <message>
            <source>Give the design a name.</source>
            <translation>Geben Sie dem Motiv einen Namen.</translation>
        </message>
        <message>
            <source>&amp;Templates on the wall</source>
            <translation>Schablonen an der &amp;Wand</translation>
        </message>
        <message>
            <source>N&amp;ame</source>
            <translation>N&amp;ame</translation>
        </message>
        <message>
            <source>&amp;Width</source>
            <translation>Bre&amp;ite</translation>
        </message>
        <message>
            <source>&amp;Height</source>
            <translation>&amp;Höhe</translation>
        </message>
        <message>
            <source>Goes &amp;on, as a rule</source>
            <translation>Kommt meist a&amp;uf</translation>
        </message>
        <message>
            <source>Art t&amp;ime</source>
            <translation>&amp;Grafikzeit</translation>
        </message>
        <message>
            <source>empty: the bench standard</source>
            <translation>leer: der Richtwert der Werkbank</translation>
        </message>
        <message>
            <source>&amp;Planned pieces</source>
            <translation>Gep&amp;lante Stück</translation>
        </message>
        <message>
            <source>the set of templates is paid off over them</source>
            <translation>auf sie wird der Schablonensatz umgelegt</translation>
        </message>
        <message>
            <source>Not&amp;e</source>
            <translation>N&amp;otiz</translation>
        </message>
        <message>
            <source>The picture is of other counts than this design has.</source>
            <translation>Das Bild gehört zu anderen Zahlen als denen dieses Motivs.</translation>
        </message>
        <message>
            <source>&amp;Sheet plan…</source>
            <translation>&amp;Bogenplan…</translation>
        </message>
        <message>
            <source>How templates, tape and backing of this design lie on their sheets</source>
            <translation>Wie Schablonen, Folie und Träger dieses Motivs auf ihren Bögen liegen</translation>
        </message>
        <message>
            <source>Its own pac&amp;king, instead of the shop’s</source>
            <translation>Eigene &amp;Verpackung statt der des Betriebs</translation>
        </message>
        <message>
            <source>Where stones would sit in %1</source>
            <translation>Wo in %1 Steine säßen</translation>
        </message>
        <message>
            <source>What was counted in %1</source>
            <translation>Was in %1 gezählt wurde</translation>
        </message>
        <message>
            <source>Estimated from %1, kept with the design.</source>
            <translation>Nach %1 geschätzt, beim Motiv aufbewahrt.</translation>
        </message>
        <message>
            <source>Counted from %1, kept with the design.</source>
            <translation>Aus %1 gezählt, beim Motiv aufbewahrt.</translation>
        </message>
        <message>
            <source> · on the wall</source>
            <translation> · an der Wand</translation>
        </message>
        <message>
            <source> · estimated</source>
            <translation> · geschätzt</translation>
        </message>
        <message numerus="yes">
            <source>%1 stones a piece, as many holes to cut; one template for each colour.</source>
            <translation>
                <numerusform>%1 Stein je Stück, ebenso viele Löcher zu schneiden; eine Schablone je Farbe.</numerusform>
                <numerusform>%1 Steine je Stück, ebenso viele Löcher zu schneiden; eine Schablone je Farbe.</numerusform>
            </translation>
        </message>
        <message>
            <source>%1 of %2 pieces sold</source>
            <translation>%1 von %2 Stück verkauft</translation>
        </message>
        <message>
            <source>%1; %2 of %3 paid for the set of templates.</source>
            <translation>%1; %2 von %3 für den Schablonensatz bezahlt.</translation>
        </message>
        <message>
            <source>%1; what the set of templates costs is kept once a job of it is agreed.</source>
            <translation>%1; was der Schablonensatz kostet, wird festgehalten, sobald einer seiner Aufträge beauftragt ist.</translation>
        </message>
        <message>
            <source>%1 a sheet</source>
            <translation>%1 je Bogen</translation>
        </message>
        <message>
            <source>“%1” is removed.</source>
            <translation>„%1“ ist entfernt.</translation>
        </message>
        <message>
            <source>Undo</source>
            <translation>Rückgängig</translation>
        </message>
    </context>
    <context>
        <name>sp::designs::DesignsPresenter</name>
        <message>
            <source>New design</source>
            <translation>Neues Motiv</translation>
        </message>
        <message>
            <source>%1 copy</source>
            <translation>%1 Kopie</translation>
        </message>
    </context>
    <context>
        <name>sp::desk::ChoiceField</name>
        <message>
            <source>Nothing is called “%1”; choose from the list.</source>
            <translation>Nichts heißt „%1“; wählen Sie aus der Liste.</translation>
        </message>
        <message>
            <source>Choose one; type part of its name.</source>
            <translation>Wählen Sie etwas aus; tippen Sie einen Teil des Namens.</translation>
        </message>
    </context>
    <context>
        <name>sp::desk::ChoicePopup</name>
        <message>
            <source>Choices</source>
            <translation>Auswahl</translation>
        </message>
    </context>
    <context>
        <name>sp::desk::ListPage</name>
        <message>
            <source>Nothing yet</source>
            <translation>Noch nichts</translation>
        </message>
    </context>
    <context>
        <name>sp::desk::MessageBar</name>
        <message>
            <source>Close message</source>
            <translation>Meldung schließen</translation>
        </message>
    </context>
    <context>
        <name>sp::desk::PackingRows</name>
        <message>
            <source>+ packing</source>
            <translation>+ Verpackung</translation>
        </message>
        <message>
            <source>There is no packing yet; add some in Supplies.</source>
            <translation>Es gibt noch keine Verpackung; fügen Sie unter „Material“ welche hinzu.</translation>
        </message>
        <message>
            <source>All the packing there is goes along; add more in Supplies.</source>
            <translation>Alle vorhandene Verpackung ist dabei; fügen Sie unter „Material“ weitere hinzu.</translation>
        </message>
        <message>
            <source>packing</source>
            <translation>Verpackung</translation>
        </message>
        <message>
            <source>so many</source>
            <translation>Anzahl</translation>
        </message>
        <message>
            <source>go with</source>
            <translation>gehört zu</translation>
        </message>
        <message>
            <source>packing %1</source>
            <translation>Verpackung %1</translation>
        </message>
        <message>
            <source>how many of packing %1</source>
            <translation>Anzahl von Verpackung %1</translation>
        </message>
        <message>
            <source>what packing %1 goes with</source>
            <translation>wozu Verpackung %1 gehört</translation>
        </message>
        <message>
            <source>each piece</source>
            <translation>jedem Stück</translation>
        </message>
        <message>
            <source>each order</source>
            <translation>jeder Bestellung</translation>
        </message>
        <message>
            <source>Take packing %1 out</source>
            <translation>Verpackung %1 herausnehmen</translation>
        </message>
    </context>
    <context>
        <name>sp::desk::Rail</name>
        <message>
            <source>Places</source>
            <translation>Bereiche</translation>
        </message>
    </context>
    <context>
        <name>sp::desk::TypedField</name>
        <message>
            <source>This is still empty.</source>
            <translation>Das ist noch leer.</translation>
        </message>
        <message>
            <source>This must be from %1 to %2.</source>
            <translation>Das muss von %1 bis %2 liegen.</translation>
        </message>
        <message>
            <source>This must be at least %1.</source>
            <translation>Das muss mindestens %1 sein.</translation>
        </message>
        <message>
            <source>This can be at most %1.</source>
            <translation>Das darf höchstens %1 sein.</translation>
        </message>
    </context>
    <context>
        <name>sp::figures::FiguresPage</name>
        <message>
            <source>Figures</source>
            <translation>Auswertung</translation>
        </message>
        <message>
            <source>Handed over in these days, without tax</source>
            <translation>In diesem Zeitraum übergeben, ohne Steuer</translation>
        </message>
        <message>
            <source>Nothing was handed over in these days.</source>
            <translation>In diesem Zeitraum wurde nichts übergeben.</translation>
        </message>
        <message>
            <source>To the time before</source>
            <translation>Zum Zeitraum davor</translation>
        </message>
        <message>
            <source>What the shop earned is told once a job is collected.</source>
            <translation>Was der Betrieb verdient hat, steht hier, sobald ein Auftrag abgeholt ist.</translation>
        </message>
        <message>
            <source>To the jobs</source>
            <translation>Zu den Aufträgen</translation>
        </message>
        <message>
            <source>‹ The time before</source>
            <translation>‹ Zeitraum davor</translation>
        </message>
        <message>
            <source>› The time after</source>
            <translation>› Zeitraum danach</translation>
        </message>
        <message>
            <source>How long</source>
            <translation>Wie lange</translation>
        </message>
        <message>
            <source>How long a time is shown</source>
            <translation>Wie lang der gezeigte Zeitraum ist</translation>
        </message>
        <message>
            <source>Month</source>
            <translation>Monat</translation>
        </message>
        <message>
            <source>Quarter</source>
            <translation>Quartal</translation>
        </message>
        <message>
            <source>Year</source>
            <translation>Jahr</translation>
        </message>
        <message>
            <source>Earned per bench hour</source>
            <translation>Verdient je Werkbankstunde</translation>
        </message>
        <message>
            <source>Income</source>
            <translation>Erlös</translation>
        </message>
        <message>
            <source>Cost</source>
            <translation>Kosten</translation>
        </message>
        <message>
            <source>Left</source>
            <translation>Überschuss</translation>
        </message>
        <message>
            <source>Margin</source>
            <translation>Marge</translation>
        </message>
        <message>
            <source>Bench time</source>
            <translation>Werkbankzeit</translation>
        </message>
        <message>
            <source>Where it came from</source>
            <translation>Woher es kam</translation>
        </message>
        <message>
            <source>By design</source>
            <translation>Nach Motiv</translation>
        </message>
        <message>
            <source>By week</source>
            <translation>Nach Woche</translation>
        </message>
        <message>
            <source>By month</source>
            <translation>Nach Monat</translation>
        </message>
        <message>
            <source>By customer</source>
            <translation>Nach Kunde</translation>
        </message>
        <message>
            <source>By quantity</source>
            <translation>Nach Menge</translation>
        </message>
        <message>
            <source>By blank</source>
            <translation>Nach Rohling</translation>
        </message>
        <message>
            <source>outlined: cost, filled: left</source>
            <translation>umrandet: Kosten, gefüllt: Überschuss</translation>
        </message>
        <message>
            <source>What</source>
            <translation>Was</translation>
        </message>
        <message>
            <source>Pieces</source>
            <translation>Stück</translation>
        </message>
        <message>
            <source>Cost and what is left</source>
            <translation>Kosten und Überschuss</translation>
        </message>
        <message>
            <source>An hour</source>
            <translation>Je Stunde</translation>
        </message>
        <message>
            <source>Its jobs</source>
            <translation>Aufträge dazu</translation>
        </message>
        <message>
            <source>Job</source>
            <translation>Auftrag</translation>
        </message>
        <message>
            <source>Handed over</source>
            <translation>Übergeben</translation>
        </message>
        <message>
            <source>For</source>
            <translation>Für</translation>
        </message>
        <message>
            <source>Enter opens the job</source>
            <translation>Enter öffnet den Auftrag</translation>
        </message>
        <message>
            <source>What the month costs anyway</source>
            <translation>Was der Monat ohnehin kostet</translation>
        </message>
        <message>
            <source>What became of the offers of these days</source>
            <translation>Was aus den Angeboten dieses Zeitraums wurde</translation>
        </message>
        <message>
            <source>Pieces of a line</source>
            <translation>Stück der Position</translation>
        </message>
        <message>
            <source>Won</source>
            <translation>Gewonnen</translation>
        </message>
        <message>
            <source>Lost</source>
            <translation>Verloren</translation>
        </message>
        <message>
            <source>Open</source>
            <translation>Offen</translation>
        </message>
        <message>
            <source>Share won</source>
            <translation>Anteil gewonnen</translation>
        </message>
        <message>
            <source>Middle price won</source>
            <translation>Mittelpreis gewonnen</translation>
        </message>
        <message>
            <source>Middle price lost</source>
            <translation>Mittelpreis verloren</translation>
        </message>
        <message>
            <source>Tax of the invoices of these days</source>
            <translation>Steuer der Rechnungen dieses Zeitraums</translation>
        </message>
        <message>
            <source>Rate</source>
            <translation>Satz</translation>
        </message>
        <message>
            <source>Without tax</source>
            <translation>Ohne Steuer</translation>
        </message>
        <message>
            <source>Tax</source>
            <translation>Steuer</translation>
        </message>
        <message>
            <source>Credit notes are taken off. What is owed of it, to whom and when, your tax authority or an accountant says.</source>
            <translation>Gutschriften sind abgezogen. Was davon wem und wann geschuldet ist, sagt Ihnen das Finanzamt oder ein Steuerberater.</translation>
        </message>
        <message>
            <source>Quarter %1 of %2</source>
            <translation>Quartal %1 %2</translation>
        </message>
        <message>
            <source>charges</source>
            <translation>Posten</translation>
        </message>
        <message>
            <source>%1 and more</source>
            <translation>%1 und mehr</translation>
        </message>
        <message>
            <source>%1 to %2</source>
            <translation>%1 bis %2</translation>
        </message>
        <message>
            <source>week of %1</source>
            <translation>Woche ab %1</translation>
        </message>
        <message>
            <source>nobody named</source>
            <translation>niemand genannt</translation>
        </message>
        <message>
            <source>without any</source>
            <translation>ohne</translation>
        </message>
        <message>
            <source>not known</source>
            <translation>nicht bekannt</translation>
        </message>
        <message>
            <source>Hours of some jobs are not known any more.</source>
            <translation>Die Stunden mancher Aufträge sind nicht mehr bekannt.</translation>
        </message>
        <message>
            <source>(%1 left + %2 own work) ÷ %3</source>
            <translation>(%1 Überschuss + %2 eigene Arbeit) ÷ %3</translation>
        </message>
        <message>
            <source>without time at the bench</source>
            <translation>ohne Zeit an der Werkbank</translation>
        </message>
        <message>
            <source>as planned</source>
            <translation>wie geplant</translation>
        </message>
        <message>
            <source>income less cost</source>
            <translation>Erlös minus Kosten</translation>
        </message>
        <message>
            <source>of income</source>
            <translation>vom Erlös</translation>
        </message>
        <message>
            <source>cost %1, left %2</source>
            <translation>Kosten %1, Überschuss %2</translation>
        </message>
        <message>
            <source>Left out, since their cost is not known any more: %1</source>
            <translation>Ausgelassen, da die Kosten nicht mehr bekannt sind: %1</translation>
        </message>
        <message>
            <source>, </source>
            <translation>, </translation>
        </message>
        <message>
            <source>The month costs %1 anyway; %2 is there for it, so all of it is carried.</source>
            <translation>Der Monat kostet ohnehin %1; dafür sind %2 da, also ist alles gedeckt.</translation>
        </message>
        <message>
            <source>Of %1 that the month costs anyway, %2 is carried; %3 is to go.</source>
            <translation>Von %1, die der Monat ohnehin kostet, sind %2 gedeckt; %3 fehlen noch.</translation>
        </message>
        <message>
            <source>That is %1 more like these.</source>
            <translation>Das sind noch %1 wie diese.</translation>
        </message>
        <message>
            <source>Or %1 more at the bench like these.</source>
            <translation>Oder noch %1 an der Werkbank wie diese.</translation>
        </message>
        <message>
            <source>customers exempt</source>
            <translation>befreite Kunden</translation>
        </message>
        <message>
            <source>not taxed</source>
            <translation>nicht besteuert</translation>
        </message>
        <message>
            <source>together</source>
            <translation>zusammen</translation>
        </message>
        <message numerus="yes">
            <source>and %n more jobs</source>
            <translation>
                <numerusform>und %n weiterer Auftrag</numerusform>
                <numerusform>und %n weitere Aufträge</numerusform>
            </translation>
        </message>
        <message>
            <source>Together %1 cost + %2 left = %3</source>
            <translation>Zusammen %1 Kosten + %2 Überschuss = %3</translation>
        </message>
    </context>
    <context>
        <name>sp::first_hour::FirstDesign</name>
        <message>
            <source>Give the design a name.</source>
            <translation>Geben Sie dem Motiv einen Namen.</translation>
        </message>
        <message>
            <source>Na&amp;me</source>
            <translation>Na&amp;me</translation>
        </message>
        <message>
            <source>&amp;Width</source>
            <translation>&amp;Breite</translation>
        </message>
        <message>
            <source>Hei&amp;ght</source>
            <translation>&amp;Höhe</translation>
        </message>
        <message>
            <source>stone</source>
            <translation>Stein</translation>
        </message>
        <message>
            <source>on one piece</source>
            <translation>auf einem Stück</translation>
        </message>
        <message>
            <source>No stone has a price yet: give one first, or count a cut file.</source>
            <translation>Noch hat kein Stein einen Preis: Geben Sie erst einem einen, oder zählen Sie eine Schnittdatei.</translation>
        </message>
        <message>
            <source>%1 on one piece</source>
            <translation>%1 auf einem Stück</translation>
        </message>
        <message>
            <source>Give the width and the height of the design.</source>
            <translation>Geben Sie Breite und Höhe des Motivs an.</translation>
        </message>
        <message>
            <source>Give how many stones are on one piece.</source>
            <translation>Geben Sie an, wie viele Steine auf einem Stück sind.</translation>
        </message>
    </context>
    <context>
        <name>sp::first_hour::FirstHourPage</name>
        <message>
            <source>Ste&amp;ps</source>
            <translation>Schr&amp;itte</translation>
        </message>
        <message>
            <source>This step</source>
            <translation>Dieser Schritt</translation>
        </message>
        <message>
            <source>A price today</source>
            <translation>Ein Preis heute</translation>
        </message>
        <message>
            <source>Setting up</source>
            <translation>Einrichten</translation>
        </message>
        <message>
            <source>Put t&amp;his place away</source>
            <translation>Diesen Bereich &amp;ausblenden</translation>
        </message>
        <message>
            <source>Shop brings it back, under Letterhead</source>
            <translation>Unter „Betrieb“, „Briefkopf“ holen Sie ihn zurück</translation>
        </message>
        <message>
            <source>Enter goes to the next field, Ctrl+Enter to the next step. What you leave open can be done later.</source>
            <translation>Enter geht zum nächsten Feld, Strg+Enter zum nächsten Schritt. Was Sie offen lassen, lässt sich später erledigen.</translation>
        </message>
        <message>
            <source>It stands at the head of every quote sheet. More of it is at Shop.</source>
            <translation>Er steht über jedem Angebotsblatt. Mehr davon unter „Betrieb“.</translation>
        </message>
        <message>
            <source>Name of the &amp;shop</source>
            <translation>Name des Be&amp;triebs</translation>
        </message>
        <message>
            <source>&amp;Address, and how to reach the shop</source>
            <translation>Adr&amp;esse und wie der Betrieb zu erreichen ist</translation>
        </message>
        <message>
            <source>Rates and rules are yours to confirm with your tax authority or an accountant. Where prices are told with the tax in them, tick it.</source>
            <translation>Sätze und Regeln klären Sie bitte mit Ihrem Finanzamt oder einem Steuerberater. Wo Preise mit Steuer genannt werden, setzen Sie den Haken.</translation>
        </message>
        <message>
            <source>&amp;Tax is called</source>
            <translation>Name der &amp;Steuer</translation>
        </message>
        <message>
            <source>Tax &amp;rate</source>
            <translation>Steuersat&amp;z</translation>
        </message>
        <message>
            <source>Prices hold the tax</source>
            <translation>Preise enthalten die Steuer</translation>
        </message>
        <message>
            <source>No tax is meant</source>
            <translation>Bewusst ohne Steuer</translation>
        </message>
        <message>
            <source>What an hour at the bench is to earn for whoever works there, and what a month costs before a single piece is made: rent, power, insurance.</source>
            <translation>Was eine Stunde an der Werkbank dem einbringen soll, der dort arbeitet, und was ein Monat kostet, bevor ein einziges Stück gemacht ist: Miete, Strom, Versicherung.</translation>
        </message>
        <message>
            <source>Lab&amp;our per hour</source>
            <translation>&amp;Lohn je Stunde</translation>
        </message>
        <message>
            <source>O&amp;verhead per month</source>
            <translation>&amp;Gemeinkosten im Monat</translation>
        </message>
        <message>
            <source>Bench &amp;time per month</source>
            <translation>Wer&amp;kbankzeit im Monat</translation>
        </message>
        <message>
            <source>hours that carry it</source>
            <translation>Stunden, die sie tragen</translation>
        </message>
        <message>
            <source>No labour is meant</source>
            <translation>Bewusst ohne Lohn</translation>
        </message>
        <message>
            <source>No overhead is meant</source>
            <translation>Bewusst ohne Gemeinkosten</translation>
        </message>
        <message>
            <source>Type what a pack costs you; leave empty what you do not buy. What has a price goes into every line from then on.</source>
            <translation>Tippen Sie, was eine Packung Sie kostet; lassen Sie leer, was Sie nicht kaufen. Was einen Preis hat, geht von da an in jede Position ein.</translation>
        </message>
        <message>
            <source>No tape is meant</source>
            <translation>Bewusst ohne Folie</translation>
        </message>
        <message>
            <source>No template is meant</source>
            <translation>Bewusst ohne Schablone</translation>
        </message>
        <message>
            <source>Type what a pack costs you; leave empty what you do not buy. Two of a hundred are reckoned as spilled or flawed: Supplies has the rest.</source>
            <translation>Tippen Sie, was eine Packung Sie kostet; lassen Sie leer, was Sie nicht kaufen. Zwei von hundert gelten als verschüttet oder fehlerhaft: Mehr dazu unter „Material“.</translation>
        </message>
        <message>
            <source>Take them from a supplier’s list…</source>
            <translation>Aus der Liste eines Lieferanten nehmen…</translation>
        </message>
        <message>
            <source>Drop a cut file on the window to have its stones counted, or type one in.</source>
            <translation>Ziehen Sie eine Schnittdatei auf das Fenster, um ihre Steine zählen zu lassen, oder tippen Sie ein Motiv ein.</translation>
        </message>
        <message>
            <source>Count a cut file…</source>
            <translation>Schnittdatei zählen…</translation>
        </message>
        <message>
            <source>At the Counter the first design lies ready: type how many, and whom it is for. Ctrl+Enter there gives the quote and saves its sheet. This place leaves once all is done.</source>
            <translation>An der Theke liegt das erste Motiv bereit: Tippen Sie, wie viele es werden und für wen. Strg+Enter gibt dort das Angebot ab und speichert sein Blatt. Dieser Bereich verschwindet, sobald alles erledigt ist.</translation>
        </message>
        <message>
            <source>&amp;Next: %1</source>
            <translation>&amp;Weiter: %1</translation>
        </message>
        <message>
            <source>To the Cou&amp;nter</source>
            <translation>Zu&amp;r Theke</translation>
        </message>
        <message>
            <source>A piece, so far</source>
            <translation>Je Stück, bisher</translation>
        </message>
        <message>
            <source>All is done; this place leaves when the window is opened the next time.</source>
            <translation>Alles ist erledigt; dieser Bereich verschwindet, wenn das Fenster das nächste Mal geöffnet wird.</translation>
        </message>
        <message>
            <source>%1 of %2 done. You can price at any time.</source>
            <translation>%1 von %2 erledigt. Preise berechnen können Sie jederzeit.</translation>
        </message>
        <message>
            <source>The sheet does not say whose it is</source>
            <translation>Das Blatt sagt nicht, von wem es ist</translation>
        </message>
        <message>
            <source>%1, no tax is charged</source>
            <translation>%1, Steuer wird nicht berechnet</translation>
        </message>
        <message>
            <source>%1, no tax</source>
            <translation>%1, keine Steuer</translation>
        </message>
        <message>
            <source>%1, %2 %3 %</source>
            <translation>%1, %2 %3 %</translation>
        </message>
        <message>
            <source>%1 an hour, %2 a month</source>
            <translation>%1 je Stunde, %2 im Monat</translation>
        </message>
        <message>
            <source>Your time counts %1</source>
            <translation>Ihre Zeit zählt %1</translation>
        </message>
        <message>
            <source>A month counts %1</source>
            <translation>Ein Monat zählt %1</translation>
        </message>
        <message>
            <source>Tape and template</source>
            <translation>Folie und Schablone</translation>
        </message>
        <message>
            <source>Tape or template is in no price</source>
            <translation>Folie oder Schablone ist in keinem Preis</translation>
        </message>
        <message>
            <source>%1 with a price</source>
            <translation>%1 mit Preis</translation>
        </message>
        <message>
            <source>None has a price</source>
            <translation>Keiner hat einen Preis</translation>
        </message>
        <message>
            <source>Drop a cut file, or type one</source>
            <translation>Schnittdatei hereinziehen oder Motiv eintippen</translation>
        </message>
        <message>
            <source>Given</source>
            <translation>Abgegeben</translation>
        </message>
        <message>
            <source>For the next one through the door</source>
            <translation>Für den Nächsten, der zur Tür hereinkommt</translation>
        </message>
    </context>
    <context>
        <name>sp::first_hour::FirstHourPresenter</name>
        <message>
            <source>Sheet supplier</source>
            <translation>Bogenlieferant</translation>
        </message>
        <message>
            <source>Stone supplier</source>
            <translation>Steinlieferant</translation>
        </message>
    </context>
    <context>
        <name>sp::first_hour::PriceToday</name>
        <message>
            <source>What is not in it</source>
            <translation>Was nicht darin ist</translation>
        </message>
        <message>
            <source>A price today</source>
            <translation>Ein Preis heute</translation>
        </message>
        <message>
            <source>The first stone with a price starts it: then some pieces are priced here as a customer would pay for them.</source>
            <translation>Der erste Stein mit Preis macht den Anfang: Dann werden hier einige Stück so berechnet, wie ein Kunde sie zahlen würde.</translation>
        </message>
        <message>
            <source>Tried on %1 decals of %2 with stones of yours.</source>
            <translation>Probe mit %1 Transfers der Größe %2 mit Ihren Steinen.</translation>
        </message>
        <message>
            <source>Tried on %1 of %2.</source>
            <translation>Probe mit %1 von %2.</translation>
        </message>
        <message>
            <source>No backing has a price yet: a garment is reckoned that the customer brings.</source>
            <translation>Noch hat kein Träger einen Preis: Gerechnet wird mit einem Textil, das der Kunde bringt.</translation>
        </message>
        <message>
            <source>Rounding</source>
            <translation>Rundung</translation>
        </message>
        <message>
            <source>Mark-up, rounded</source>
            <translation>Aufschlag, gerundet</translation>
        </message>
        <message>
            <source>A piece, so far</source>
            <translation>Je Stück, bisher</translation>
        </message>
        <message>
            <source>Each %1 an hour adds %2 to a piece.</source>
            <translation>Je %1 Stundenlohn kommen %2 auf ein Stück dazu.</translation>
        </message>
        <message>
            <source>Too low to live on yet: nothing in it pays for your hours.</source>
            <translation>Noch zu wenig zum Leben: Nichts darin bezahlt Ihre Stunden.</translation>
        </message>
    </context>
    <context>
        <name>sp::first_hour::StepList</name>
        <message>
            <source>Steps</source>
            <translation>Schritte</translation>
        </message>
        <message>
            <source>Letterhead</source>
            <translation>Briefkopf</translation>
        </message>
        <message>
            <source>Currency and tax</source>
            <translation>Währung und Steuer</translation>
        </message>
        <message>
            <source>An hour’s worth</source>
            <translation>Der Wert einer Stunde</translation>
        </message>
        <message>
            <source>What every line takes</source>
            <translation>Was jede Position braucht</translation>
        </message>
        <message>
            <source>First stones</source>
            <translation>Erste Steine</translation>
        </message>
        <message>
            <source>First design</source>
            <translation>Erstes Motiv</translation>
        </message>
        <message>
            <source>First quote</source>
            <translation>Erstes Angebot</translation>
        </message>
    </context>
    <context>
        <name>sp::first_hour::SupplyRows</name>
        <message>
            <source>supply</source>
            <translation>Material</translation>
        </message>
        <message>
            <source>size</source>
            <translation>Größe</translation>
        </message>
        <message>
            <source>pack</source>
            <translation>Packung</translation>
        </message>
        <message>
            <source>price of a pack</source>
            <translation>Preis</translation>
        </message>
        <message>
            <source>which is</source>
            <translation>das sind</translation>
        </message>
        <message>
            <source>Call them “%1”</source>
            <translation>„%1“ nennen</translation>
        </message>
        <message>
            <source>Bought &amp;from</source>
            <translation>Gekauft &amp;bei</translation>
        </message>
        <message>
            <source>Price of %1, %2</source>
            <translation>Preis von %1, %2</translation>
        </message>
        <message>
            <source>%1 a gross</source>
            <translation>%1/Gros</translation>
        </message>
        <message>
            <source>%1 a piece</source>
            <translation>%1/Stück</translation>
        </message>
        <message>
            <source>%1 a sheet</source>
            <translation>%1/Bogen</translation>
        </message>
    </context>
    <context>
        <name>sp::jobs::ChangesDialog</name>
        <message>
            <source>What has changed since quote %1</source>
            <translation>Was sich seit Angebot %1 geändert hat</translation>
        </message>
        <message>
            <source>Quote %1, ordered again</source>
            <translation>Angebot %1, noch einmal bestellt</translation>
        </message>
        <message>
            <source>It cannot be priced with today’s prices. %1</source>
            <translation>Es lässt sich nicht mit heutigen Preisen berechnen. %1</translation>
        </message>
        <message>
            <source>Close</source>
            <translation>Schließen</translation>
        </message>
        <message>
            <source>As given</source>
            <translation>Wie abgegeben</translation>
        </message>
        <message>
            <source>Today</source>
            <translation>Heute</translation>
        </message>
        <message>
            <source>Difference</source>
            <translation>Unterschied</translation>
        </message>
        <message>
            <source>Nothing that this order uses has changed.</source>
            <translation>Nichts, was diese Bestellung braucht, hat sich geändert.</translation>
        </message>
        <message>
            <source>The quote stays as it was given; this only says what it would come to.</source>
            <translation>Das Angebot bleibt, wie es abgegeben wurde; dies sagt nur, was es ergäbe.</translation>
        </message>
        <message>
            <source>At today’s prices. What was for that once does not come along.</source>
            <translation>Zu heutigen Preisen. Was nur für damals galt, kommt nicht mit.</translation>
        </message>
        <message>
            <source>Why</source>
            <translation>Warum</translation>
        </message>
        <message>
            <source>What</source>
            <translation>Was</translation>
        </message>
        <message>
            <source>was</source>
            <translation>vorher</translation>
        </message>
        <message>
            <source>is</source>
            <translation>jetzt</translation>
        </message>
        <message>
            <source>on the total</source>
            <translation>auf die Summe</translation>
        </message>
        <message>
            <source>changed</source>
            <translation>geändert</translation>
        </message>
        <message>
            <source>By line</source>
            <translation>Nach Position</translation>
        </message>
        <message>
            <source>Line</source>
            <translation>Position</translation>
        </message>
        <message>
            <source>each, given</source>
            <translation>je Stück, damals</translation>
        </message>
        <message>
            <source>each, today</source>
            <translation>je Stück, heute</translation>
        </message>
        <message>
            <source>on the line</source>
            <translation>auf die Position</translation>
        </message>
        <message>
            <source>%1 × %2</source>
            <translation>%1 × %2</translation>
        </message>
    </context>
    <context>
        <name>sp::jobs::DifferenceDialog</name>
        <message>
            <source>Revision of quote %1</source>
            <translation>Überarbeitung von Angebot %1</translation>
        </message>
        <message>
            <source>Quote %1 beside %2</source>
            <translation>Angebot %1 neben %2</translation>
        </message>
        <message>
            <source>It was</source>
            <translation>Vorher</translation>
        </message>
        <message>
            <source>Revised</source>
            <translation>Überarbeitet</translation>
        </message>
        <message>
            <source>Difference</source>
            <translation>Unterschied</translation>
        </message>
        <message>
            <source>Nothing is ordered otherwise, and it comes to the same.</source>
            <translation>Nichts ist anders bestellt, und es ergibt dasselbe.</translation>
        </message>
        <message>
            <source>At today’s prices what was given would come to %1 less.</source>
            <translation>Zu heutigen Preisen ergäbe das Abgegebene %1 weniger.</translation>
        </message>
        <message>
            <source>At today’s prices what was given would come to %1 more.</source>
            <translation>Zu heutigen Preisen ergäbe das Abgegebene %1 mehr.</translation>
        </message>
        <message>
            <source>Quote %1 is kept as it was given; what was paid stays with the job, and the customer agrees anew.</source>
            <translation>Angebot %1 bleibt, wie es abgegeben wurde; was gezahlt wurde, bleibt beim Auftrag, und der Kunde stimmt neu zu.</translation>
        </message>
        <message>
            <source>By line</source>
            <translation>Nach Position</translation>
        </message>
        <message>
            <source>Line</source>
            <translation>Position</translation>
        </message>
        <message>
            <source>each, was</source>
            <translation>je Stück, vorher</translation>
        </message>
        <message>
            <source>each, is</source>
            <translation>je Stück, jetzt</translation>
        </message>
        <message>
            <source>amount, was</source>
            <translation>Betrag, vorher</translation>
        </message>
        <message>
            <source>amount, is</source>
            <translation>Betrag, jetzt</translation>
        </message>
        <message>
            <source>difference</source>
            <translation>Unterschied</translation>
        </message>
        <message>
            <source>The whole order</source>
            <translation>Die ganze Bestellung</translation>
        </message>
        <message>
            <source>What</source>
            <translation>Was</translation>
        </message>
        <message>
            <source>was</source>
            <translation>vorher</translation>
        </message>
        <message>
            <source>is</source>
            <translation>jetzt</translation>
        </message>
        <message>
            <source>Not yet</source>
            <translation>Noch nicht</translation>
        </message>
        <message>
            <source>Close</source>
            <translation>Schließen</translation>
        </message>
        <message>
            <source>&amp;Give the revision</source>
            <translation>&amp;Überarbeitung abgeben</translation>
        </message>
    </context>
    <context>
        <name>sp::jobs::JobFilters</name>
        <message>
            <source>Of any stage</source>
            <translation>Jeder Stand</translation>
        </message>
        <message>
            <source>Lapsed</source>
            <translation>Abgelaufen</translation>
        </message>
        <message>
            <source>Of any day</source>
            <translation>Jeder Tag</translation>
        </message>
        <message>
            <source>The last 7 days</source>
            <translation>Die letzten 7 Tage</translation>
        </message>
        <message>
            <source>The last 30 days</source>
            <translation>Die letzten 30 Tage</translation>
        </message>
        <message>
            <source>This year</source>
            <translation>Dieses Jahr</translation>
        </message>
        <message>
            <source>Last year</source>
            <translation>Letztes Jahr</translation>
        </message>
        <message>
            <source>Not paid</source>
            <translation>Nicht bezahlt</translation>
        </message>
        <message>
            <source>Order and col&amp;umns</source>
            <translation>Reihenfolge und Spa&amp;lten</translation>
        </message>
        <message>
            <source>The newest first</source>
            <translation>Die neuesten zuerst</translation>
        </message>
        <message>
            <source>By: %1</source>
            <translation>Nach: %1</translation>
        </message>
        <message>
            <source>The other way round</source>
            <translation>Andersherum</translation>
        </message>
        <message>
            <source>Show: %1</source>
            <translation>Zeigen: %1</translation>
        </message>
        <message>
            <source>A&amp;ll jobs</source>
            <translation>&amp;Alle Aufträge</translation>
        </message>
        <message>
            <source>On&amp;ly: %1</source>
            <translation>&amp;Nur: %1</translation>
        </message>
    </context>
    <context>
        <name>sp::jobs::JobStrip</name>
        <message>
            <source>To pay</source>
            <translation>Zu zahlen</translation>
        </message>
        <message>
            <source>There is no choice “%1”; choose from the list.</source>
            <translation>Eine Variante „%1“ gibt es nicht; wählen Sie aus der Liste.</translation>
        </message>
        <message>
            <source>Choice ta&amp;ken</source>
            <translation>Gewählte &amp;Variante</translation>
        </message>
        <message>
            <source>There is no stage “%1”; choose from the list.</source>
            <translation>Einen Stand „%1“ gibt es nicht; wählen Sie aus der Liste.</translation>
        </message>
        <message>
            <source>&amp;Stage</source>
            <translation>Stan&amp;d</translation>
        </message>
        <message>
            <source>Moves it on to the next stage; undo takes it back</source>
            <translation>Setzt ihn auf den nächsten Stand; Rückgängig nimmt es zurück</translation>
        </message>
        <message>
            <source>&amp;Money</source>
            <translation>&amp;Geld</translation>
        </message>
        <message>
            <source>What was paid for it, and the next payment</source>
            <translation>Was dafür gezahlt wurde, und die nächste Zahlung</translation>
        </message>
        <message>
            <source>Pape&amp;rs</source>
            <translation>B&amp;elege</translation>
        </message>
        <message>
            <source>Its quote, invoice, receipts and credit notes</source>
            <translation>Angebot, Rechnung, Quittungen und Gutschriften dazu</translation>
        </message>
        <message>
            <source>How everything the chosen quotes need cut lies on its sheets; choose several with Shift or Ctrl</source>
            <translation>Wie alles, was die gewählten Angebote an Zuschnitten brauchen, auf seinen Bögen liegt; mehrere wählen Sie mit Umschalt oder Strg</translation>
        </message>
        <message>
            <source>Bench sheet</source>
            <translation>Laufzettel</translation>
        </message>
        <message>
            <source>What it is made by: colours in brushing order, what to fetch and cut, press and steps</source>
            <translation>Wonach gefertigt wird: Farben in Bürstfolge, was zu holen und zu schneiden ist, Presse und Schritte</translation>
        </message>
        <message>
            <source>&amp;What has changed since</source>
            <translation>&amp;Was sich geändert hat</translation>
        </message>
        <message>
            <source>What the same order would come to today, and why</source>
            <translation>Was dieselbe Bestellung heute ergäbe, und warum</translation>
        </message>
        <message>
            <source>Order a&amp;gain</source>
            <translation>N&amp;och einmal bestellen</translation>
        </message>
        <message>
            <source>The same at the Counter once more, at today’s prices, and what it comes to now</source>
            <translation>Dasselbe noch einmal an der Theke, zu heutigen Preisen, und was es jetzt ergibt</translation>
        </message>
        <message>
            <source>R&amp;evise</source>
            <translation>&amp;Überarbeiten</translation>
        </message>
        <message>
            <source>Changes what was ordered, at the Counter and at today’s prices; this quote is kept as it is</source>
            <translation>Ändert, was bestellt wurde, an der Theke und zu heutigen Preisen; dieses Angebot bleibt, wie es ist</translation>
        </message>
        <message>
            <source>&amp;Open at the Counter</source>
            <translation>An der &amp;Theke öffnen</translation>
        </message>
        <message>
            <source>Sheet &amp;plan of %1</source>
            <translation>Bogen&amp;plan von %1</translation>
        </message>
        <message>
            <source>Sheet &amp;plan</source>
            <translation>Bogen&amp;plan</translation>
        </message>
        <message>
            <source>Draft</source>
            <translation>Entwurf</translation>
        </message>
        <message>
            <source>Revision of %1</source>
            <translation>Überarbeitung von %1</translation>
        </message>
        <message>
            <source>Nothing ordered yet</source>
            <translation>Noch nichts bestellt</translation>
        </message>
        <message>
            <source>no customer</source>
            <translation>kein Kunde</translation>
        </message>
        <message>
            <source>&amp;Next: %1</source>
            <translation>Weite&amp;r: %1</translation>
        </message>
        <message>
            <source>First say which choice the customer takes</source>
            <translation>Sagen Sie erst, welche Variante der Kunde nimmt</translation>
        </message>
    </context>
    <context>
        <name>sp::jobs::JobsPage</name>
        <message>
            <source>Jobs</source>
            <translation>Aufträge</translation>
        </message>
        <message>
            <source>&amp;Find a number, a customer, a word or a sum</source>
            <translation>Nummer, Kunde, Wort oder Summe &amp;suchen</translation>
        </message>
        <message>
            <source>Today</source>
            <translation>Heute</translation>
        </message>
        <message>
            <source>No quote is in the book yet.</source>
            <translation>Im Buch ist noch kein Angebot.</translation>
        </message>
        <message>
            <source>Start one at the Counter</source>
            <translation>An der Theke eines beginnen</translation>
        </message>
        <message>
            <source>No quote is what you typed and chose.</source>
            <translation>Kein Angebot passt zu dem, was Sie getippt und gewählt haben.</translation>
        </message>
        <message>
            <source>Show all</source>
            <translation>Alle zeigen</translation>
        </message>
        <message>
            <source>none of the newest; the older ones are being read</source>
            <translation>keines der neuesten; die älteren werden gelesen</translation>
        </message>
        <message>
            <source>%1 found so far; the older ones are being read</source>
            <translation>%1 bisher gefunden; die älteren werden gelesen</translation>
        </message>
        <message>
            <source>the newest %1 so far</source>
            <translation>bisher die neuesten %1</translation>
        </message>
        <message>
            <source>the first %1</source>
            <translation>die ersten %1</translation>
        </message>
        <message>
            <source>%1 in the book</source>
            <translation>%1 im Buch</translation>
        </message>
        <message>
            <source>%1 found</source>
            <translation>%1 gefunden</translation>
        </message>
        <message numerus="yes">
            <source>%1 jobs</source>
            <translation>
                <numerusform>%1 Auftrag</numerusform>
                <numerusform>%1 Aufträge</numerusform>
            </translation>
        </message>
        <message>
            <source>this draft</source>
            <translation>dieser Entwurf</translation>
        </message>
        <message>
            <source>quote %1</source>
            <translation>Angebot %1</translation>
        </message>
        <message>
            <source>No longer in Supplies, so laid as the quote has it: %1.</source>
            <translation>Nicht mehr im Material, also gelegt, wie das Angebot es hat: %1.</translation>
        </message>
    </context>
    <context>
        <name>sp::jobs::JobsPresenter</name>
        <message>
            <source>Draft</source>
            <translation>Entwurf</translation>
        </message>
        <message>
            <source>Draft for %1</source>
            <translation>Entwurf für %1</translation>
        </message>
    </context>
    <context>
        <name>sp::jobs::JobsTable</name>
        <message>
            <source>Quotes, newest first</source>
            <translation>Angebote, neueste zuerst</translation>
        </message>
    </context>
    <context>
        <name>sp::jobs::JobsTableModel</name>
        <message>
            <source>%1 to %2</source>
            <translation>%1 bis %2</translation>
        </message>
        <message>
            <source>%1 paid</source>
            <translation>%1 gezahlt</translation>
        </message>
        <message>
            <source>paid</source>
            <translation>bezahlt</translation>
        </message>
        <message>
            <source>%1 credit</source>
            <translation>%1 Guthaben</translation>
        </message>
        <message>
            <source>%1 left</source>
            <translation>%1 offen</translation>
        </message>
        <message>
            <source>draft</source>
            <translation>Entwurf</translation>
        </message>
        <message>
            <source>Lapsed</source>
            <translation>Abgelaufen</translation>
        </message>
        <message>
            <source>no total yet</source>
            <translation>noch keine Summe</translation>
        </message>
        <message>
            <source>In order of this, drafts stand together: what they come to today is not kept</source>
            <translation>In dieser Reihenfolge stehen Entwürfe beisammen: Was sie heute ergeben, wird nicht aufbewahrt</translation>
        </message>
        <message>
            <source>Number</source>
            <translation>Nummer</translation>
        </message>
        <message>
            <source>Day</source>
            <translation>Tag</translation>
        </message>
        <message>
            <source>Customer</source>
            <translation>Kunde</translation>
        </message>
        <message>
            <source>What</source>
            <translation>Was</translation>
        </message>
        <message>
            <source>Stage</source>
            <translation>Stand</translation>
        </message>
        <message>
            <source>To pay</source>
            <translation>Zu zahlen</translation>
        </message>
        <message>
            <source>Left to pay</source>
            <translation>Noch offen</translation>
        </message>
    </context>
    <context>
        <name>sp::jobs::PapersDialog</name>
        <message>
            <source>Papers of %1</source>
            <translation>Belege zu %1</translation>
        </message>
        <message>
            <source>Day</source>
            <translation>Tag</translation>
        </message>
        <message>
            <source>Paper</source>
            <translation>Beleg</translation>
        </message>
        <message>
            <source>Number</source>
            <translation>Nummer</translation>
        </message>
        <message>
            <source>Amount</source>
            <translation>Betrag</translation>
        </message>
        <message>
            <source>How much a credit note takes back; empty: all that is left of the invoice</source>
            <translation>Wie viel eine Gutschrift aufhebt; leer: alles, was von der Rechnung übrig ist</translation>
        </message>
        <message>
            <source>&amp;Take back</source>
            <translation>Auf&amp;heben</translation>
        </message>
        <message>
            <source>&amp;Show</source>
            <translation>&amp;Anzeigen</translation>
        </message>
        <message>
            <source>&amp;Difference</source>
            <translation>&amp;Unterschied</translation>
        </message>
        <message>
            <source>&amp;Invoice</source>
            <translation>&amp;Rechnung</translation>
        </message>
        <message>
            <source>&amp;Receipt</source>
            <translation>&amp;Quittung</translation>
        </message>
        <message>
            <source>&amp;Credit note</source>
            <translation>&amp;Gutschrift</translation>
        </message>
        <message>
            <source>Close</source>
            <translation>Schließen</translation>
        </message>
        <message>
            <source>Quote, replaced</source>
            <translation>Angebot, ersetzt</translation>
        </message>
        <message>
            <source>&amp;Invoice of %1</source>
            <translation>&amp;Rechnung über %1</translation>
        </message>
        <message>
            <source>It stays once it is issued; a mistake is credited</source>
            <translation>Sie bleibt, sobald sie ausgestellt ist; ein Fehler wird gutgeschrieben</translation>
        </message>
        <message>
            <source>&amp;Receipt for %1</source>
            <translation>&amp;Quittung über %1</translation>
        </message>
        <message>
            <source>Every payment that stands has its receipt</source>
            <translation>Jede gültige Zahlung hat ihre Quittung</translation>
        </message>
        <message>
            <source>For the payment of %1</source>
            <translation>Für die Zahlung vom %1</translation>
        </message>
        <message>
            <source>&amp;Credit note for %1</source>
            <translation>&amp;Gutschrift zu %1</translation>
        </message>
        <message>
            <source>%1 are left of it</source>
            <translation>%1 sind davon übrig</translation>
        </message>
        <message>
            <source>There is no invoice of which anything is left</source>
            <translation>Es gibt keine Rechnung, von der etwas übrig ist</translation>
        </message>
    </context>
    <context>
        <name>sp::jobs::PaymentDialog</name>
        <message>
            <source>Payments for %1</source>
            <translation>Zahlungen für %1</translation>
        </message>
        <message>
            <source>Payments</source>
            <translation>Zahlungen</translation>
        </message>
        <message>
            <source>Day</source>
            <translation>Tag</translation>
        </message>
        <message>
            <source>How</source>
            <translation>Wie</translation>
        </message>
        <message>
            <source>Note</source>
            <translation>Notiz</translation>
        </message>
        <message>
            <source>Amount</source>
            <translation>Betrag</translation>
        </message>
        <message>
            <source>To pay</source>
            <translation>Zu zahlen</translation>
        </message>
        <message>
            <source>Paid</source>
            <translation>Gezahlt</translation>
        </message>
        <message>
            <source>Left</source>
            <translation>Offen</translation>
        </message>
        <message>
            <source>&amp;Amount</source>
            <translation>&amp;Betrag</translation>
        </message>
        <message>
            <source>“%1”</source>
            <translation>„%1“</translation>
        </message>
        <message>
            <source>&amp;How</source>
            <translation>&amp;Wie</translation>
        </message>
        <message>
            <source>&amp;Day</source>
            <translation>&amp;Tag</translation>
        </message>
        <message>
            <source>&amp;Note</source>
            <translation>&amp;Notiz</translation>
        </message>
        <message>
            <source>&amp;Take payment</source>
            <translation>&amp;Zahlung buchen</translation>
        </message>
        <message>
            <source>&amp;Give back</source>
            <translation>&amp;Erstatten</translation>
        </message>
        <message>
            <source>Take this &amp;one back</source>
            <translation>Diese &amp;stornieren</translation>
        </message>
        <message>
            <source>Books the chosen payment back: one that was a mistake</source>
            <translation>Bucht die gewählte Zahlung zurück: eine, die ein Irrtum war</translation>
        </message>
        <message>
            <source>Close</source>
            <translation>Schließen</translation>
        </message>
        <message>
            <source>Credit</source>
            <translation>Guthaben</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>&amp;Take %1, change %2</source>
            <translation>%1 bu&amp;chen, Rückgeld %2</translation>
        </message>
        <message>
            <source>&amp;Take %1, rounded from %2</source>
            <translation>%1 bu&amp;chen, gerundet von %2</translation>
        </message>
        <message>
            <source>&amp;Keep %1 as credit</source>
            <translation>%1 als &amp;Guthaben behalten</translation>
        </message>
        <message>
            <source>No payment is chosen; choose the one to take back in the list.</source>
            <translation>Es ist keine Zahlung gewählt; wählen Sie in der Liste die, die storniert werden soll.</translation>
        </message>
    </context>
    <context>
        <name>sp::jobs::TodayCard</name>
        <message>
            <source>To be ready</source>
            <translation>Fertig zu machen</translation>
        </message>
        <message>
            <source>Deposits missing</source>
            <translation>Fehlende Anzahlungen</translation>
        </message>
        <message>
            <source>Quotes about to lapse</source>
            <translation>Bald ablaufende Angebote</translation>
        </message>
        <message>
            <source>Ready, not collected</source>
            <translation>Fertig, nicht abgeholt</translation>
        </message>
        <message>
            <source>Money owed</source>
            <translation>Offenes Geld</translation>
        </message>
        <message>
            <source>Nothing asks for anything today.</source>
            <translation>Heute ist nichts zu erledigen.</translation>
        </message>
        <message>
            <source>What today asks</source>
            <translation>Was heute zu tun ist</translation>
        </message>
        <message numerus="yes">
            <source>%n things</source>
            <translation>
                <numerusform>%n Aufgabe</numerusform>
                <numerusform>%n Aufgaben</numerusform>
            </translation>
        </message>
        <message>
            <source>Certificates that end</source>
            <translation>Ablaufende Nachweise</translation>
        </message>
        <message>
            <source>%1, ended on %2</source>
            <translation>%1, abgelaufen am %2</translation>
        </message>
        <message>
            <source>%1, ends on %2</source>
            <translation>%1, läuft am %2 ab</translation>
        </message>
        <message>
            <source>%1, late: wanted %2</source>
            <translation>%1, zu spät: gewünscht bis %2</translation>
        </message>
        <message>
            <source>%1, wanted today</source>
            <translation>%1, heute gewünscht</translation>
        </message>
        <message>
            <source>%1, agreed %2</source>
            <translation>%1, beauftragt %2</translation>
        </message>
        <message>
            <source>%1, until %2</source>
            <translation>%1, bis %2</translation>
        </message>
        <message>
            <source>%1, ready since %2</source>
            <translation>%1, fertig seit %2</translation>
        </message>
        <message>
            <source>%1, collected %2</source>
            <translation>%1, abgeholt %2</translation>
        </message>
    </context>
    <context>
        <name>sp::paper::PreviewDialog</name>
        <message>
            <source>Preview of %1</source>
            <translation>Vorschau von %1</translation>
        </message>
        <message>
            <source>Page &amp;back</source>
            <translation>Seite &amp;zurück</translation>
        </message>
        <message>
            <source>Page &amp;on</source>
            <translation>Seite &amp;weiter</translation>
        </message>
        <message>
            <source>&amp;Print…</source>
            <translation>&amp;Drucken…</translation>
        </message>
        <message>
            <source>&amp;Save as PDF…</source>
            <translation>Als &amp;PDF speichern…</translation>
        </message>
        <message>
            <source>&amp;Close</source>
            <translation>&amp;Schließen</translation>
        </message>
        <message>
            <source>Page %1 of %2</source>
            <translation>Seite %1 von %2</translation>
        </message>
        <message>
            <source>No printer is set up on this computer; save the sheet as a PDF instead.</source>
            <translation>Auf diesem Computer ist kein Drucker eingerichtet; speichern Sie das Blatt stattdessen als PDF.</translation>
        </message>
        <message>
            <source>Sent to the printer %1.</source>
            <translation>An den Drucker %1 geschickt.</translation>
        </message>
        <message>
            <source>Save as PDF</source>
            <translation>Als PDF speichern</translation>
        </message>
        <message>
            <source>PDF (*.pdf)</source>
            <translation>PDF (*.pdf)</translation>
        </message>
        <message>
            <source>Saved as %1.</source>
            <translation>Gespeichert als %1.</translation>
        </message>
    </context>
    <context>
        <name>sp::plans::MeasureTable</name>
        <message>
            <source>Measures on %1</source>
            <translation>Maße auf %1</translation>
        </message>
        <message>
            <source>Sheet</source>
            <translation>Bogen</translation>
        </message>
        <message>
            <source>Piece</source>
            <translation>Stück</translation>
        </message>
        <message>
            <source>Size</source>
            <translation>Größe</translation>
        </message>
        <message>
            <source>From the left</source>
            <translation>Von links</translation>
        </message>
        <message>
            <source>From the top</source>
            <translation>Von oben</translation>
        </message>
        <message>
            <source>Across</source>
            <translation>Waagerecht</translation>
        </message>
        <message>
            <source>Down</source>
            <translation>Senkrecht</translation>
        </message>
    </context>
    <context>
        <name>sp::plans::PlanDialog</name>
        <message>
            <source>Sheet plan of %1</source>
            <translation>Bogenplan von %1</translation>
        </message>
        <message>
            <source>Pi&amp;eces to make</source>
            <translation>Zu fertigende &amp;Stück</translation>
        </message>
        <message>
            <source>Sheets</source>
            <translation>Bögen</translation>
        </message>
        <message>
            <source>&amp;Measures from the edges</source>
            <translation>&amp;Maße von den Kanten</translation>
        </message>
        <message>
            <source>&amp;Print or save…</source>
            <translation>&amp;Drucken oder speichern…</translation>
        </message>
        <message>
            <source>&amp;Close</source>
            <translation>S&amp;chließen</translation>
        </message>
        <message>
            <source>Say how many pieces are made.</source>
            <translation>Sagen Sie, wie viele Stück gefertigt werden.</translation>
        </message>
        <message>
            <source>Nothing here is cut from a sheet or a roll.</source>
            <translation>Nichts hier wird aus einem Bogen oder von einer Rolle geschnitten.</translation>
        </message>
        <message>
            <source>Laying the pieces…</source>
            <translation>Die Stücke werden gelegt…</translation>
        </message>
        <message>
            <source>Every piece to scale, with its border; a folded corner is a piece turned a quarter.</source>
            <translation>Jedes Stück maßstäblich, mit seiner Zugabe; eine umgeknickte Ecke ist ein um ein Viertel gedrehtes Stück.</translation>
        </message>
        <message>
            <source>The first %1 different sheets; all of them are on the printed plan.</source>
            <translation>Die ersten %1 verschiedenen Bögen; alle stehen auf dem gedruckten Plan.</translation>
        </message>
        <message>
            <source>The measures of the other sheets are on the printed plan.</source>
            <translation>Die Maße der anderen Bögen stehen auf dem gedruckten Plan.</translation>
        </message>
        <message>
            <source>Cutting plan %1</source>
            <translation>Schnittplan %1</translation>
        </message>
    </context>
    <context>
        <name>sp::plans::PlanPicture</name>
        <message>
            <source>%1 of %2, %3</source>
            <translation>%1 von %2, %3</translation>
        </message>
        <message>
            <source>%1 left</source>
            <translation>%1 übrig</translation>
        </message>
    </context>
    <context>
        <name>sp::program::ArtworkPages</name>
        <message>
            <source>Estimate from a shape</source>
            <translation>Nach einer Form schätzen</translation>
        </message>
        <message>
            <source>Drawings (*.svg *.svgz *.dxf *.plt);;All files (*)</source>
            <translation>Zeichnungen (*.svg *.svgz *.dxf *.plt);;Alle Dateien (*)</translation>
        </message>
    </context>
    <context>
        <name>sp::program::BookCare</name>
        <message>
            <source>Backups…</source>
            <translation>Sicherungen…</translation>
        </message>
        <message>
            <source>Not kept yet was what stood in “%1”: %2</source>
            <translation>Noch nicht gespeichert war, was in „%1“ stand: %2</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>Closed unexpectedly. Everything that was kept, the last of it at %1, is here.</source>
            <translation>Unerwartet geschlossen. Alles, was gespeichert war, zuletzt um %1, ist da.</translation>
        </message>
        <message>
            <source>Check this book</source>
            <translation>Dieses Buch prüfen</translation>
        </message>
        <message>
            <source>The disk is getting full: %1 MB more should be free for this book and its backups.</source>
            <translation>Der Datenträger wird voll: Für dieses Buch und seine Sicherungen sollten %1 MB mehr frei sein.</translation>
        </message>
        <message>
            <source>The second place for backups, %1, has not been there since %2; plug it in when you can.</source>
            <translation>Der zweite Ort für Sicherungen, %1, ist seit %2 nicht da gewesen; schließen Sie ihn an, sobald Sie können.</translation>
        </message>
        <message>
            <source>Stop</source>
            <translation>Anhalten</translation>
        </message>
        <message>
            <source>%1 %</source>
            <translation>%1 %</translation>
        </message>
        <message>
            <source>This book is being checked; work on meanwhile.</source>
            <translation>Dieses Buch wird geprüft; arbeiten Sie ruhig weiter.</translation>
        </message>
        <message>
            <source>This book is sound. Quotes: %1; given and unchanged: %2.</source>
            <translation>Dieses Buch ist in Ordnung. Angebote: %1; abgegeben und unverändert: %2.</translation>
        </message>
        <message>
            <source>Save a copy</source>
            <translation>Kopie speichern</translation>
        </message>
        <message>
            <source>Save a copy of this book</source>
            <translation>Eine Kopie dieses Buchs speichern</translation>
        </message>
        <message>
            <source>%1 copy</source>
            <translation>%1 Kopie</translation>
        </message>
        <message>
            <source>Job books (*.jobbook)</source>
            <translation>Auftragsbücher (*.jobbook)</translation>
        </message>
        <message>
            <source>A copy of this book is being made; work on meanwhile.</source>
            <translation>Eine Kopie dieses Buchs wird gemacht; arbeiten Sie ruhig weiter.</translation>
        </message>
        <message>
            <source>The book is being copied to this computer.</source>
            <translation>Das Buch wird auf diesen Computer kopiert.</translation>
        </message>
        <message>
            <source>A copy of this book is in %1.</source>
            <translation>Eine Kopie dieses Buchs ist in %1.</translation>
        </message>
        <message>
            <source>A copy is in %1, but as damaged as this book. %2</source>
            <translation>Eine Kopie ist in %1, aber so beschädigt wie dieses Buch. %2</translation>
        </message>
    </context>
    <context>
        <name>sp::program::BookTrouble</name>
        <message>
            <source>&amp;Try again</source>
            <translation>&amp;Noch einmal versuchen</translation>
        </message>
        <message>
            <source>Look at the &amp;demo book</source>
            <translation>&amp;Beispielbuch ansehen</translation>
        </message>
        <message>
            <source>Start a &amp;job book…</source>
            <translation>&amp;Auftragsbuch beginnen…</translation>
        </message>
        <message>
            <source>Stonepenny</source>
            <translation>Stonepenny</translation>
        </message>
        <message>
            <source>&amp;Locate it…</source>
            <translation>&amp;Suchen…</translation>
        </message>
        <message>
            <source>Open a &amp;backup…</source>
            <translation>Sicherung ö&amp;ffnen…</translation>
        </message>
        <message>
            <source>The demo book is not open</source>
            <translation>Das Beispielbuch ist nicht geöffnet</translation>
        </message>
        <message>
            <source>Your job book “%1” is not open</source>
            <translation>Ihr Auftragsbuch „%1“ ist nicht geöffnet</translation>
        </message>
        <message>
            <source>It is kept in %1. Nothing in it is yours.</source>
            <translation>Es liegt in %1. Nichts darin gehört Ihnen.</translation>
        </message>
        <message>
            <source>It was last at %1. If it is on a stick or another disk, plug that in and try again.</source>
            <translation>Zuletzt war es in %1. Wenn es auf einem Stick oder anderen Datenträger ist, schließen Sie diesen an und versuchen Sie es noch einmal.</translation>
        </message>
    </context>
    <context>
        <name>sp::program::KeysDialog</name>
        <message>
            <source>Keys and help</source>
            <translation>Tasten und Hilfe</translation>
        </message>
        <message>
            <source>Counter</source>
            <translation>Theke</translation>
        </message>
        <message>
            <source>One order while the customer waits: who, what, how many; the price moves as you type.</source>
            <translation>Eine Bestellung, während der Kunde wartet: wer, was, wie viele; der Preis geht beim Tippen mit.</translation>
        </message>
        <message>
            <source>Designs</source>
            <translation>Motive</translation>
        </message>
        <message>
            <source>What you set: its size, its stones by colour, and whether its templates are on the wall.</source>
            <translation>Was Sie setzen: seine Größe, seine Steine nach Farbe und ob seine Schablonen an der Wand hängen.</translation>
        </message>
        <message>
            <source>Supplies</source>
            <translation>Material</translation>
        </message>
        <message>
            <source>What you buy, in which packs and at what price, and what lies on the shelf.</source>
            <translation>Was Sie kaufen, in welchen Packungen und zu welchem Preis, und was auf Lager ist.</translation>
        </message>
        <message>
            <source>Buying</source>
            <translation>Einkauf</translation>
        </message>
        <message>
            <source>The cheapest way to buy what a design or the order takes: kits, bulk packs, or both.</source>
            <translation>Der günstigste Einkauf für ein Motiv oder die Bestellung: Sets, Packungen oder beides.</translation>
        </message>
        <message>
            <source>Jobs</source>
            <translation>Aufträge</translation>
        </message>
        <message>
            <source>Every order by its stage, what was paid for it, and what has changed since it was given.</source>
            <translation>Jede Bestellung nach ihrem Stand, was dafür gezahlt wurde und was sich seit der Abgabe geändert hat.</translation>
        </message>
        <message>
            <source>Bench</source>
            <translation>Werkbank</translation>
        </message>
        <message>
            <source>What is to be made, in its order: when each job is ready, which is late, and its bench sheet.</source>
            <translation>Was zu fertigen ist, in seiner Reihenfolge: wann jeder Auftrag fertig ist, welcher zu spät, und sein Laufzettel.</translation>
        </message>
        <message>
            <source>Customers</source>
            <translation>Kunden</translation>
        </message>
        <message>
            <source>Who orders: how one reaches them, their certificate, what they ordered and what they owe.</source>
            <translation>Wer bestellt: wie man sie erreicht, ihr Nachweis, was sie bestellt haben und was sie schulden.</translation>
        </message>
        <message>
            <source>Figures</source>
            <translation>Auswertung</translation>
        </message>
        <message>
            <source>What a month earned: income, cost and what an hour at the bench brought; where it came from.</source>
            <translation>Was ein Monat verdient hat: Erlös, Kosten und was eine Werkbankstunde brachte; woher es kam.</translation>
        </message>
        <message>
            <source>Shop</source>
            <translation>Betrieb</translation>
        </message>
        <message>
            <source>What you decide once: letterhead, rates, mark-up, tax, the bench.</source>
            <translation>Was Sie einmal festlegen: Briefkopf, Sätze, Aufschlag, Steuer, die Werkbank.</translation>
        </message>
        <message>
            <source>Set up</source>
            <translation>Einrichten</translation>
        </message>
        <message>
            <source>The first steps of a new shop, and what a price still lacks; Ctrl+Enter goes on to the next step.</source>
            <translation>Die ersten Schritte eines neuen Betriebs und was einem Preis noch fehlt; Strg+Enter geht zum nächsten Schritt.</translation>
        </message>
        <message>
            <source>Enter</source>
            <translation>Enter</translation>
        </message>
        <message>
            <source>takes what is typed or marked, and goes on to the next field</source>
            <translation>nimmt das Getippte oder Markierte und geht zum nächsten Feld</translation>
        </message>
        <message>
            <source>Tab</source>
            <translation>Tab</translation>
        </message>
        <message>
            <source>goes on, and takes what is marked in a list, or a new customer’s name</source>
            <translation>geht weiter und nimmt, was in einer Liste markiert ist, oder den Namen eines neuen Kunden</translation>
        </message>
        <message>
            <source>Down</source>
            <translation>Pfeil ab</translation>
        </message>
        <message>
            <source>opens the list of a field, and goes on in it</source>
            <translation>öffnet die Liste eines Feldes und geht darin weiter</translation>
        </message>
        <message>
            <source>Esc</source>
            <translation>Esc</translation>
        </message>
        <message>
            <source>closes a list or a window</source>
            <translation>schließt eine Liste oder ein Fenster</translation>
        </message>
        <message>
            <source>Alt and a letter</source>
            <translation>Alt und ein Buchstabe</translation>
        </message>
        <message>
            <source>goes to the field or button whose word has that letter underlined</source>
            <translation>geht zu dem Feld oder Knopf, in dessen Wort dieser Buchstabe unterstrichen ist</translation>
        </message>
        <message>
            <source>Ctrl and a number</source>
            <translation>Strg und eine Zahl</translation>
        </message>
        <message>
            <source>goes to a place: 1 is the Counter</source>
            <translation>geht zu einem Bereich: 1 ist die Theke</translation>
        </message>
        <message>
            <source>The places</source>
            <translation>Die Bereiche</translation>
        </message>
        <message>
            <source>Keys of the Book menu</source>
            <translation>Tasten im Menü „Buch“</translation>
        </message>
        <message>
            <source>Keys in every place</source>
            <translation>Tasten in jedem Bereich</translation>
        </message>
        <message>
            <source>How a price is made</source>
            <translation>Wie ein Preis entsteht</translation>
        </message>
        <message>
            <source>How a figure of the cost sheet is made stands at the figure: turn the slip over and open its row.</source>
            <translation>Wie eine Zahl des Kostenblatts entsteht, steht bei der Zahl: Drehen Sie den Zettel um und öffnen Sie ihre Zeile.</translation>
        </message>
        <message>
            <source>For 24 pieces, with the prices of this book, each figure of the job is made so. The same stands at the figure: turn the slip over and open its row.</source>
            <translation>Für 24 Stück, mit den Preisen dieses Buchs, entsteht jede Zahl des Auftrags so. Dasselbe steht bei der Zahl: Drehen Sie den Zettel um und öffnen Sie ihre Zeile.</translation>
        </message>
    </context>
    <context>
        <name>sp::program::Launcher</name>
        <message>
            <source>Locate your job book</source>
            <translation>Ihr Auftragsbuch suchen</translation>
        </message>
        <message>
            <source>Open a backup of your job book</source>
            <translation>Eine Sicherung Ihres Auftragsbuchs öffnen</translation>
        </message>
        <message>
            <source>Start a job book</source>
            <translation>Auftragsbuch beginnen</translation>
        </message>
        <message>
            <source>My shop</source>
            <translation>Mein Betrieb</translation>
        </message>
        <message>
            <source>Open a job book</source>
            <translation>Auftragsbuch öffnen</translation>
        </message>
    </context>
    <context>
        <name>sp::program::MainWindow</name>
        <message>
            <source>%1 (demo) – Stonepenny</source>
            <translation>%1 (Beispiel) – Stonepenny</translation>
        </message>
        <message>
            <source>%1 – Stonepenny</source>
            <translation>%1 – Stonepenny</translation>
        </message>
        <message numerus="yes">
            <source>%n things asked today</source>
            <translation>
                <numerusform>%n Aufgabe für heute</numerusform>
                <numerusform>%n Aufgaben für heute</numerusform>
            </translation>
        </message>
        <message>
            <source>“%1” is counted and in no design yet.</source>
            <translation>„%1“ ist gezählt und noch in keinem Motiv.</translation>
        </message>
        <message>
            <source>Back to it</source>
            <translation>Zurück dazu</translation>
        </message>
        <message>
            <source>%1, %2: what is typed there cannot be used; prices go by what was there before.</source>
            <translation>%1, %2: Was dort getippt ist, lässt sich nicht verwenden; die Preise gehen nach dem, was vorher dort stand.</translation>
        </message>
        <message>
            <source>Mend it</source>
            <translation>Berichtigen</translation>
        </message>
        <message>
            <source>Copy it to this computer</source>
            <translation>Auf diesen Computer kopieren</translation>
        </message>
        <message>
            <source>Save a copy</source>
            <translation>Kopie speichern</translation>
        </message>
        <message>
            <source>A demo book: look around, nothing here is yours.</source>
            <translation>Ein Beispielbuch: Sehen Sie sich um, nichts hier gehört Ihnen.</translation>
        </message>
        <message>
            <source>Start my own book</source>
            <translation>Eigenes Buch beginnen</translation>
        </message>
        <message>
            <source>Not saved: %1</source>
            <translation>Nicht gespeichert: %1</translation>
        </message>
        <message>
            <source>Saved %1</source>
            <translation>Gespeichert %1</translation>
        </message>
        <message>
            <source>Un&amp;do</source>
            <translation>&amp;Rückgängig</translation>
        </message>
        <message>
            <source>Un&amp;do: %1</source>
            <translation>&amp;Rückgängig: %1</translation>
        </message>
        <message>
            <source>&amp;Redo</source>
            <translation>&amp;Wiederholen</translation>
        </message>
        <message>
            <source>&amp;Redo: %1</source>
            <translation>&amp;Wiederholen: %1</translation>
        </message>
        <message>
            <source>Undone: %1.</source>
            <translation>Rückgängig gemacht: %1.</translation>
        </message>
        <message>
            <source>Nothing of a given quote is undone. Elsewhere in the book the last was: %1.</source>
            <translation>An einem abgegebenen Angebot wird nichts rückgängig gemacht. Das Letzte sonst im Buch war: %1.</translation>
        </message>
        <message>
            <source>Undo that</source>
            <translation>Dies rückgängig machen</translation>
        </message>
        <message>
            <source>Done again: %1.</source>
            <translation>Wiederholt: %1.</translation>
        </message>
        <message>
            <source>Nothing of a given quote is done again. Elsewhere in the book it would be: %1.</source>
            <translation>An einem abgegebenen Angebot wird nichts wiederholt. Sonst im Buch wäre es: %1.</translation>
        </message>
        <message>
            <source>Do that again</source>
            <translation>Dies wiederholen</translation>
        </message>
        <message>
            <source>Count a cut file</source>
            <translation>Schnittdatei zählen</translation>
        </message>
        <message>
            <source>Cut files (*.svg *.svgz *.dxf *.plt);;All files (*)</source>
            <translation>Schnittdateien (*.svg *.svgz *.dxf *.plt);;Alle Dateien (*)</translation>
        </message>
        <message>
            <source>&amp;New order</source>
            <translation>&amp;Neue Bestellung</translation>
        </message>
        <message>
            <source>&amp;Find in this place</source>
            <translation>In diese&amp;m Bereich suchen</translation>
        </message>
        <message>
            <source>F&amp;ind a quote…</source>
            <translation>Angebot &amp;suchen…</translation>
        </message>
        <message>
            <source>&amp;Count a cut file…</source>
            <translation>Schnittdatei &amp;zählen…</translation>
        </message>
        <message>
            <source>&amp;Estimate stones…</source>
            <translation>Steine s&amp;chätzen…</translation>
        </message>
        <message>
            <source>Offer &amp;another choice</source>
            <translation>Weitere &amp;Variante anbieten</translation>
        </message>
        <message>
            <source>&amp;Give this quote</source>
            <translation>Angebot &amp;abgeben</translation>
        </message>
        <message>
            <source>&amp;Print or save the sheet…</source>
            <translation>Blatt &amp;drucken oder speichern…</translation>
        </message>
        <message>
            <source>&amp;Turn the slip over</source>
            <translation>Ze&amp;ttel umdrehen</translation>
        </message>
        <message>
            <source>Start a &amp;job book…</source>
            <translation>Auftragsbuch &amp;beginnen…</translation>
        </message>
        <message>
            <source>&amp;Open a job book…</source>
            <translation>Auftragsbuch &amp;öffnen…</translation>
        </message>
        <message>
            <source>Last &amp;books</source>
            <translation>&amp;Letzte Bücher</translation>
        </message>
        <message>
            <source>&amp;Save a copy of this book…</source>
            <translation>&amp;Kopie dieses Buchs speichern…</translation>
        </message>
        <message>
            <source>Back&amp;ups…</source>
            <translation>Sicherun&amp;gen…</translation>
        </message>
        <message>
            <source>C&amp;heck this book</source>
            <translation>Dieses Buch prü&amp;fen</translation>
        </message>
        <message>
            <source>&amp;Look</source>
            <translation>Ausse&amp;hen</translation>
        </message>
        <message>
            <source>O&amp;wner’s side turns back</source>
            <translation>&amp;Inhaberseite dreht zurück</translation>
        </message>
        <message>
            <source>&amp;Keys and help</source>
            <translation>Tast&amp;en und Hilfe</translation>
        </message>
        <message>
            <source>About Stonepenn&amp;y</source>
            <translation>Über Stonepenn&amp;y</translation>
        </message>
        <message>
            <source>&amp;Quit</source>
            <translation>&amp;Programm beenden</translation>
        </message>
        <message>
            <source>Book</source>
            <translation>Buch</translation>
        </message>
        <message>
            <source>Everything that can be done with this job book (F10)</source>
            <translation>Alles, was sich mit diesem Auftragsbuch machen lässt (F10)</translation>
        </message>
        <message>
            <source>Book menu</source>
            <translation>Menü „Buch“</translation>
        </message>
        <message>
            <source>As the &amp;system</source>
            <translation>Wie das &amp;System</translation>
        </message>
        <message>
            <source>&amp;Light</source>
            <translation>&amp;Hell</translation>
        </message>
        <message>
            <source>&amp;Dark</source>
            <translation>&amp;Dunkel</translation>
        </message>
        <message>
            <source>Light, high &amp;contrast</source>
            <translation>Hell, hoher &amp;Kontrast</translation>
        </message>
        <message>
            <source>Dark, &amp;high contrast</source>
            <translation>Dunkel, h&amp;oher Kontrast</translation>
        </message>
        <message>
            <source>L&amp;arger text</source>
            <translation>&amp;Größere Schrift</translation>
        </message>
        <message>
            <source>S&amp;maller text</source>
            <translation>K&amp;leinere Schrift</translation>
        </message>
        <message>
            <source>&amp;Usual text size</source>
            <translation>&amp;Übliche Schriftgröße</translation>
        </message>
        <message>
            <source>The window speaks this language from the next start on.</source>
            <translation>Das Fenster spricht diese Sprache ab dem nächsten Start.</translation>
        </message>
        <message>
            <source>After &amp;half a minute without a key</source>
            <translation>Nach einer &amp;halben Minute ohne Taste</translation>
        </message>
        <message>
            <source>After &amp;two minutes without a key</source>
            <translation>Nach &amp;zwei Minuten ohne Taste</translation>
        </message>
        <message>
            <source>After te&amp;n minutes without a key</source>
            <translation>Nach z&amp;ehn Minuten ohne Taste</translation>
        </message>
        <message>
            <source>Only &amp;when I turn it</source>
            <translation>Nur, &amp;wenn ich sie umdrehe</translation>
        </message>
        <message>
            <source>The &amp;demo book</source>
            <translation>Das Beispielb&amp;uch</translation>
        </message>
        <message>
            <source>About Stonepenny</source>
            <translation>Über Stonepenny</translation>
        </message>
        <message>
            <source>Stonepenny %1, for shops that set hot-fix stones.

Under the MIT licence. It stands on Qt %2 (LGPL 3), SQLite, fmt, pugixml and JSON for Modern C++.

What it says about tax, safety and law are reminders: local rules, the makers’ data and licensed practice come first.</source>
            <translation>Stonepenny %1, für Betriebe, die Hotfix-Steine setzen.

Unter der MIT-Lizenz. Es beruht auf Qt %2 (LGPL 3), SQLite, fmt, pugixml und JSON for Modern C++.

Was es über Steuer, Sicherheit und Recht sagt, sind Erinnerungen: Örtliche Regeln, die Angaben der Hersteller und zugelassene Praxis gehen vor.</translation>
        </message>
        <message>
            <source>What quote %1 ordered cannot be priced today. %2</source>
            <translation>Was Angebot %1 bestellt hat, lässt sich heute nicht berechnen. %2</translation>
        </message>
        <message>
            <source>As in quote %1, and it comes to the same today.</source>
            <translation>Wie in Angebot %1, und es ergibt heute dasselbe.</translation>
        </message>
        <message>
            <source>As in quote %1; today it comes to %2 less.</source>
            <translation>Wie in Angebot %1; heute ergibt es %2 weniger.</translation>
        </message>
        <message>
            <source>As in quote %1; today it comes to %2 more.</source>
            <translation>Wie in Angebot %1; heute ergibt es %2 mehr.</translation>
        </message>
        <message>
            <source>Why</source>
            <translation>Warum</translation>
        </message>
        <message>
            <source>Language of window and &amp;menus</source>
            <translation>Sprac&amp;he des Fensters</translation>
        </message>
    </context>
    <context>
        <name>sp::shop::BenchGrid</name>
        <message>
            <source>a job</source>
            <translation>je Auftrag</translation>
        </message>
        <message>
            <source>a colour</source>
            <translation>je Farbe</translation>
        </message>
        <message>
            <source>a piece</source>
            <translation>je Stück</translation>
        </message>
        <message>
            <source>100 stones</source>
            <translation>je 100 Steine</translation>
        </message>
        <message>
            <source>a press cycle</source>
            <translation>je Pressgang</translation>
        </message>
        <message>
            <source>learning</source>
            <translation>Lernrate</translation>
        </message>
        <message>
            <source>%1, learning</source>
            <translation>%1, Lernrate</translation>
        </message>
    </context>
    <context>
        <name>sp::shop::CardIndex</name>
        <message>
            <source>Cards of this page</source>
            <translation>Karten dieser Seite</translation>
        </message>
    </context>
    <context>
        <name>sp::shop::ClosedRows</name>
        <message>
            <source>+ closed days</source>
            <translation>+ Schließtage</translation>
        </message>
        <message>
            <source>closed from</source>
            <translation>geschlossen von</translation>
        </message>
        <message>
            <source>to</source>
            <translation>bis</translation>
        </message>
        <message>
            <source>why</source>
            <translation>warum</translation>
        </message>
        <message>
            <source>first of the closed days %1</source>
            <translation>erster der Schließtage %1</translation>
        </message>
        <message>
            <source>last of the closed days %1</source>
            <translation>letzter der Schließtage %1</translation>
        </message>
        <message>
            <source>why closed, days %1</source>
            <translation>warum geschlossen, Tage %1</translation>
        </message>
        <message>
            <source>Take the closed days %1 out</source>
            <translation>Schließtage %1 herausnehmen</translation>
        </message>
    </context>
    <context>
        <name>sp::shop::LadderPanel</name>
        <message>
            <source>What it makes of the design</source>
            <translation>Was es aus dem Motiv macht</translation>
        </message>
        <message>
            <source>Once there is a design, its prices by quantity stand here.</source>
            <translation>Sobald es ein Motiv gibt, stehen hier seine Preise nach Menge.</translation>
        </message>
    </context>
    <context>
        <name>sp::shop::LadderPicture</name>
        <message>
            <source>Price of a piece and total by quantity</source>
            <translation>Preis eines Stücks und Summe nach Menge</translation>
        </message>
        <message>
            <source>Left and Right move along the quantities</source>
            <translation>Links und Rechts gehen die Mengen entlang</translation>
        </message>
        <message>
            <source>A piece</source>
            <translation>Je Stück</translation>
        </message>
        <message>
            <source>In all</source>
            <translation>Zusammen</translation>
        </message>
    </context>
    <context>
        <name>sp::shop::PayRows</name>
        <message>
            <source>+ way to pay</source>
            <translation>+ Zahlungsart</translation>
        </message>
        <message>
            <source>Another way</source>
            <translation>Andere Art</translation>
        </message>
        <message>
            <source>Another way %1</source>
            <translation>Andere Art %1</translation>
        </message>
        <message>
            <source>way to pay, as it is called here</source>
            <translation>Zahlungsart, wie sie hier heißt</translation>
        </message>
        <message>
            <source>Give the way to pay a name.</source>
            <translation>Geben Sie der Zahlungsart einen Namen.</translation>
        </message>
        <message>
            <source>cash</source>
            <translation>bar</translation>
        </message>
        <message>
            <source>name of way to pay %1</source>
            <translation>Name der Zahlungsart %1</translation>
        </message>
        <message>
            <source>way to pay %1 is cash</source>
            <translation>Zahlungsart %1 ist bar</translation>
        </message>
        <message>
            <source>It is rounded to the smallest coin, and change is given of it</source>
            <translation>Wird auf die kleinste Münze gerundet, und davon gibt es Rückgeld</translation>
        </message>
        <message>
            <source>Take way to pay %1 out</source>
            <translation>Zahlungsart %1 herausnehmen</translation>
        </message>
    </context>
    <context>
        <name>sp::shop::ShopPage</name>
        <message>
            <source>Shop</source>
            <translation>Betrieb</translation>
        </message>
        <message>
            <source>&amp;Go to</source>
            <translation>&amp;Gehe zu</translation>
        </message>
        <message>
            <source>Then nobody is told any more that it is not in the price</source>
            <translation>Dann wird niemandem mehr gesagt, dass es nicht im Preis ist</translation>
        </message>
        <message>
            <source>Letterhead</source>
            <translation>Briefkopf</translation>
        </message>
        <message>
            <source>&amp;Name of the shop</source>
            <translation>&amp;Name des Betriebs</translation>
        </message>
        <message>
            <source>&amp;Address, and how to reach the shop</source>
            <translation>&amp;Adresse und wie der Betrieb zu erreichen ist</translation>
        </message>
        <message>
            <source>&amp;Terms, under the totals</source>
            <translation>&amp;Bedingungen, unter den Summen</translation>
        </message>
        <message>
            <source>&amp;Care and safety notes</source>
            <translation>&amp;Pflege- und Sicherheitshinweise</translation>
        </message>
        <message>
            <source>Care car&amp;ds</source>
            <translation>Pfleg&amp;ekarten</translation>
        </message>
        <message>
            <source>A page of cards to cut, for what is handed over: care, how a decal is applied, cautions</source>
            <translation>Eine Seite Karten zum Schneiden, für das, was übergeben wird: Pflege, Aufbringen eines Transfers, Warnhinweise</translation>
        </message>
        <message>
            <source>Show the first steps of a new shop</source>
            <translation>Die ersten Schritte eines neuen Betriebs zeigen</translation>
        </message>
        <message>
            <source>Money, paper and units</source>
            <translation>Geld, Papier und Einheiten</translation>
        </message>
        <message>
            <source>&amp;Paper</source>
            <translation>Papierf&amp;ormat</translation>
        </message>
        <message>
            <source>Letter</source>
            <translation>Letter</translation>
        </message>
        <message>
            <source>A4</source>
            <translation>A4</translation>
        </message>
        <message>
            <source>&amp;Lengths in</source>
            <translation>&amp;Längen in</translation>
        </message>
        <message>
            <source>inches</source>
            <translation>Zoll</translation>
        </message>
        <message>
            <source>millimetres</source>
            <translation>Millimeter</translation>
        </message>
        <message>
            <source>centimetres</source>
            <translation>Zentimeter</translation>
        </message>
        <message>
            <source>T&amp;emperatures in</source>
            <translation>&amp;Temperaturen in</translation>
        </message>
        <message>
            <source>Fahrenheit</source>
            <translation>Fahrenheit</translation>
        </message>
        <message>
            <source>Celsius</source>
            <translation>Celsius</translation>
        </message>
        <message>
            <source>as this window</source>
            <translation>wie dieses Fenster</translation>
        </message>
        <message>
            <source>Papers &amp;in</source>
            <translation>Pap&amp;iere auf</translation>
        </message>
        <message>
            <source>for customers with no language of their own</source>
            <translation>für Kunden ohne eigene Sprache</translation>
        </message>
        <message>
            <source>What an hour and a month cost</source>
            <translation>Was eine Stunde und ein Monat kosten</translation>
        </message>
        <message>
            <source>Lab&amp;our per hour</source>
            <translation>Lohn je St&amp;unde</translation>
        </message>
        <message>
            <source>No labour is meant</source>
            <translation>Bewusst ohne Lohn</translation>
        </message>
        <message>
            <source>Overhead per month</source>
            <translation>Gemeinkosten im Monat</translation>
        </message>
        <message>
            <source>No overhead is meant</source>
            <translation>Bewusst ohne Gemeinkosten</translation>
        </message>
        <message>
            <source>Productive time per month</source>
            <translation>Produktive Zeit im Monat</translation>
        </message>
        <message>
            <source>bench hours that carry the overhead</source>
            <translation>Werkbankstunden, die die Gemeinkosten tragen</translation>
        </message>
        <message>
            <source>Spoilage</source>
            <translation>Ausschuss</translation>
        </message>
        <message>
            <source>percent of the pieces made</source>
            <translation>Prozent der gefertigten Stücke</translation>
        </message>
        <message>
            <source>Spares are planned</source>
            <translation>Reserve wird geplant</translation>
        </message>
        <message>
            <source>where half a piece may spoil</source>
            <translation>wo ein halbes Stück verderben kann</translation>
        </message>
        <message>
            <source>always, one at least</source>
            <translation>immer, mindestens eines</translation>
        </message>
        <message>
            <source>never</source>
            <translation>nie</translation>
        </message>
        <message>
            <source>Supplies leave the shelf</source>
            <translation>Material verlässt das Lager</translation>
        </message>
        <message>
            <source>when a job is ready</source>
            <translation>wenn ein Auftrag fertig ist</translation>
        </message>
        <message>
            <source>when it is begun</source>
            <translation>wenn er begonnen wird</translation>
        </message>
        <message>
            <source>when I book it</source>
            <translation>wenn ich es buche</translation>
        </message>
        <message>
            <source>Replacing a garment</source>
            <translation>Ersatz eines Textils</translation>
        </message>
        <message>
            <source>a customer’s own, spoiled</source>
            <translation>eigenes des Kunden, verdorben</translation>
        </message>
        <message>
            <source>Mark-up ladder</source>
            <translation>Aufschlagsstaffel</translation>
        </message>
        <message>
            <source>From so many pieces of a line on, so much on top of the cost.</source>
            <translation>Ab so vielen Stück einer Position so viel auf die Kosten.</translation>
        </message>
        <message>
            <source>from pieces</source>
            <translation>ab Stück</translation>
        </message>
        <message>
            <source>mark-up</source>
            <translation>Aufschlag</translation>
        </message>
        <message>
            <source>margin</source>
            <translation>Marge</translation>
        </message>
        <message>
            <source>Rush</source>
            <translation>Eilzuschlag</translation>
        </message>
        <message>
            <source>Wanted within so many days of the quote: so much on top of the goods.</source>
            <translation>Gewünscht binnen so vieler Tage ab Angebot: so viel auf die Ware.</translation>
        </message>
        <message>
            <source>within days</source>
            <translation>binnen Tagen</translation>
        </message>
        <message>
            <source>surcharge</source>
            <translation>Zuschlag</translation>
        </message>
        <message>
            <source>Surcharges by place</source>
            <translation>Zuschläge nach Stelle</translation>
        </message>
        <message>
            <source>With a design at one of these places the customer pays so much more for each piece, under its name on the sheet.</source>
            <translation>Mit einem Motiv an einer dieser Stellen zahlt der Kunde für jedes Stück so viel mehr, unter ihrem Namen auf dem Blatt.</translation>
        </message>
        <message>
            <source>+ place</source>
            <translation>+ Stelle</translation>
        </message>
        <message>
            <source>place on the piece</source>
            <translation>Stelle auf dem Stück</translation>
        </message>
        <message>
            <source>for each piece</source>
            <translation>für jedes Stück</translation>
        </message>
        <message>
            <source>Sleeve</source>
            <translation>Ärmel</translation>
        </message>
        <message>
            <source>Sleeve %1</source>
            <translation>Ärmel %1</translation>
        </message>
        <message>
            <source>Give the place a name, as a line of an order has it.</source>
            <translation>Geben Sie der Stelle einen Namen, wie ihn eine Position der Bestellung hat.</translation>
        </message>
        <message>
            <source>name of place %1</source>
            <translation>Name der Stelle %1</translation>
        </message>
        <message>
            <source>surcharge of place %1</source>
            <translation>Zuschlag der Stelle %1</translation>
        </message>
        <message>
            <source>Take place %1 out</source>
            <translation>Stelle %1 herausnehmen</translation>
        </message>
        <message>
            <source>Step</source>
            <translation>Schritt</translation>
        </message>
        <message>
            <source>such as %1 or %2</source>
            <translation>wie %1 oder %2</translation>
        </message>
        <message>
            <source>A step is made of whole coins, such as %1; type another.</source>
            <translation>Ein Schritt besteht aus ganzen Münzen, wie %1; tippen Sie einen anderen.</translation>
        </message>
        <message>
            <source>Rounding, set-up, deposit</source>
            <translation>Rundung, Rüstkosten, Anzahlung</translation>
        </message>
        <message>
            <source>Piece prices are rounded</source>
            <translation>Stückpreise runden</translation>
        </message>
        <message>
            <source>to the nearest step</source>
            <translation>kaufmännisch auf den Schritt</translation>
        </message>
        <message>
            <source>up to the next step</source>
            <translation>aufwärts auf den Schritt</translation>
        </message>
        <message>
            <source>up to an ending</source>
            <translation>aufwärts auf eine Endung</translation>
        </message>
        <message>
            <source>Ending</source>
            <translation>Endung</translation>
        </message>
        <message>
            <source>95 for prices like 6.95</source>
            <translation>95 für Preise wie 6.95</translation>
        </message>
        <message>
            <source>Art and set-up</source>
            <translation>Grafik und Rüstkosten</translation>
        </message>
        <message>
            <source>spread over the pieces</source>
            <translation>auf die Stücke verteilt</translation>
        </message>
        <message>
            <source>a line of its own</source>
            <translation>eine eigene Position</translation>
        </message>
        <message>
            <source>Smallest order</source>
            <translation>Mindestbetrag</translation>
        </message>
        <message>
            <source>Deposit</source>
            <translation>Anzahlung</translation>
        </message>
        <message>
            <source>share of the total, before work starts</source>
            <translation>Anteil der Summe, vor Arbeitsbeginn</translation>
        </message>
        <message>
            <source>Deposit rounded up to</source>
            <translation>Anzahlung aufgerundet auf</translation>
        </message>
        <message>
            <source>A quote holds for</source>
            <translation>Ein Angebot gilt</translation>
        </message>
        <message>
            <source>days</source>
            <translation>Tage</translation>
        </message>
        <message>
            <source>An invoice is due after</source>
            <translation>Zahlungsfrist einer Rechnung</translation>
        </message>
        <message>
            <source>How you are paid</source>
            <translation>Wie Sie bezahlt werden</translation>
        </message>
        <message>
            <source>Without ways of your own: cash, card, transfer and other. Cash is rounded to the smallest coin that is in use, and change is given of it.</source>
            <translation>Ohne eigene Zahlungsarten: bar, Karte, Überweisung und Sonstiges. Bar wird auf die kleinste gängige Münze gerundet, und davon gibt es Rückgeld.</translation>
        </message>
        <message>
            <source>Smallest coin</source>
            <translation>Kleinste Münze</translation>
        </message>
        <message>
            <source>What is left to pay is rounded to it in cash; 0: to the last part of the currency</source>
            <translation>Was noch zu zahlen ist, wird bar darauf gerundet; 0: auf den letzten Teil der Währung</translation>
        </message>
        <message>
            <source>Of %1 that are left to pay, %2 are paid in cash.</source>
            <translation>Von %1, die noch zu zahlen sind, werden bar %2 gezahlt.</translation>
        </message>
        <message>
            <source>Tax and card fee</source>
            <translation>Steuer und Kartengebühr</translation>
        </message>
        <message>
            <source>Rates and rules are yours to confirm with your tax authority or an accountant; tax on what is given away differs by place. A card fee comes off the price, a share of all that is paid, tax included; whether it may be passed on differs by place and card.</source>
            <translation>Sätze und Regeln klären Sie bitte mit Ihrem Finanzamt oder einem Steuerberater; die Steuer auf Verschenktes ist je nach Ort verschieden. Eine Kartengebühr geht vom Preis ab, ein Anteil an allem Gezahlten samt Steuer; ob sie weitergegeben werden darf, ist je nach Ort und Karte verschieden.</translation>
        </message>
        <message>
            <source>Tax is called</source>
            <translation>Name der Steuer</translation>
        </message>
        <message>
            <source>Tax rate</source>
            <translation>Steuersatz</translation>
        </message>
        <message>
            <source>Rounded</source>
            <translation>Gerundet</translation>
        </message>
        <message>
            <source>once, on the whole order</source>
            <translation>einmal, auf die ganze Bestellung</translation>
        </message>
        <message>
            <source>on every line</source>
            <translation>auf jede Position</translation>
        </message>
        <message>
            <source>On what is given away</source>
            <translation>Auf Verschenktes</translation>
        </message>
        <message>
            <source>no tax</source>
            <translation>keine Steuer</translation>
        </message>
        <message>
            <source>tax on its cost, ours to pay</source>
            <translation>Steuer auf die Kosten, zu unseren Lasten</translation>
        </message>
        <message>
            <source>Prices hold the tax</source>
            <translation>Preise enthalten die Steuer</translation>
        </message>
        <message>
            <source>No tax is meant</source>
            <translation>Bewusst ohne Steuer</translation>
        </message>
        <message>
            <source>Then setting up counts it as decided</source>
            <translation>Dann zählt es beim Einrichten als entschieden</translation>
        </message>
        <message>
            <source>+ tax rate</source>
            <translation>+ Steuersatz</translation>
        </message>
        <message>
            <source>a line may name another rate</source>
            <translation>eine Position kann einen anderen Satz nennen</translation>
        </message>
        <message>
            <source>rate</source>
            <translation>Satz</translation>
        </message>
        <message>
            <source>Other rate</source>
            <translation>Anderer Satz</translation>
        </message>
        <message>
            <source>Other rate %1</source>
            <translation>Anderer Satz %1</translation>
        </message>
        <message>
            <source>Give the rate a name, as it is printed.</source>
            <translation>Geben Sie dem Satz einen Namen, wie er gedruckt wird.</translation>
        </message>
        <message>
            <source>name of further rate %1</source>
            <translation>Name des weiteren Satzes %1</translation>
        </message>
        <message>
            <source>further rate %1</source>
            <translation>weiterer Satz %1</translation>
        </message>
        <message>
            <source>Take further rate %1 out</source>
            <translation>Weiteren Satz %1 herausnehmen</translation>
        </message>
        <message>
            <source>Reckon with a card fee</source>
            <translation>Mit Kartengebühr rechnen</translation>
        </message>
        <message>
            <source>Card fee</source>
            <translation>Kartengebühr</translation>
        </message>
        <message>
            <source>and for each payment</source>
            <translation>und für jede Zahlung</translation>
        </message>
        <message>
            <source>What every line takes</source>
            <translation>Was jede Position braucht</translation>
        </message>
        <message>
            <source>Tape</source>
            <translation>Folie</translation>
        </message>
        <message>
            <source>Template sheet</source>
            <translation>Schablonenbogen</translation>
        </message>
        <message>
            <source>No tape is meant</source>
            <translation>Bewusst ohne Folie</translation>
        </message>
        <message>
            <source>No template is meant</source>
            <translation>Bewusst ohne Schablone</translation>
        </message>
        <message>
            <source>More or fewer: prices shown for</source>
            <translation>Mehr oder weniger: gezeigte Preise für</translation>
        </message>
        <message>
            <source>numbers of pieces, such as 12 24 48 96</source>
            <translation>Stückzahlen, wie 12 24 48 96</translation>
        </message>
        <message>
            <source>“%1” is not a number of pieces; write numbers with spaces between.</source>
            <translation>„%1“ ist keine Stückzahl; schreiben Sie Zahlen mit Leerzeichen dazwischen.</translation>
        </message>
        <message>
            <source>Print them on the sheet</source>
            <translation>Auf das Angebotsblatt drucken</translation>
        </message>
        <message>
            <source>Count a design’s pieces over all its lines</source>
            <translation>Stück eines Motivs über alle Positionen zählen</translation>
        </message>
        <message>
            <source>Planned pieces pay off art and cutting too</source>
            <translation>Auch Grafik und Schneiden auf geplante Stück umlegen</translation>
        </message>
        <message>
            <source>Say on the sheet where more pieces cost less</source>
            <translation>Auf dem Blatt sagen, wo mehr Stück weniger kosten</translation>
        </message>
        <message>
            <source>Bench hours</source>
            <translation>Werkbankstunden</translation>
        </message>
        <message>
            <source>How long the bench is worked at, of all hands together and without the counter and the books. Days are promised by it; while all of it is 0 none is.</source>
            <translation>Wie lange an der Werkbank gearbeitet wird, alle Hände zusammen und ohne Theke und Buchhaltung. Danach werden Tage zugesagt; solange alles 0 ist, keiner.</translation>
        </message>
        <message>
            <source>Monday</source>
            <translation>Montag</translation>
        </message>
        <message>
            <source>Tuesday</source>
            <translation>Dienstag</translation>
        </message>
        <message>
            <source>Wednesday</source>
            <translation>Mittwoch</translation>
        </message>
        <message>
            <source>Thursday</source>
            <translation>Donnerstag</translation>
        </message>
        <message>
            <source>Friday</source>
            <translation>Freitag</translation>
        </message>
        <message>
            <source>Saturday</source>
            <translation>Samstag</translation>
        </message>
        <message>
            <source>Sunday</source>
            <translation>Sonntag</translation>
        </message>
        <message>
            <source>Bench standards</source>
            <translation>Richtwerte der Werkbank</translation>
        </message>
        <message>
            <source>Starting values: time your own bench. Art to set up are done once for a job, the other steps for every piece.</source>
            <translation>Startwerte: Stoppen Sie die Zeiten an Ihrer Werkbank. Grafik bis Rüsten fallen einmal je Auftrag an, die anderen Schritte für jedes Stück.</translation>
        </message>
        <message>
            <source>Press and cutter</source>
            <translation>Presse und Plotter</translation>
        </message>
        <message>
            <source>A press and freshly pressed work burn: gloves, a cover sheet, ventilation. Retract blades before loading. The makers’ data, local rules and licensed practice come first.</source>
            <translation>An der Presse und an frisch Gepresstem verbrennt man sich: Handschuhe, Abdeckblatt, Lüftung. Messer vor dem Einlegen einziehen. Angaben der Hersteller, örtliche Regeln und zugelassene Praxis gehen vor.</translation>
        </message>
        <message>
            <source>Press, price</source>
            <translation>Presse, Preis</translation>
        </message>
        <message>
            <source>Press, worth at the end</source>
            <translation>Presse, Wert am Ende</translation>
        </message>
        <message>
            <source>Press lasts, presses</source>
            <translation>Presse hält, Pressungen</translation>
        </message>
        <message>
            <source>Running it, per hour</source>
            <translation>Betriebskosten, je Stunde</translation>
        </message>
        <message>
            <source>Platen, width</source>
            <translation>Pressplatte, Breite</translation>
        </message>
        <message>
            <source>Platen, depth</source>
            <translation>Pressplatte, Tiefe</translation>
        </message>
        <message>
            <source>Dwell</source>
            <translation>Presszeit</translation>
        </message>
        <message>
            <source>Handling, each cycle</source>
            <translation>Handhabung, je Pressgang</translation>
        </message>
        <message>
            <source>Warm-up</source>
            <translation>Aufheizen</translation>
        </message>
        <message>
            <source>Test presses</source>
            <translation>Probepressungen</translation>
        </message>
        <message>
            <source>Pressed a second time</source>
            <translation>Zweimal gepresst</translation>
        </message>
        <message>
            <source>Second dwell</source>
            <translation>Zweite Presszeit</translation>
        </message>
        <message>
            <source>Temperature noted</source>
            <translation>Temperatur, notiert</translation>
        </message>
        <message>
            <source>Cutter, price</source>
            <translation>Plotter, Preis</translation>
        </message>
        <message>
            <source>Cutter, worth at the end</source>
            <translation>Plotter, Wert am Ende</translation>
        </message>
        <message>
            <source>Cutter lasts, holes</source>
            <translation>Plotter hält, Löcher</translation>
        </message>
        <message>
            <source>No running cost is meant</source>
            <translation>Bewusst ohne Betriebskosten</translation>
        </message>
        <message>
            <source>No wear of the press is meant</source>
            <translation>Bewusst ohne Verschleiß der Presse</translation>
        </message>
        <message>
            <source>No wear of the cutter is meant</source>
            <translation>Bewusst ohne Verschleiß des Plotters</translation>
        </message>
    </context>
    <context>
        <name>sp::shop::StepRows</name>
        <message>
            <source>+ step</source>
            <translation>+ Stufe</translation>
        </message>
        <message>
            <source>Take step %1 out</source>
            <translation>Stufe %1 herausnehmen</translation>
        </message>
    </context>
    <context>
        <name>sp::supplies::ColourButton</name>
        <message>
            <source>Choose from a picture of colours</source>
            <translation>Aus einem Bild mit Farben wählen</translation>
        </message>
        <message>
            <source>Picture’s colour: %1</source>
            <translation>Farbe im Bild: %1</translation>
        </message>
        <message>
            <source>Colours</source>
            <translation>Farben</translation>
        </message>
        <message>
            <source>&amp;Another colour…</source>
            <translation>&amp;Andere Farbe…</translation>
        </message>
    </context>
    <context>
        <name>sp::supplies::KitCard</name>
        <message>
            <source>Give the kit a name.</source>
            <translation>Geben Sie dem Set einen Namen.</translation>
        </message>
        <message>
            <source>What one kit makes</source>
            <translation>Was ein Set ergibt</translation>
        </message>
        <message>
            <source>N&amp;ame</source>
            <translation>N&amp;ame</translation>
        </message>
        <message>
            <source>&amp;Supplier</source>
            <translation>&amp;Lieferant</translation>
        </message>
        <message>
            <source>&amp;Price</source>
            <translation>&amp;Preis</translation>
        </message>
        <message>
            <source>&amp;With templates cut</source>
            <translation>&amp;Mit geschnittenen Schablonen</translation>
        </message>
        <message>
            <source>empty: not to be had</source>
            <translation>leer: nicht zu haben</translation>
        </message>
        <message>
            <source>For the &amp;design</source>
            <translation>Für das Moti&amp;v</translation>
        </message>
        <message>
            <source>Sh&amp;ort count</source>
            <translation>Fehlmen&amp;ge</translation>
        </message>
        <message>
            <source>stones missing as a rule</source>
            <translation>Steine, die meist fehlen</translation>
        </message>
        <message>
            <source>Too&amp;ls that come along</source>
            <translation>Beiliegende &amp;Werkzeuge</translation>
        </message>
        <message>
            <source>with commas between; not used up</source>
            <translation>mit Kommas dazwischen; werden nicht verbraucht</translation>
        </message>
    </context>
    <context>
        <name>sp::supplies::KitItems</name>
        <message>
            <source>In the kit</source>
            <translation>Im Set</translation>
        </message>
        <message>
            <source>+ ma&amp;terial</source>
            <translation>+ Ma&amp;terial</translation>
        </message>
        <message>
            <source>material</source>
            <translation>Material</translation>
        </message>
        <message>
            <source>stones, sheets or pieces</source>
            <translation>Steine, Bögen oder Stück</translation>
        </message>
        <message>
            <source>material %1 of the kit</source>
            <translation>Material %1 des Sets</translation>
        </message>
        <message>
            <source>number of material %1 of the kit</source>
            <translation>Anzahl von Material %1 des Sets</translation>
        </message>
        <message>
            <source>Take material %1 out of the kit</source>
            <translation>Material %1 aus dem Set nehmen</translation>
        </message>
    </context>
    <context>
        <name>sp::supplies::ListColumns</name>
        <message>
            <source>The columns of the list</source>
            <translation>Die Spalten der Liste</translation>
        </message>
        <message>
            <source>not used</source>
            <translation>nicht verwendet</translation>
        </message>
        <message>
            <source>Item number</source>
            <translation>Artikelnummer</translation>
        </message>
        <message>
            <source>What is sold</source>
            <translation>Was verkauft wird</translation>
        </message>
        <message>
            <source>Size</source>
            <translation>Größe</translation>
        </message>
        <message>
            <source>Colour</source>
            <translation>Farbe</translation>
        </message>
        <message>
            <source>Pack</source>
            <translation>Packung</translation>
        </message>
        <message>
            <source>How many</source>
            <translation>Wie viele</translation>
        </message>
        <message>
            <source>Pack’s price</source>
            <translation>Packungspreis</translation>
        </message>
        <message>
            <source>From packs</source>
            <translation>Ab Packungen</translation>
        </message>
        <message>
            <source>What column “%1” says</source>
            <translation>Was Spalte „%1“ sagt</translation>
        </message>
    </context>
    <context>
        <name>sp::supplies::ListRowsModel</name>
        <message>
            <source>new: %1</source>
            <translation>neu: %1</translation>
        </message>
        <message>
            <source>%1 (now %2)</source>
            <translation>%1 (jetzt %2)</translation>
        </message>
        <message>
            <source>new pack</source>
            <translation>neue Packung</translation>
        </message>
        <message>
            <source>%1; as before: %2</source>
            <translation>%1; wie zuvor: %2</translation>
        </message>
        <message>
            <source>Line</source>
            <translation>Zeile</translation>
        </message>
        <message>
            <source>In the list</source>
            <translation>In der Liste</translation>
        </message>
        <message>
            <source>In the book</source>
            <translation>Im Buch</translation>
        </message>
        <message>
            <source>Pack</source>
            <translation>Packung</translation>
        </message>
        <message>
            <source>Holds</source>
            <translation>Inhalt</translation>
        </message>
        <message>
            <source>Price now</source>
            <translation>Preis jetzt</translation>
        </message>
        <message>
            <source>Price in the list</source>
            <translation>Preis laut Liste</translation>
        </message>
    </context>
    <context>
        <name>sp::supplies::MaterialCard</name>
        <message>
            <source>Give the material a name.</source>
            <translation>Geben Sie dem Material einen Namen.</translation>
        </message>
        <message>
            <source>N&amp;ame</source>
            <translation>N&amp;ame</translation>
        </message>
        <message>
            <source>Give the colour as the trade says it.</source>
            <translation>Geben Sie die Farbe an, wie der Handel sie nennt.</translation>
        </message>
        <message>
            <source>&amp;Colour</source>
            <translation>&amp;Farbe</translation>
        </message>
        <message>
            <source>&amp;Size</source>
            <translation>&amp;Größe</translation>
        </message>
        <message>
            <source>&amp;Picture’s colour</source>
            <translation>Farbe i&amp;m Bild</translation>
        </message>
        <message>
            <source>&amp;Lost</source>
            <translation>&amp;Verlust</translation>
        </message>
        <message>
            <source>of the stones taken out</source>
            <translation>der entnommenen Steine</translation>
        </message>
        <message>
            <source>sheets</source>
            <translation>Bögen</translation>
        </message>
        <message>
            <source>a roll</source>
            <translation>Rolle</translation>
        </message>
        <message>
            <source>whole sheets</source>
            <translation>ganze Bögen</translation>
        </message>
        <message>
            <source>its share; offcuts are kept</source>
            <translation>seinen Anteil; Reste werden aufgehoben</translation>
        </message>
        <message>
            <source>&amp;Has a direction: no turning</source>
            <translation>Hat eine &amp;Richtung: nicht drehen</translation>
        </message>
        <message>
            <source>Comes &amp;in</source>
            <translation>Kommt a&amp;ls</translation>
        </message>
        <message>
            <source>&amp;Width</source>
            <translation>Bre&amp;ite</translation>
        </message>
        <message>
            <source>Hei&amp;ght</source>
            <translation>&amp;Höhe</translation>
        </message>
        <message>
            <source>&amp;Margin</source>
            <translation>Ran&amp;d</translation>
        </message>
        <message>
            <source>unusable, all round</source>
            <translation>nicht nutzbar, ringsum</translation>
        </message>
        <message>
            <source>A piece pays for</source>
            <translation>Ein Stück bezahlt</translation>
        </message>
        <message>
            <source>B&amp;order round the design</source>
            <translation>&amp;Zugabe um das Motiv</translation>
        </message>
        <message>
            <source>Gap &amp;between pieces</source>
            <translation>Abstand zwischen Stü&amp;cken</translation>
        </message>
        <message>
            <source>A pi&amp;ece lifts</source>
            <translation>Ein Stück hebt a&amp;b</translation>
        </message>
        <message>
            <source>times</source>
            <translation>Mal</translation>
        </message>
        <message>
            <source>what the usual pack costs today</source>
            <translation>was die übliche Packung heute kostet</translation>
        </message>
        <message>
            <source>the average of the shelf</source>
            <translation>den Durchschnitt des Lagers</translation>
        </message>
        <message>
            <source>a fixed price</source>
            <translation>einen festen Preis</translation>
        </message>
        <message>
            <source>The cost sheet &amp;uses</source>
            <translation>Das Kostenblatt n&amp;utzt</translation>
        </message>
        <message>
            <source>Fi&amp;xed price of one</source>
            <translation>Fester &amp;Preis für eines</translation>
        </message>
        <message>
            <source>0.00 is meant</source>
            <translation>0.00 ist gewollt</translation>
        </message>
        <message>
            <source>Then nobody is told any more that it costs nothing, and Buying takes a pack at 0.00</source>
            <translation>Dann wird niemandem mehr gesagt, dass es nichts kostet, und „Einkauf“ nimmt eine Packung zu 0.00</translation>
        </message>
        <message>
            <source>Shelf</source>
            <translation>Lager</translation>
        </message>
        <message>
            <source>How man&amp;y</source>
            <translation>&amp;Wie viele</translation>
        </message>
        <message>
            <source>Paid for &amp;them</source>
            <translation>Dafür gezahl&amp;t</translation>
        </message>
        <message>
            <source>for the average; may stay empty</source>
            <translation>für den Durchschnitt; darf leer bleiben</translation>
        </message>
        <message>
            <source>Count in</source>
            <translation>Einbuchen</translation>
        </message>
        <message>
            <source>Take out</source>
            <translation>Ausbuchen</translation>
        </message>
        <message>
            <source>That is all there is</source>
            <translation>Mehr ist nicht da</translation>
        </message>
        <message>
            <source>So many were counted; the difference is booked</source>
            <translation>So viele wurden gezählt; der Unterschied wird gebucht</translation>
        </message>
        <message>
            <source>used</source>
            <translation>verbraucht</translation>
        </message>
        <message>
            <source>lost</source>
            <translation>verloren</translation>
        </message>
        <message>
            <source>spoiled</source>
            <translation>verdorben</translation>
        </message>
        <message>
            <source>returned</source>
            <translation>zurückgegeben</translation>
        </message>
        <message>
            <source>What goes out is</source>
            <translation>Was abgeht, ist</translation>
        </message>
        <message>
            <source>Reason</source>
            <translation>Grund</translation>
        </message>
        <message>
            <source>as you say it; may stay empty</source>
            <translation>wie Sie es nennen; darf leer bleiben</translation>
        </message>
        <message>
            <source>Type how many first.</source>
            <translation>Tippen Sie erst, wie viele.</translation>
        </message>
        <message>
            <source>Len&amp;gth</source>
            <translation>Län&amp;ge</translation>
        </message>
        <message>
            <source>No job at work is called “%1”; choose from the list.</source>
            <translation>Kein laufender Auftrag heißt „%1“; wählen Sie aus der Liste.</translation>
        </message>
        <message>
            <source>For the &amp;job</source>
            <translation>Für den A&amp;uftrag</translation>
        </message>
        <message>
            <source>what goes out for it or comes back from it; may stay empty</source>
            <translation>was für ihn hinausgeht oder von ihm zurückkommt; darf leer bleiben</translation>
        </message>
        <message>
            <source>What comes back from a job was not paid for again: leave out the sum, or the job.</source>
            <translation>Was von einem Auftrag zurückkommt, wurde nicht noch einmal bezahlt: Lassen Sie den Betrag oder den Auftrag weg.</translation>
        </message>
    </context>
    <context>
        <name>sp::supplies::PackRows</name>
        <message>
            <source>Packs and prices</source>
            <translation>Packungen und Preise</translation>
        </message>
        <message>
            <source>+ pac&amp;k</source>
            <translation>+ Pac&amp;kung</translation>
        </message>
        <message>
            <source>supplier; item no.</source>
            <translation>Lieferant; Art.-Nr.</translation>
        </message>
        <message>
            <source>pack</source>
            <translation>Packung</translation>
        </message>
        <message>
            <source>holds</source>
            <translation>Inhalt</translation>
        </message>
        <message>
            <source>price of one</source>
            <translation>Preis für eine</translation>
        </message>
        <message>
            <source>a gross · a stone</source>
            <translation>je Gros · je Stein</translation>
        </message>
        <message>
            <source>one</source>
            <translation>je Stück</translation>
        </message>
        <message>
            <source>usual</source>
            <translation>üblich</translation>
        </message>
        <message>
            <source>Give the pack a name, such as bag of 10 gross.</source>
            <translation>Geben Sie der Packung einen Namen, wie Beutel mit 10 Gros.</translation>
        </message>
        <message>
            <source>%1 of pack %2</source>
            <translation>%1 von Packung %2</translation>
        </message>
        <message>
            <source>supplier</source>
            <translation>Lieferant</translation>
        </message>
        <message>
            <source>name</source>
            <translation>Name</translation>
        </message>
        <message>
            <source>contents</source>
            <translation>Inhalt</translation>
        </message>
        <message>
            <source>price</source>
            <translation>Preis</translation>
        </message>
        <message>
            <source>usual tick</source>
            <translation>Haken „üblich“</translation>
        </message>
        <message>
            <source>item number</source>
            <translation>Artikelnummer</translation>
        </message>
        <message>
            <source>Add “%1” as a supplier</source>
            <translation>„%1“ als Lieferanten hinzufügen</translation>
        </message>
        <message>
            <source>who sells it</source>
            <translation>wer es verkauft</translation>
        </message>
        <message>
            <source>What the supplier’s price list calls this pack</source>
            <translation>Wie die Preisliste des Lieferanten diese Packung nennt</translation>
        </message>
        <message>
            <source>Take pack %1 out</source>
            <translation>Packung %1 herausnehmen</translation>
        </message>
        <message>
            <source>+ price</source>
            <translation>+ Preis</translation>
        </message>
        <message>
            <source>%1 from so many packs on, of pack %2</source>
            <translation>%1 ab so vielen Packungen, von Packung %2</translation>
        </message>
        <message>
            <source>from how many packs, price %1 of pack %2</source>
            <translation>ab wie vielen Packungen, Preis %1 von Packung %2</translation>
        </message>
        <message>
            <source>price %1 of pack %2</source>
            <translation>Preis %1 von Packung %2</translation>
        </message>
        <message>
            <source>packs from</source>
            <translation>Packungen ab</translation>
        </message>
        <message>
            <source>Take price %1 of pack %2 out</source>
            <translation>Preis %1 von Packung %2 herausnehmen</translation>
        </message>
        <message>
            <source>Give the price of one pack first.</source>
            <translation>Geben Sie zuerst den Preis einer Packung an.</translation>
        </message>
        <message>
            <source>A pack costs more than nothing; count in on the shelf what came free.</source>
            <translation>Eine Packung kostet mehr als nichts; was kostenlos kam, buchen Sie im Lager ein.</translation>
        </message>
        <message>
            <source>Give more than %1; the price above holds from there on.</source>
            <translation>Geben Sie mehr als %1 an; ab dort gilt der Preis darüber.</translation>
        </message>
        <message>
            <source>The price of a pack rises from %1 packs on; it is kept, but check it.</source>
            <translation>Der Preis einer Packung steigt ab %1 Packungen; er bleibt stehen, aber prüfen Sie ihn.</translation>
        </message>
    </context>
    <context>
        <name>sp::supplies::PriceListDialog</name>
        <message>
            <source>Price list of %1</source>
            <translation>Preisliste von %1</translation>
        </message>
        <message>
            <source>Choose &amp;file…</source>
            <translation>&amp;Datei wählen…</translation>
        </message>
        <message>
            <source>Nothing in the book is called “%1”; choose from the list.</source>
            <translation>Nichts im Buch heißt „%1“; wählen Sie aus der Liste.</translation>
        </message>
        <message>
            <source>The chosen &amp;row is</source>
            <translation>Die gewählte &amp;Zeile ist</translation>
        </message>
        <message>
            <source>&amp;Decimal comma: 6,95</source>
            <translation>Dezimal&amp;komma: 6,95</translation>
        </message>
        <message>
            <source>What becomes of the rows</source>
            <translation>Was aus den Zeilen wird</translation>
        </message>
        <message>
            <source>&amp;Stop</source>
            <translation>An&amp;halten</translation>
        </message>
        <message>
            <source>&amp;Close</source>
            <translation>&amp;Schließen</translation>
        </message>
        <message>
            <source>&amp;Take these prices over</source>
            <translation>Diese &amp;Preise übernehmen</translation>
        </message>
        <message>
            <source>Choose a price list</source>
            <translation>Preisliste wählen</translation>
        </message>
        <message>
            <source>Price lists (*.csv *.tsv *.txt);;All files (*)</source>
            <translation>Preislisten (*.csv *.tsv *.txt);;Alle Dateien (*)</translation>
        </message>
        <message>
            <source>How far the list is saved</source>
            <translation>Wie weit die Liste gespeichert ist</translation>
        </message>
        <message>
            <source>How far the list is read</source>
            <translation>Wie weit die Liste gelesen ist</translation>
        </message>
        <message>
            <source>The prices are being saved.</source>
            <translation>Die Preise werden gespeichert.</translation>
        </message>
        <message>
            <source>No file chosen yet</source>
            <translation>Noch keine Datei gewählt</translation>
        </message>
        <message>
            <source>%1 (letters taken for Windows-1252)</source>
            <translation>%1 (Zeichen als Windows-1252 gelesen)</translation>
        </message>
        <message>
            <source>The list is being read.</source>
            <translation>Die Liste wird gelesen.</translation>
        </message>
        <message>
            <source>Packs that change: %1; as they were: %2. Rows that cannot be taken: %3.</source>
            <translation>Geänderte Packungen: %1; unveränderte: %2. Nicht übernehmbare Zeilen: %3.</translation>
        </message>
    </context>
    <context>
        <name>sp::supplies::PriceListPresenter</name>
        <message>
            <source>“%1” cannot be read; check the file and choose it again.</source>
            <translation>„%1“ kann nicht gelesen werden; prüfen Sie die Datei und wählen Sie sie noch einmal.</translation>
        </message>
        <message>
            <source>Choose the file of the price list.</source>
            <translation>Wählen Sie die Datei der Preisliste.</translation>
        </message>
        <message>
            <source>Reading “%1” was stopped; choose it again, or another file.</source>
            <translation>Das Lesen von „%1“ wurde angehalten; wählen Sie die Datei noch einmal oder eine andere.</translation>
        </message>
        <message>
            <source>Stopped: of %1 stones and packs %2 are in the book; undo takes them back part by part.</source>
            <translation>Angehalten: Von %1 Steinen und Packungen sind %2 im Buch; Rückgängig nimmt sie Teil für Teil zurück.</translation>
        </message>
        <message>
            <source>%1 Of %2 stones and packs %3 are in the book; undo takes them back part by part.</source>
            <translation>%1 Von %2 Steinen und Packungen sind %3 im Buch; Rückgängig nimmt sie Teil für Teil zurück.</translation>
        </message>
    </context>
    <context>
        <name>sp::supplies::SizeRows</name>
        <message>
            <source>Sizes</source>
            <translation>Größen</translation>
        </message>
        <message>
            <source>+ si&amp;ze</source>
            <translation>+ &amp;Größe</translation>
        </message>
        <message>
            <source>size</source>
            <translation>Größe</translation>
        </message>
        <message>
            <source>costs more</source>
            <translation>kostet mehr</translation>
        </message>
        <message>
            <source>customer pays more</source>
            <translation>Kunde zahlt mehr</translation>
        </message>
        <message>
            <source>Give the size a name, such as 2XL.</source>
            <translation>Geben Sie der Größe einen Namen, wie 2XL.</translation>
        </message>
        <message>
            <source>name of size %1</source>
            <translation>Name der Größe %1</translation>
        </message>
        <message>
            <source>what size %1 costs more</source>
            <translation>was Größe %1 mehr kostet</translation>
        </message>
        <message>
            <source>what the customer pays more for size %1</source>
            <translation>was der Kunde für Größe %1 mehr zahlt</translation>
        </message>
        <message>
            <source>Take size %1 out</source>
            <translation>Größe %1 herausnehmen</translation>
        </message>
    </context>
    <context>
        <name>sp::supplies::SupplierCard</name>
        <message>
            <source>Give the supplier a name.</source>
            <translation>Geben Sie dem Lieferanten einen Namen.</translation>
        </message>
        <message>
            <source>N&amp;ame</source>
            <translation>N&amp;ame</translation>
        </message>
        <message>
            <source>&amp;Days until it is here</source>
            <translation>&amp;Tage bis zur Lieferung</translation>
        </message>
        <message>
            <source>&amp;Shipping</source>
            <translation>&amp;Versand</translation>
        </message>
        <message>
            <source>Fr&amp;ee from</source>
            <translation>&amp;Frei ab</translation>
        </message>
        <message>
            <source>goods for so much; empty: never</source>
            <translation>Ware für so viel; leer: nie</translation>
        </message>
        <message>
            <source>S&amp;mallest order</source>
            <translation>&amp;Mindestbetrag</translation>
        </message>
        <message>
            <source>Read a price &amp;list…</source>
            <translation>Preis&amp;liste lesen…</translation>
        </message>
        <message>
            <source>none of it</source>
            <translation>nichts davon</translation>
        </message>
        <message>
            <source>a share of the goods</source>
            <translation>ein Anteil an der Ware</translation>
        </message>
        <message>
            <source>spread over a usual order</source>
            <translation>verteilt auf eine übliche Bestellung</translation>
        </message>
        <message>
            <source>Shipping in the c&amp;ost</source>
            <translation>Versand in den &amp;Kosten</translation>
        </message>
        <message>
            <source>S&amp;hare of the goods</source>
            <translation>Anteil an de&amp;r Ware</translation>
        </message>
        <message>
            <source>&amp;Usual order</source>
            <translation>&amp;Übliche Bestellung</translation>
        </message>
        <message>
            <source>goods for so much</source>
            <translation>Ware für so viel</translation>
        </message>
    </context>
    <context>
        <name>sp::supplies::SuppliesPage</name>
        <message>
            <source>Supplies</source>
            <translation>Material</translation>
        </message>
        <message>
            <source>Materials, kits and suppliers</source>
            <translation>Material, Sets und Lieferanten</translation>
        </message>
        <message>
            <source>&amp;Find by name or kind</source>
            <translation>&amp;Suchen nach Name oder Art</translation>
        </message>
        <message>
            <source>Nothing here is called that.</source>
            <translation>Nichts hier heißt so.</translation>
        </message>
        <message>
            <source>Stones, sheets, blanks and packing belong here, with what a pack of each costs.</source>
            <translation>Hierher gehören Steine, Bögen, Rohlinge und Verpackung, mit dem, was eine Packung davon kostet.</translation>
        </message>
        <message>
            <source>Add the first stone</source>
            <translation>Ersten Stein hinzufügen</translation>
        </message>
        <message>
            <source>&amp;Remove</source>
            <translation>&amp;Entfernen</translation>
        </message>
        <message>
            <source>&amp;New</source>
            <translation>&amp;Neu</translation>
        </message>
        <message>
            <source>&amp;Stone</source>
            <translation>&amp;Stein</translation>
        </message>
        <message>
            <source>&amp;Tape</source>
            <translation>&amp;Folie</translation>
        </message>
        <message>
            <source>Te&amp;mplate sheet</source>
            <translation>S&amp;chablonenbogen</translation>
        </message>
        <message>
            <source>&amp;Backing</source>
            <translation>&amp;Träger</translation>
        </message>
        <message>
            <source>Blan&amp;k</source>
            <translation>&amp;Rohling</translation>
        </message>
        <message>
            <source>&amp;Packing</source>
            <translation>&amp;Verpackung</translation>
        </message>
        <message>
            <source>Ki&amp;t, several at one price</source>
            <translation>S&amp;et, mehreres zu einem Preis</translation>
        </message>
        <message>
            <source>S&amp;upplier</source>
            <translation>&amp;Lieferant</translation>
        </message>
        <message>
            <source>%1 · %2</source>
            <translation>%1 · %2</translation>
        </message>
        <message>
            <source>kit · for %1</source>
            <translation>Set · für %1</translation>
        </message>
        <message>
            <source>kit</source>
            <translation>Set</translation>
        </message>
        <message>
            <source>supplier</source>
            <translation>Lieferant</translation>
        </message>
        <message>
            <source>“%1” is removed.</source>
            <translation>„%1“ ist entfernt.</translation>
        </message>
        <message>
            <source>Undo</source>
            <translation>Rückgängig</translation>
        </message>
        <message>
            <source>The price list is taken over.</source>
            <translation>Die Preisliste ist übernommen.</translation>
        </message>
    </context>
    <context>
        <name>sp::supplies::SuppliesPresenter</name>
        <message>
            <source>Choose the design it is for; then what it makes stands here.</source>
            <translation>Wählen Sie das Motiv, für das es ist; dann steht hier, was es ergibt.</translation>
        </message>
        <message>
            <source>New %1</source>
            <translation>%1 (neu)</translation>
        </message>
        <message>
            <source>Colour</source>
            <translation>Farbe</translation>
        </message>
        <message>
            <source>New supplier</source>
            <translation>Neuer Lieferant</translation>
        </message>
        <message>
            <source>Add a supplier first; a kit is bought from one.</source>
            <translation>Fügen Sie zuerst einen Lieferanten hinzu; ein Set wird bei einem gekauft.</translation>
        </message>
        <message>
            <source>New kit</source>
            <translation>Neues Set</translation>
        </message>
        <message>
            <source>Every material is in the kit already.</source>
            <translation>Jedes Material ist schon im Set.</translation>
        </message>
        <message>
            <source>pack</source>
            <translation>Packung</translation>
        </message>
        <message>
            <source>Add a supplier first; a pack is bought from one.</source>
            <translation>Fügen Sie zuerst einen Lieferanten hinzu; eine Packung wird bei einem gekauft.</translation>
        </message>
        <message>
            <source>What is promised could not be read again; it is shown as it was before.</source>
            <translation>Was zugesagt ist, konnte nicht neu gelesen werden; es steht da wie vorher.</translation>
        </message>
        <message>
            <source>What %1 takes is not known; nothing of it is promised.</source>
            <translation>Was %1 braucht, ist nicht bekannt; nichts davon ist zugesagt.</translation>
        </message>
        <message>
            <source>You book by hand what jobs use: it stays promised until a job is ready, or you take it out for it.</source>
            <translation>Sie buchen von Hand, was Aufträge verbrauchen: Es bleibt zugesagt, bis ein Auftrag fertig ist oder Sie es für ihn entnehmen.</translation>
        </message>
    </context>
</TS>
