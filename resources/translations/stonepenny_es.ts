<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es" sourcelanguage="en">
    <context>
        <name>App</name>
        <message>
            <source>This design is no longer in the book; use the file for a new one.</source>
            <translation>Este diseño ya no está en el libro; use el archivo para uno nuevo.</translation>
        </message>
        <message>
            <source>estimate of %1</source>
            <translation>estimación de %1</translation>
        </message>
        <message>
            <source>“%1” cannot be read; check its name and folder.</source>
            <translation>No se puede leer «%1»; revise su nombre y su carpeta.</translation>
        </message>
        <message>
            <source>“%1” is larger than 64 MB; simplify the drawing and save it again.</source>
            <translation>«%1» pasa de 64 MB; simplifique el dibujo y guárdelo de nuevo.</translation>
        </message>
        <message>
            <source>“%1” could not be read to its end; try again.</source>
            <translation>No se pudo leer «%1» hasta el final; inténtelo de nuevo.</translation>
        </message>
        <message>
            <source>Letters are between nothing and 10 m high; give another height.</source>
            <translation>Las letras miden más de cero y hasta 10 m de alto; dé otra altura.</translation>
        </message>
        <message>
            <source>The font “%1” is not installed here; install it or name another.</source>
            <translation>La fuente «%1» no está instalada aquí; instálela o indique otra.</translation>
        </message>
        <message>
            <source>More than 2,000 letters are not estimated at once; take a part of them.</source>
            <translation>No se estiman más de 2000 letras a la vez; tome una parte.</translation>
        </message>
        <message>
            <source>%1 has no “%2”; type letters that the font has or name another font.</source>
            <translation>%1 no tiene «%2»; escriba letras que la fuente tenga o indique otra fuente.</translation>
        </message>
        <message>
            <source>“%1” leaves no outline in %2; type letters that the font has.</source>
            <translation>«%1» no deja ningún contorno en %2; escriba letras que la fuente tenga.</translation>
        </message>
        <message numerus="yes">
            <source>%n changes</source>
            <translation>
                <numerusform>%n cambio</numerusform>
                <numerusform>%n cambios</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n quotes</source>
            <translation>
                <numerusform>%n presupuesto</numerusform>
                <numerusform>%n presupuestos</numerusform>
            </translation>
        </message>
        <message>
            <source>%1 restored %2</source>
            <translation>%1 restaurado %2</translation>
        </message>
        <message>
            <source>what was bought for %1</source>
            <translation>lo comprado para %1</translation>
        </message>
        <message>
            <source>A discount is from 0 to 100 %; type another.</source>
            <translation>Un descuento va de 0 a 100 %; escriba otro.</translation>
        </message>
        <message>
            <source>A discount is 0 or more; type it without a minus.</source>
            <translation>Un descuento es 0 o más; escríbalo sin signo menos.</translation>
        </message>
        <message>
            <source>“%1” is there already; name a new or an empty folder.</source>
            <translation>«%1» ya existe; indique una carpeta nueva o vacía.</translation>
        </message>
        <message>
            <source>The folder “%1” cannot be made; look whether the one it is to be in is there and yours to write.</source>
            <translation>No se puede crear la carpeta «%1»; vea si existe la carpeta que la contendrá y si usted puede escribir en ella.</translation>
        </message>
        <message>
            <source>the demo scenario</source>
            <translation>el escenario de demostración</translation>
        </message>
        <message>
            <source>the demo's jobs</source>
            <translation>los trabajos de la demostración</translation>
        </message>
        <message>
            <source>This quote has not been given yet; it has today's prices.</source>
            <translation>Este presupuesto aún no se ha dado; lleva los precios de hoy.</translation>
        </message>
        <message>
            <source>the first settings</source>
            <translation>los primeros ajustes</translation>
        </message>
        <message>
            <source>“%1” is a backup, which is kept as it is; restore it by “Backups…” or “Open a backup…”.</source>
            <translation>«%1» es una copia de seguridad y se conserva como está; restáurela con «Copias de seguridad…» o «Abrir una copia de seguridad…».</translation>
        </message>
        <message>
            <source>The answer could not be written out; the disk may be full.</source>
            <translation>No se pudo escribir la respuesta; puede que el disco esté lleno.</translation>
        </message>
        <message>
            <source>There is no screen here to open a window on; use the verbs that stonepenny --help lists.</source>
            <translation>Aquí no hay pantalla para abrir una ventana; use los verbos que enumera stonepenny --help.</translation>
        </message>
        <message>
            <source>“%1” is not a verb and not a job book; stonepenny --help lists what there is.</source>
            <translation>«%1» no es un verbo ni un libro de trabajos; stonepenny --help enumera lo que hay.</translation>
        </message>
        <message>
            <source>Nothing of this order is made at the bench: there are charges alone on it.</source>
            <translation>Nada de este pedido se hace en el taller: solo contiene cargos.</translation>
        </message>
        <message>
            <source>%1 could not be drawn; start the program again.</source>
            <translation>No se pudo dibujar %1; inicie el programa de nuevo.</translation>
        </message>
        <message>
            <source>The printer did not take the sheet; check that it is on, or save the sheet as a PDF.</source>
            <translation>La impresora no aceptó la hoja; revise que esté encendida o guarde la hoja como PDF.</translation>
        </message>
        <message>
            <source>The printer %1 did not take the sheet; check that it is on, or save the sheet as a PDF.</source>
            <translation>La impresora %1 no aceptó la hoja; revise que esté encendida o guarde la hoja como PDF.</translation>
        </message>
        <message>
            <source>price list of %1</source>
            <translation>lista de precios de %1</translation>
        </message>
        <message>
            <source>the usual pack</source>
            <translation>el paquete habitual</translation>
        </message>
        <message>
            <source>%1 needs a value after it.</source>
            <translation>%1 necesita un valor a continuación.</translation>
        </message>
        <message>
            <source>%1 is not an option of this verb.</source>
            <translation>%1 no es una opción de este verbo.</translation>
        </message>
        <message>
            <source>%1 is given twice.</source>
            <translation>%1 aparece dos veces.</translation>
        </message>
        <message>
            <source>This verb takes %1 word besides its options, not %2.</source>
            <translation>Este verbo lleva %1 palabra además de sus opciones, no %2.</translation>
        </message>
        <message>
            <source>This verb takes %1 words besides its options, not %2.</source>
            <translation>Este verbo lleva %1 palabras además de sus opciones, no %2.</translation>
        </message>
        <message>
            <source>%1 is missing.</source>
            <translation>Falta %1.</translation>
        </message>
        <message>
            <source>no size</source>
            <translation>sin tamaño</translation>
        </message>
        <message>
            <source>drawn twice, counted once</source>
            <translation>dibujados dos veces, contados una</translation>
        </message>
        <message>
            <source>pairs of holes that overlap and would tear</source>
            <translation>pares de agujeros que se superponen y se rasgarían</translation>
        </message>
        <message>
            <source>left out: %1</source>
            <translation>omitido: %1</translation>
        </message>
        <message>
            <source>note: %1</source>
            <translation>nota: %1</translation>
        </message>
        <message>
            <source>An outline in a stone of its own goes with a filling; write --style both.</source>
            <translation>Un contorno con piedra propia va con un relleno; escriba --style both.</translation>
        </message>
        <message>
            <source>Lettering needs --font and --height beside --text; %1 is missing.</source>
            <translation>Las letras necesitan --font y --height junto a --text; falta %1.</translation>
        </message>
        <message>
            <source>Nothing is to be made.</source>
            <translation>No hay nada por hacer.</translation>
        </message>
        <message>
            <source>not known: see %1</source>
            <translation>no se sabe: vea %1</translation>
        </message>
        <message>
            <source>not within %1 years</source>
            <translation>no en menos de %1 años</translation>
        </message>
        <message>
            <source>ready %1</source>
            <translation>listo el %1</translation>
        </message>
        <message>
            <source>ready %1, late: wanted by %2</source>
            <translation>listo el %1, tarde: pedido para el %2</translation>
        </message>
        <message>
            <source>ready %1, wanted by %2</source>
            <translation>listo el %1, pedido para el %2</translation>
        </message>
        <message>
            <source>; supplies are here by %1</source>
            <translation>; los insumos llegan a más tardar el %1</translation>
        </message>
        <message>
            <source>; something is not on the shelf, and when it comes is not known</source>
            <translation>; algo no está en el estante y no se sabe cuándo llega</translation>
        </message>
        <message>
            <source>; %1 of the deposit are missing</source>
            <translation>; faltan %1 del anticipo</translation>
        </message>
        <message>
            <source>%1  closed</source>
            <translation>%1  cerrado</translation>
        </message>
        <message>
            <source>It takes %1 minutes at the bench.</source>
            <translation>Lleva %1 minutos en el taller.</translation>
        </message>
        <message>
            <source>What is missing for it can be here by %1, bought today.</source>
            <translation>Lo que le falta puede estar aquí para el %1 si se compra hoy.</translation>
        </message>
        <message>
            <source>Reckoned from tomorrow on, and as if a deposit that is asked came today.</source>
            <translation>Calculado desde mañana y como si un anticipo pedido llegara hoy.</translation>
        </message>
        <message>
            <source>%1 for %2: %3 %4.</source>
            <translation>%1 para %2: %3 %4.</translation>
        </message>
        <message>
            <source>There is no kind of paper “%1”; say quote, invoice, receipt, credit or bench.</source>
            <translation>No hay ningún tipo de documento «%1»; diga quote, invoice, receipt, credit o bench.</translation>
        </message>
        <message>
            <source>%1 is of another kind; leave --kind out, or say another number.</source>
            <translation>%1 es de otro tipo; omita --kind o diga otro número.</translation>
        </message>
        <message>
            <source>Quote %1 has no paper of the kind “%2” yet; make it with the verb “%3”.</source>
            <translation>El presupuesto %1 aún no tiene documento del tipo «%2»; hágalo con el verbo «%3».</translation>
        </message>
        <message>
            <source>No payment for %1 is without a receipt; take a payment with pay first.</source>
            <translation>Ningún pago de %1 está sin recibo; tome antes un pago con pay.</translation>
        </message>
        <message>
            <source>%1 has no paper but its quote.</source>
            <translation>%1 no tiene más documento que su presupuesto.</translation>
        </message>
        <message>
            <source>The bench sheet of %1 is in %2.</source>
            <translation>La hoja de taller de %1 está en %2.</translation>
        </message>
        <message>
            <source>%1 is in %2.</source>
            <translation>%1 está en %2.</translation>
        </message>
        <message>
            <source>Quote %1 is in %2.</source>
            <translation>El presupuesto %1 está en %2.</translation>
        </message>
        <message>
            <source>millionths of the currency’s unit: 6.94 is 6940000</source>
            <translation>millonésimas de la unidad de la moneda: 6.94 es 6940000</translation>
        </message>
        <message>
            <source>millionths of a whole: 8.875 % is 88750</source>
            <translation>millonésimas de un entero: 8.875 % es 88750</translation>
        </message>
        <message>
            <source>nanometres</source>
            <translation>nanómetros</translation>
        </message>
        <message>
            <source>milliseconds</source>
            <translation>milisegundos</translation>
        </message>
        <message>
            <source>the 36 characters of a UUID</source>
            <translation>los 36 caracteres de un UUID</translation>
        </message>
        <message>
            <source>year, month and day: 2026-10-12</source>
            <translation>año, mes y día: 2026-10-12</translation>
        </message>
        <message>
            <source>the three letters of ISO 4217</source>
            <translation>las tres letras de ISO 4217</translation>
        </message>
        <message>
            <source>Everything in a job book</source>
            <translation>Todo lo que hay en un libro de trabajos</translation>
        </message>
        <message>
            <source>A job book's name ends in .jobbook; make “%1.jobbook” instead.</source>
            <translation>El nombre de un libro de trabajos termina en .jobbook; cree «%1.jobbook» en su lugar.</translation>
        </message>
        <message>
            <source>%1: a demo job book; every name and price in it is invented.</source>
            <translation>%1: un libro de trabajos de demostración; todos sus nombres y precios son inventados.</translation>
        </message>
        <message>
            <source>%1 (stones: %2)</source>
            <translation>%1 (piedras: %2)</translation>
        </message>
        <message>
            <source>No quotes yet.</source>
            <translation>Aún no hay presupuestos.</translation>
        </message>
        <message>
            <source>The care cards are in %1.</source>
            <translation>Las tarjetas de cuidados están en %1.</translation>
        </message>
        <message>
            <source>%1 is sound. Designs: %2; materials: %3; quotes: %4, given and unchanged: %5.</source>
            <translation>%1 está en orden. Diseños: %2; materiales: %3; presupuestos: %4, dados y sin cambios: %5.</translation>
        </message>
        <message>
            <source>The file states no size; one unit was taken as %1. If that is wrong, give the scale.</source>
            <translation>El archivo no indica tamaño; una unidad se tomó como %1. Si no es así, dé la escala.</translation>
        </message>
        <message>
            <source>There is no customer “%1” in the book.</source>
            <translation>No hay ningún cliente «%1» en el libro.</translation>
        </message>
        <message>
            <source>Owed: %1 %2. Credit: %3 %2.</source>
            <translation>Debe: %1 %2. Saldo a favor: %3 %2.</translation>
        </message>
        <message>
            <source>All that the book has of the customer is in “%1”: customer.json, and each paper as it was sealed.</source>
            <translation>Todo lo que el libro tiene del cliente está en «%1»: customer.json y cada documento tal como se selló.</translation>
        </message>
        <message>
            <source>“%1” holds the person until you delete it.</source>
            <translation>«%1» contiene a la persona hasta que usted lo borre.</translation>
        </message>
        <message>
            <source>“%1” holds the person until %2, if the book is used every day.</source>
            <translation>«%1» contiene a la persona hasta el %2, si el libro se usa a diario.</translation>
        </message>
        <message>
            <source>There are %2 customers “%1” in the book, and nobody was erased; make them one or call one otherwise, then erase.</source>
            <translation>Hay %2 clientes «%1» en el libro y no se borró a nadie; únalos o cambie el nombre de uno, y después borre.</translation>
        </message>
        <message>
            <source>There is no customer “%1” in the book; give the whole name.</source>
            <translation>No hay ningún cliente «%1» en el libro; dé el nombre completo.</translation>
        </message>
        <message>
            <source>Entries of this name, with those removed from the list: %1; all of them go.</source>
            <translation>Registros con este nombre, incluidos los quitados de la lista: %1; se van todos.</translation>
        </message>
        <message>
            <source>Nothing was changed; add --yes to erase “%1”.</source>
            <translation>No se cambió nada; añada --yes para borrar a «%1».</translation>
        </message>
        <message>
            <source>The customer is erased.</source>
            <translation>El cliente está borrado.</translation>
        </message>
        <message>
            <source>“%1” ends neither in .csv nor in .vcf; call a table .csv and cards .vcf.</source>
            <translation>«%1» no termina en .csv ni en .vcf; llame .csv a una tabla y .vcf a las tarjetas.</translation>
        </message>
        <message>
            <source>“%1” is written; it names customers, keep it as you keep the book.</source>
            <translation>«%1» está escrito; nombra a clientes, guárdelo igual que el libro.</translation>
        </message>
        <message>
            <source>there already, filled in, with a certificate of exemption: %1</source>
            <translation>ya estaba, completado, con un certificado de exención: %1</translation>
        </message>
        <message>
            <source>new: %1</source>
            <translation>nuevo: %1</translation>
        </message>
        <message>
            <source>there already, filled in: %1</source>
            <translation>ya estaba, completado: %1</translation>
        </message>
        <message>
            <source>there already: %1</source>
            <translation>ya estaba: %1</translation>
        </message>
        <message>
            <source>left out, somebody else has the name, telephone or mail: %1</source>
            <translation>omitido, otra persona tiene ese nombre, teléfono o correo: %1</translation>
        </message>
        <message>
            <source>Nothing was changed; add --yes to take them into the book.</source>
            <translation>No se cambió nada; añada --yes para pasarlos al libro.</translation>
        </message>
        <message>
            <source>No customer is called or reached so.</source>
            <translation>Ningún cliente se llama ni se localiza así.</translation>
        </message>
        <message>
            <source>There is no stone size %1; the next to it are %2 and %3.</source>
            <translation>No hay tamaño de piedra %1; los más cercanos son %2 y %3.</translation>
        </message>
        <message>
            <source>There is no stone size %1; the next to it is %2.</source>
            <translation>No hay tamaño de piedra %1; el más cercano es %2.</translation>
        </message>
        <message>
            <source>There is no stone size %1; take one of these: %2.</source>
            <translation>No hay tamaño de piedra %1; tome uno de estos: %2.</translation>
        </message>
        <message>
            <source>There is no %1 in %2; its colours are: %3.</source>
            <translation>No hay %1 en %2; sus colores son: %3.</translation>
        </message>
        <message>
            <source>"%1" is not a style of setting stones; write outline, fill or both.</source>
            <translation>«%1» no es un modo de colocar piedras; escriba outline, fill o both.</translation>
        </message>
        <message>
            <source>"%1" does not say how a colour is set; write as in red=SS16@4.5mm or white=none, with commas between.</source>
            <translation>«%1» no dice cómo se coloca un color; escriba como red=SS16@4.5mm o white=none, separado por comas.</translation>
        </message>
        <message>
            <source>Everything in the book is in “%1”: %2 tables, and book.json. It names customers and prices; keep it as you keep the book.</source>
            <translation>Todo lo del libro está en «%1»: %2 tablas y book.json. Nombra clientes y precios; guárdelo igual que el libro.</translation>
        </message>
        <message>
            <source>--by is month, week, design, customer, quantity or blank, not %1.</source>
            <translation>--by es month, week, design, customer, quantity o blank, no %1.</translation>
        </message>
        <message>
            <source>together</source>
            <translation>en total</translation>
        </message>
        <message>
            <source>Hours of some jobs are not known any more: they were priced by an earlier version.</source>
            <translation>De algunos trabajos ya no se conocen las horas: una versión anterior calculó su precio.</translation>
        </message>
        <message>
            <source>Left out: %1, of which the cost is not known any more.</source>
            <translation>Omitidos: %1, cuyo costo ya no se conoce.</translation>
        </message>
        <message>
            <source>Of %1 that the month costs anyway, %2 is carried, %3 is to go.</source>
            <translation>De los %1 que el mes cuesta de todos modos, %2 están cubiertos y faltan %3.</translation>
        </message>
        <message>
            <source>That is %1 more of this kind.</source>
            <translation>Son %1 más de este tipo.</translation>
        </message>
        <message>
            <source>That is %1 hours more at the bench of this kind.</source>
            <translation>Son %1 horas más de este tipo en el taller.</translation>
        </message>
        <message>
            <source>in %1</source>
            <translation>en %1</translation>
        </message>
        <message>
            <source>pieces</source>
            <translation>piezas</translation>
        </message>
        <message>
            <source>income</source>
            <translation>ingreso</translation>
        </message>
        <message>
            <source>cost</source>
            <translation>costo</translation>
        </message>
        <message>
            <source>left</source>
            <translation>queda</translation>
        </message>
        <message>
            <source>hours</source>
            <translation>horas</translation>
        </message>
        <message>
            <source>an hour</source>
            <translation>por hora</translation>
        </message>
        <message>
            <source>lines of %1: %2 won, %3 lost, %4 open</source>
            <translation>líneas de %1: %2 ganadas, %3 perdidas, %4 abiertas</translation>
        </message>
        <message>
            <source>; the middle price won: %1</source>
            <translation>; el precio medio ganado: %1</translation>
        </message>
        <message>
            <source>; the middle price lost: %1</source>
            <translation>; el precio medio perdido: %1</translation>
        </message>
        <message>
            <source>There is no stage “%1”; take one that the verb quotes lists.</source>
            <translation>No hay ninguna etapa «%1»; tome una de las que enumera quotes --json.</translation>
        </message>
        <message>
            <source>draft</source>
            <translation>borrador</translation>
        </message>
        <message>
            <source>for %1</source>
            <translation>para %1</translation>
        </message>
        <message>
            <source>%1 to %2</source>
            <translation>%1 a %2</translation>
        </message>
        <message>
            <source>There are more; take a higher limit.</source>
            <translation>Hay más; ponga un límite mayor.</translation>
        </message>
        <message>
            <source>No quote is what you asked for.</source>
            <translation>Ningún presupuesto es lo que usted pidió.</translation>
        </message>
        <message>
            <source>%1 fit, and no more can.</source>
            <translation>Caben %1, y no pueden caber más.</translation>
        </message>
        <message>
            <source>%1 fit; at most %2 could.</source>
            <translation>Caben %1; a lo sumo podrían caber %2.</translation>
        </message>
        <message>
            <source>%1: quote given, %2 %3.</source>
            <translation>%1: presupuesto dado, %2 %3.</translation>
        </message>
        <message>
            <source>%1 taken, %2 change.</source>
            <translation>Recibido %1, cambio %2.</translation>
        </message>
        <message>
            <source>Rounded to the coin: %1 in cash for %2.</source>
            <translation>Redondeado a la moneda: %1 en efectivo por %2.</translation>
        </message>
        <message>
            <source>%1 was let go; %2 of what was paid stay.</source>
            <translation>%1 se descartó; de lo pagado quedan %2.</translation>
        </message>
        <message>
            <source>%1: %2 paid of %3, %4 left.</source>
            <translation>%1: pagado %2 de %3, quedan %4.</translation>
        </message>
        <message>
            <source>%1 are the customer’s credit.</source>
            <translation>%1 son saldo a favor del cliente.</translation>
        </message>
        <message>
            <source>--amount is without a minus; use refund to give back.</source>
            <translation>--amount va sin signo menos; use refund para devolver.</translation>
        </message>
        <message>
            <source>--change and --credit are two things to do with what is too much; say one.</source>
            <translation>--change y --credit son dos modos de tratar lo que sobra; diga uno.</translation>
        </message>
        <message>
            <source>%1: %2.</source>
            <translation>%1: %2.</translation>
        </message>
        <message>
            <source>Nothing is owed.</source>
            <translation>No se debe nada.</translation>
        </message>
        <message>
            <source>“%1” could be %2; give the whole name.</source>
            <translation>«%1» podría ser %2; dé el nombre completo.</translation>
        </message>
        <message>
            <source>What %1 × %2 costs the shop</source>
            <translation>Lo que %1 × %2 le cuesta al negocio</translation>
        </message>
        <message>
            <source>What the customer pays, %1</source>
            <translation>Lo que paga el cliente, %1</translation>
        </message>
        <message>
            <source>The customer has no name; give one, or leave the customer out.</source>
            <translation>El cliente no tiene nombre; dé uno o quite al cliente.</translation>
        </message>
        <message>
            <source>%1 must hold one to four choices.</source>
            <translation>%1 debe tener de una a cuatro opciones.</translation>
        </message>
        <message>
            <source>%1 must have either a share or an amount, as in {"share":"0.1"}.</source>
            <translation>%1 debe tener una proporción o un importe, como en {"share":"0.1"}.</translation>
        </message>
        <message>
            <source>There is no design named “%1” in this book; check the spelling.</source>
            <translation>No hay ningún diseño llamado «%1» en este libro; revise cómo se escribe.</translation>
        </message>
        <message>
            <source>%1 must have one to eight designs; leave some out, or make it a charge.</source>
            <translation>%1 debe tener de uno a ocho diseños; quite algunos o hágalo un cargo.</translation>
        </message>
        <message>
            <source>There is no stone named “%1” in this book; check the spelling.</source>
            <translation>No hay ninguna piedra llamada «%1» en este libro; revise cómo se escribe.</translation>
        </message>
        <message>
            <source>There is no packing named “%1” in this book; check the spelling.</source>
            <translation>No hay ningún empaque llamado «%1» en este libro; revise cómo se escribe.</translation>
        </message>
        <message>
            <source>%1 must be “piece” or “order”.</source>
            <translation>%1 debe ser «piece» u «order».</translation>
        </message>
        <message>
            <source>%1 goes with no customer’s garment: leave one of the two out.</source>
            <translation>%1 no va con prenda del cliente: quite uno de los dos.</translation>
        </message>
        <message>
            <source>There is no backing or blank named “%1” in this book; check the spelling.</source>
            <translation>No hay ningún respaldo ni prenda base «%1» en este libro; revise cómo se escribe.</translation>
        </message>
        <message>
            <source>none</source>
            <translation>ninguno</translation>
        </message>
        <message>
            <source>Leaves %1: mark-up %2, margin %3, earned per bench hour %4</source>
            <translation>Deja %1: recargo %2, margen %3, ganado por hora de taller %4</translation>
        </message>
        <message>
            <source>Leaves %1: mark-up %2, margin %3</source>
            <translation>Deja %1: recargo %2, margen %3</translation>
        </message>
        <message>
            <source>Of the cost %1 is tax on what is given away</source>
            <translation>Del costo, %1 son impuesto sobre lo regalado</translation>
        </message>
        <message>
            <source>Of the price the card takes %1</source>
            <translation>Del precio, la tarjeta se lleva %1</translation>
        </message>
        <message>
            <source>Not in the price</source>
            <translation>No está en el precio</translation>
        </message>
        <message>
            <source>%1 must be a price for a length: write it as 0.50/in.</source>
            <translation>%1 debe ser un precio por longitud: escríbalo como 0.50/in.</translation>
        </message>
        <message>
            <source>%1 must be 0 or more: change it.</source>
            <translation>%1 debe ser 0 o más: cámbielo.</translation>
        </message>
        <message>
            <source>Two sheets are called %1: give each its own id.</source>
            <translation>Dos láminas se llaman %1: dé a cada una su propio id.</translation>
        </message>
        <message>
            <source>A roll is planned by itself: leave out the other sheets.</source>
            <translation>Un rollo se planea por separado: quite las demás láminas.</translation>
        </message>
        <message>
            <source>Two pieces are called %1: give each its own id.</source>
            <translation>Dos piezas se llaman %1: dé a cada una su propio id.</translation>
        </message>
        <message>
            <source>budget_ms must be 1 to 60,000: change it.</source>
            <translation>budget_ms debe ser de 1 a 60 000: cámbielo.</translation>
        </message>
        <message>
            <source>There is no supplier “%1” in this book; add it in Supplies.</source>
            <translation>No hay ningún proveedor «%1» en este libro; añádalo en Insumos.</translation>
        </message>
        <message>
            <source>%1, was %2</source>
            <translation>%1, antes %2</translation>
        </message>
        <message>
            <source>%1, a new pack</source>
            <translation>%1, paquete nuevo</translation>
        </message>
        <message>
            <source>Packs that change: %1; as they were: %2. Rows that cannot be taken: %3.</source>
            <translation>Paquetes que cambian: %1; como estaban: %2. Filas que no se pueden tomar: %3.</translation>
        </message>
        <message>
            <source>Stones that are missing: %1; --make-missing makes them.</source>
            <translation>Piedras que faltan: %1; --make-missing las crea.</translation>
        </message>
        <message>
            <source>The price list is taken over.</source>
            <translation>La lista de precios está incorporada.</translation>
        </message>
        <message>
            <source>Nothing is changed yet; --take takes it over.</source>
            <translation>Aún no se cambió nada; --take la incorpora.</translation>
        </message>
        <message>
            <source>What it costs the shop</source>
            <translation>Lo que le cuesta al negocio</translation>
        </message>
        <message>
            <source>More pieces, each</source>
            <translation>Más piezas, cada una</translation>
        </message>
        <message>
            <source>There is no such purchase: %1.</source>
            <translation>No hay tal compra: %1.</translation>
        </message>
        <message>
            <source>%1 cannot be read: check its name.</source>
            <translation>No se puede leer %1: revise su nombre.</translation>
        </message>
        <message>
            <source>The file</source>
            <translation>El archivo</translation>
        </message>
        <message>
            <source>%1 must be a number, as in 12 or "12.50".</source>
            <translation>%1 debe ser un número, como 12 o "12.50".</translation>
        </message>
        <message>
            <source>%1 must have %2 decimals at most.</source>
            <translation>%1 debe tener %2 decimales a lo sumo.</translation>
        </message>
        <message>
            <source>%1 is larger than the program works with.</source>
            <translation>%1 es mayor de lo que maneja el programa.</translation>
        </message>
        <message>
            <source>%1 is larger than 16 MB.</source>
            <translation>%1 pasa de 16 MB.</translation>
        </message>
        <message>
            <source>%1 stands twice in one object: leave one of them.</source>
            <translation>%1 está dos veces en un objeto: deje uno.</translation>
        </message>
        <message>
            <source>%1 is not JSON: check its brackets, commas and quotes.</source>
            <translation>%1 no es JSON: revise sus corchetes, comas y comillas.</translation>
        </message>
        <message>
            <source>%1 must be an object in braces.</source>
            <translation>%1 debe ser un objeto entre llaves.</translation>
        </message>
        <message>
            <source>%1 must be text in quotes.</source>
            <translation>%1 debe ser texto entre comillas.</translation>
        </message>
        <message>
            <source>%1 must be 1 to 200 printable letters.</source>
            <translation>%1 debe tener de 1 a 200 letras imprimibles.</translation>
        </message>
        <message>
            <source>%1 must be a length in quotes, as in "0.25in".</source>
            <translation>%1 debe ser una longitud entre comillas, como "0.25in".</translation>
        </message>
        <message>
            <source>%1 says no unit: write it as 0.25in or 6mm.</source>
            <translation>%1 no dice la unidad: escríbalo como 0.25in o 6mm.</translation>
        </message>
        <message>
            <source>%1 must be a size in quotes, as in "9x12in".</source>
            <translation>%1 debe ser un tamaño entre comillas, como "9x12in".</translation>
        </message>
        <message>
            <source>%1 must be true or false.</source>
            <translation>%1 debe ser true o false.</translation>
        </message>
        <message>
            <source>%1 must be a list in square brackets.</source>
            <translation>%1 debe ser una lista entre corchetes.</translation>
        </message>
        <message>
            <source>%1 must be an object of shares, as in {"M":"0.02"}.</source>
            <translation>%1 debe ser un objeto de proporciones, como {"M":"0.02"}.</translation>
        </message>
        <message>
            <source>%1 is not known here: check its spelling or leave it out.</source>
            <translation>%1 no se conoce aquí: revise cómo se escribe o quítelo.</translation>
        </message>
        <message>
            <source>The file’s figures come to more than the program works with: make them smaller.</source>
            <translation>Las cifras del archivo son mayores de lo que maneja el programa: hágalas menores.</translation>
        </message>
        <message>
            <source>There is no schema %1; there are yield, buy and pack.</source>
            <translation>No hay ningún esquema %1; hay yield, buy y pack.</translation>
        </message>
        <message>
            <source>%1: %2, was %3</source>
            <translation>%1: %2, antes %3</translation>
        </message>
        <message>
            <source>%1 came to %2; once more today it comes to %3 %4.</source>
            <translation>%1 sumó %2; repetido hoy suma %3 %4.</translation>
        </message>
        <message>
            <source>Nothing is given yet; --give gives the quote.</source>
            <translation>Aún no se ha dado nada; --give da el presupuesto.</translation>
        </message>
        <message>
            <source>%1 came to %2; revised it comes to %3 %4.</source>
            <translation>%1 sumó %2; modificado suma %3 %4.</translation>
        </message>
        <message>
            <source>At today's prices what was given would come to %1 less.</source>
            <translation>A precios de hoy, lo dado sumaría %1 menos.</translation>
        </message>
        <message>
            <source>At today's prices what was given would come to %1 more.</source>
            <translation>A precios de hoy, lo dado sumaría %1 más.</translation>
        </message>
        <message>
            <source>There is no material “%1” in this book; “materials” lists them.</source>
            <translation>No hay ningún material «%1» en este libro; «materials» los enumera.</translation>
        </message>
        <message>
            <source>No materials yet.</source>
            <translation>Aún no hay materiales.</translation>
        </message>
        <message>
            <source>What %1 takes is not known; nothing of it is promised.</source>
            <translation>No se sabe lo que lleva %1; no se promete nada de ello.</translation>
        </message>
        <message>
            <source>%1: %2 on the shelf, as the book has it.</source>
            <translation>%1: %2 en el estante, según el libro.</translation>
        </message>
        <message>
            <source>%1: %2 on the shelf now; the difference of %3 is booked as counted.</source>
            <translation>%1: %2 ahora en el estante; la diferencia de %3 se anota como recuento.</translation>
        </message>
        <message>
            <source>By the steps of the scale there may be %1 to %2.</source>
            <translation>Según los pasos de la báscula puede haber de %1 a %2.</translation>
        </message>
        <message>
            <source>“%1” is not a width and a height; write it as 9x12in or 90x120mm.</source>
            <translation>«%1» no es un ancho y un alto; escríbalo como 9x12in o 90x120mm.</translation>
        </message>
        <message>
            <source>“%1” says no unit; write it as 9x12in or 90x120mm.</source>
            <translation>«%1» no dice la unidad; escríbalo como 9x12in o 90x120mm.</translation>
        </message>
        <message>
            <source>“%1” says no unit; write it as 0.25in or 6mm.</source>
            <translation>«%1» no dice la unidad; escríbalo como 0.25in o 6mm.</translation>
        </message>
        <message>
            <source>without tax</source>
            <translation>sin impuesto</translation>
        </message>
        <message>
            <source>tax</source>
            <translation>impuesto</translation>
        </message>
        <message>
            <source>customers exempt</source>
            <translation>clientes exentos</translation>
        </message>
        <message>
            <source>not taxed</source>
            <translation>sin gravar</translation>
        </message>
        <message>
            <source>Invoices: %1, credit notes: %2; with the tax they come to %3.</source>
            <translation>Facturas: %1, notas de crédito: %2; con el impuesto suman %3.</translation>
        </message>
        <message>
            <source>What is owed of it, to whom and when, your tax authority or an accountant says; invoices that were not made here are not in it.</source>
            <translation>Qué se debe de ello, a quién y cuándo, lo dice su autoridad fiscal o un contador; las facturas que no se hicieron aquí no están incluidas.</translation>
        </message>
        <message>
            <source>Nothing asks for anything today.</source>
            <translation>Hoy nada pide atención.</translation>
        </message>
        <message>
            <source>late, wanted by %1</source>
            <translation>atrasado, pedido para el %1</translation>
        </message>
        <message>
            <source>wanted today</source>
            <translation>pedido para hoy</translation>
        </message>
        <message>
            <source>%1 of the deposit are missing</source>
            <translation>faltan %1 del anticipo</translation>
        </message>
        <message>
            <source>the quote ends on %1</source>
            <translation>el presupuesto vence el %1</translation>
        </message>
        <message>
            <source>ready since %1, not collected</source>
            <translation>listo desde el %1, sin recoger</translation>
        </message>
        <message>
            <source>collected, %1 are owed</source>
            <translation>recogido, se deben %1</translation>
        </message>
        <message>
            <source>%1: the certificate of exemption for %2 ended on %3.</source>
            <translation>%1: el certificado de exención de %2 venció el %3.</translation>
        </message>
        <message>
            <source>%1: the certificate of exemption for %2 ends on %3.</source>
            <translation>%1: el certificado de exención de %2 vence el %3.</translation>
        </message>
        <message>
            <source>Stonepenny: what will this order cost, and what shall the customer pay?</source>
            <translation>Stonepenny: ¿cuánto costará este pedido y cuánto pagará el cliente?</translation>
        </message>
        <message>
            <source>%1   opens the app on a job book</source>
            <translation>%1   abre el programa con un libro de trabajos</translation>
        </message>
        <message>
            <source>Dates are YYYY-MM-DD. --json answers in JSON. Exit 0: done, 1: not possible, 2: wrong use.</source>
            <translation>Las fechas son YYYY-MM-DD. --json responde en JSON. Salida 0: hecho, 1: no es posible, 2: uso incorrecto.</translation>
        </message>
        <message>
            <source>Say what to do; stonepenny --help lists the verbs.</source>
            <translation>Diga qué hacer; stonepenny --help enumera los verbos.</translation>
        </message>
        <message>
            <source>%1 Use: %2</source>
            <translation>%1 Uso: %2</translation>
        </message>
        <message>
            <source>%1 could not be done: %2.</source>
            <translation>No se pudo hacer %1: %2.</translation>
        </message>
        <message>
            <source>There is a file “%1” already; choose another name, or add --force to replace it.</source>
            <translation>Ya existe un archivo «%1»; elija otro nombre o añada --force para reemplazarlo.</translation>
        </message>
        <message>
            <source>--to, %1, is before --from, %2; turn the two round.</source>
            <translation>--to, %1, está antes de --from, %2; inviértalos.</translation>
        </message>
        <message>
            <source>There must be 1 to 1,000,000 kits: change kits.</source>
            <translation>Debe haber de 1 a 1 000 000 surtidos: cambie kits.</translation>
        </message>
        <message>
            <source>A kit has 10,000 materials at most.</source>
            <translation>Un surtido tiene 10 000 materiales a lo sumo.</translation>
        </message>
        <message>
            <source>%1 is counted in one place and cut from sheets in another: make them agree.</source>
            <translation>%1 se cuenta en un lugar y se corta de láminas en otro: póngalos de acuerdo.</translation>
        </message>
        <message>
            <source>All kits together must hold 0 to 1,000,000,000 of %1: change its count.</source>
            <translation>Todos los surtidos juntos deben contener de 0 a 1 000 000 000 de %1: cambie su cantidad.</translation>
        </message>
        <message>
            <source>A piece takes 0 to 1,000,000,000 of %1: change its count.</source>
            <translation>Una pieza lleva de 0 a 1 000 000 000 de %1: cambie su cantidad.</translation>
        </message>
        <message>
            <source>%1 is needed in two sizes: name one.</source>
            <translation>%1 se necesita en dos tamaños: indique uno.</translation>
        </message>
        <message>
            <source>%1 names %2, which is not among the counted materials: check its name.</source>
            <translation>%1 nombra %2, que no está entre los materiales contados: revise su nombre.</translation>
        </message>
        <message>
            <source>“%1” is larger than 16 MB; read it in parts.</source>
            <translation>«%1» pasa de 16 MB; léalo por partes.</translation>
        </message>
        <message>
            <source>“%1” holds more than 20,000 people; read it in parts.</source>
            <translation>«%1» contiene más de 20 000 personas; léalo por partes.</translation>
        </message>
        <message>
            <source>“%1” names nobody; choose another file.</source>
            <translation>«%1» no nombra a nadie; elija otro archivo.</translation>
        </message>
        <message>
            <source>Line %2 of “%1” belongs to no card; save the contacts as vCard 4.0 or 3.0.</source>
            <translation>La línea %2 de «%1» no pertenece a ninguna tarjeta; guarde los contactos como vCard 4.0 o 3.0.</translation>
        </message>
        <message>
            <source>The card that begins in line %2 of “%1” has no end; save the file once more.</source>
            <translation>La tarjeta que empieza en la línea %2 de «%1» no tiene fin; guarde el archivo otra vez.</translation>
        </message>
        <message>
            <source>Line %2 of “%1” says vCard 2.1, which is not read; save it as 4.0 or 3.0.</source>
            <translation>La línea %2 de «%1» dice vCard 2.1, que no se lee; guárdelo como 4.0 o 3.0.</translation>
        </message>
        <message>
            <source>The card in line %2 of “%1” is of no known version; save it as vCard 4.0 or 3.0.</source>
            <translation>La tarjeta de la línea %2 de «%1» es de una versión desconocida; guárdela como vCard 4.0 o 3.0.</translation>
        </message>
        <message>
            <source>Line %2 of “%1” is written as quoted-printable, which belongs to vCard 2.1; save the contacts as vCard 4.0 or 3.0.</source>
            <translation>La línea %2 de «%1» está escrita como quoted-printable, propio de vCard 2.1; guarde los contactos como vCard 4.0 o 3.0.</translation>
        </message>
        <message>
            <source>Line %2 of “%1” is not in UTF-8; save the contacts in UTF-8.</source>
            <translation>La línea %2 de «%1» no está en UTF-8; guarde los contactos en UTF-8.</translation>
        </message>
        <message>
            <source>Line %2 of “%1” cannot be read as part of a card; mend it or leave it out.</source>
            <translation>La línea %2 de «%1» no se puede leer como parte de una tarjeta; corríjala o quítela.</translation>
        </message>
        <message>
            <source>Line %2 of “%1” is longer than 100,000 bytes; leave it out.</source>
            <translation>La línea %2 de «%1» pasa de 100 000 bytes; quítela.</translation>
        </message>
        <message>
            <source>“%1” has no column “name”; call one so in its first row.</source>
            <translation>«%1» no tiene columna «name»; llame así a una en su primera fila.</translation>
        </message>
        <message>
            <source>Line %2 of “%1” cannot be read as a table; look for a quotation mark that is not closed, or too many columns.</source>
            <translation>La línea %2 de «%1» no se puede leer como tabla; busque unas comillas sin cerrar o columnas de más.</translation>
        </message>
        <message>
            <source>Line %2 of “%1” has a day that cannot be read; write it like 2026-12-31.</source>
            <translation>La línea %2 de «%1» tiene una fecha que no se puede leer; escríbala como 2026-12-31.</translation>
        </message>
        <message>
            <source>“%1” is no text; choose a vCard file or a table.</source>
            <translation>«%1» no es texto; elija un archivo vCard o una tabla.</translation>
        </message>
        <message>
            <source>Name, address, telephone, mail, note and certificate go for good, from the list, from the log of changes and from every paper. Jobs, sums, numbers and seals stay, and so does what was typed into titles, names on pieces, notes of payments and drawings. Printed or exported files are not touched. Whether you must keep records for the tax office is for you to ask. This cannot be undone.</source>
            <translation>Nombre, dirección, teléfono, correo, nota y certificado desaparecen para siempre, de la lista, del registro de cambios y de cada documento. Los trabajos, importes, números y sellos se quedan, y también lo escrito en títulos, nombres en piezas, notas de pagos y dibujos. Los archivos impresos o exportados no se tocan. A usted le toca preguntar si debe conservar registros para el fisco. Esto no se puede deshacer.</translation>
        </message>
        <message>
            <source>The second place for backups, “%1”, is not there now; copies in it may hold the person as well, so look through it when it is back.</source>
            <translation>El segundo lugar de las copias de seguridad, «%1», no está ahora; sus copias también pueden contener a la persona, así que revíselo cuando vuelva.</translation>
        </message>
        <message>
            <source>--service must be 90, 95, 98 or 99, not “%1”.</source>
            <translation>--service debe ser 90, 95, 98 o 99, no «%1».</translation>
        </message>
        <message>
            <source>--days must be 2 to %1, not “%2”.</source>
            <translation>--days debe ser de 2 a %1, no «%2».</translation>
        </message>
        <message>
            <source>How much to order is worked out from --order-cost and --holding together: give both, or neither.</source>
            <translation>Cuánto pedir se calcula con --order-cost y --holding juntos: dé ambos o ninguno.</translation>
        </message>
        <message>
            <source>%1: when to order is not known; give its supplier lead days. Free: %2, used: %3, days looked at: %4.</source>
            <translation>%1: no se sabe cuándo pedir; dé a su proveedor días de entrega. Libre: %2, usado: %3, días mirados: %4.</translation>
        </message>
        <message>
            <source>%1: order now. Free: %2, low at: %3 (used: %4, days looked at: %5, lead days: %6, kept for days of more use: %7).</source>
            <translation>%1: pida ya. Libre: %2, bajo desde: %3 (usado: %4, días mirados: %5, días de entrega: %6, guardado para días de más uso: %7).</translation>
        </message>
        <message>
            <source>%1: enough is there. Free: %2, low at: %3 (used: %4, days looked at: %5, lead days: %6, kept for days of more use: %7).</source>
            <translation>%1: hay bastante. Libre: %2, bajo desde: %3 (usado: %4, días mirados: %5, días de entrega: %6, guardado para días de más uso: %7).</translation>
        </message>
        <message>
            <source>%1: ordering %2 of “%3” at a time costs least in a year.</source>
            <translation>%1: pedir %2 de «%3» cada vez es lo que menos cuesta al año.</translation>
        </message>
        <message>
            <source>Nothing was taken off the shelf in these days.</source>
            <translation>En estos días no se sacó nada del estante.</translation>
        </message>
        <message>
            <source>%1 must be more than nothing, not “%2”.</source>
            <translation>%1 debe ser más que nada, no «%2».</translation>
        </message>
        <message>
            <source>%1: %2 lacking for agreed jobs; order now.</source>
            <translation>%1: faltan %2 para trabajos acordados; pida ya.</translation>
        </message>
        <message>
            <source>%1: days known: %2, too few to tell when to order; look again later.</source>
            <translation>%1: días conocidos: %2, muy pocos para decir cuándo pedir; mire de nuevo más adelante.</translation>
        </message>
        <message>
            <source>%1: days looked at: %2, too few to tell when to order; look at more with --days.</source>
            <translation>%1: días mirados: %2, muy pocos para decir cuándo pedir; mire más con --days.</translation>
        </message>
    </context>
    <context>
        <name>Artwork</name>
        <message>
            <source>%1 is empty; save the artwork again.</source>
            <translation>%1 está vacío; guarde el dibujo de nuevo.</translation>
        </message>
        <message>
            <source>%1 is a zip file, whatever its name says; unpack it and drop the drawing inside.</source>
            <translation>%1 es un archivo zip, diga lo que diga su nombre; descomprímalo y suelte el dibujo que contiene.</translation>
        </message>
        <message>
            <source>%1 is a bitmap (%2), and a bitmap cannot be counted; ask for the drawing as SVG, DXF or PLT.</source>
            <translation>%1 es un mapa de bits (%2), y un mapa de bits no se puede contar; pida el dibujo como SVG, DXF o PLT.</translation>
        </message>
        <message>
            <source>%1 is a PDF; open it in a drawing program, save the artwork as SVG and drop that.</source>
            <translation>%1 es un PDF; ábralo en un programa de dibujo, guarde el dibujo como SVG y suelte ese.</translation>
        </message>
        <message>
            <source>%1 is PostScript (EPS); open it in a drawing program, save the artwork as SVG and drop that.</source>
            <translation>%1 es PostScript (EPS); ábralo en un programa de dibujo, guarde el dibujo como SVG y suelte ese.</translation>
        </message>
        <message>
            <source>%1 is a binary DXF; save it as ASCII DXF and drop that.</source>
            <translation>%1 es un DXF binario; guárdelo como DXF ASCII y suelte ese.</translation>
        </message>
        <message>
            <source>%1 is a DWG drawing; save it as ASCII DXF and drop that.</source>
            <translation>%1 es un dibujo DWG; guárdelo como DXF ASCII y suelte ese.</translation>
        </message>
        <message>
            <source>%1 is a metafile (%2); open it in a drawing program, save the artwork as SVG and drop that.</source>
            <translation>%1 es un metarchivo (%2); ábralo en un programa de dibujo, guarde el dibujo como SVG y suelte ese.</translation>
        </message>
        <message>
            <source>%1 is in a form that only the program which made it reads; open it there, save the artwork as SVG and drop that.</source>
            <translation>%1 está en un formato que solo lee el programa que lo hizo; ábralo allí, guarde el dibujo como SVG y suelte ese.</translation>
        </message>
        <message>
            <source>%1 is none of SVG, DXF and PLT; save the artwork as one of these and drop that.</source>
            <translation>%1 no es SVG, DXF ni PLT; guarde el dibujo como uno de estos y suelte ese.</translation>
        </message>
        <message>
            <source>%1 is not an SVG drawing; save the artwork as SVG or DXF and drop that.</source>
            <translation>%1 no es un dibujo SVG; guarde el dibujo como SVG o DXF y suelte ese.</translation>
        </message>
        <message>
            <source>%1 breaks off or is garbled at byte %2 (%3); save it again from the drawing program.</source>
            <translation>%1 se corta o está dañado en el byte %2 (%3); guárdelo de nuevo desde el programa de dibujo.</translation>
        </message>
        <message>
            <source>%1 breaks off or is garbled at byte %2; save it again from the drawing program.</source>
            <translation>%1 se corta o está dañado en el byte %2; guárdelo de nuevo desde el programa de dibujo.</translation>
        </message>
        <message>
            <source>%1 is compressed, and breaks off or is garbled; save it again from the drawing program.</source>
            <translation>%1 está comprimido y se corta o está dañado; guárdelo de nuevo desde el programa de dibujo.</translation>
        </message>
        <message>
            <source>%1 unpacks to more than %2 MB, which is too large to be one design; split it into parts and count each.</source>
            <translation>%1 descomprimido pasa de %2 MB, demasiado para ser un solo diseño; divídalo en partes y cuente cada una.</translation>
        </message>
        <message>
            <source>%1 is too large to be one design (%2 MB); split it into parts and count each.</source>
            <translation>%1 es demasiado grande para ser un solo diseño (%2 MB); divídalo en partes y cuente cada una.</translation>
        </message>
        <message>
            <source>%1 holds more than %2 outlines, which is more than one design can be; split it into parts and count each.</source>
            <translation>%1 contiene más de %2 contornos, más de los que puede tener un diseño; divídalo en partes y cuente cada una.</translation>
        </message>
        <message>
            <source>%1 has outlines of more than %2 corners in all; simplify its paths and try again.</source>
            <translation>%1 tiene contornos con más de %2 vértices en total; simplifique sus trazados e inténtelo de nuevo.</translation>
        </message>
        <message>
            <source>%1 repeats its parts more often than any one design does; expand it in a drawing program and save the parts that are needed.</source>
            <translation>%1 repite sus partes más veces que cualquier diseño; expándalo en un programa de dibujo y guarde las partes necesarias.</translation>
        </message>
        <message>
            <source>%1 has far more lines and curves than one design does; simplify its paths and try again.</source>
            <translation>%1 tiene muchas más líneas y curvas que un diseño; simplifique sus trazados e inténtelo de nuevo.</translation>
        </message>
        <message>
            <source>%1 nests its groups more than %2 deep; ungroup the artwork and save it again.</source>
            <translation>%1 anida sus grupos a más de %2 niveles; desagrupe el dibujo y guárdelo de nuevo.</translation>
        </message>
        <message>
            <source>%1 has a style sheet too involved to follow; save it with colours on the shapes themselves and try again.</source>
            <translation>%1 tiene una hoja de estilos demasiado complicada; guárdelo con los colores en las figuras mismas e inténtelo de nuevo.</translation>
        </message>
        <message>
            <source>%1 defines abbreviations that unfold without end; save it as plain SVG and try again.</source>
            <translation>%1 define abreviaturas que se desarrollan sin fin; guárdelo como SVG simple e inténtelo de nuevo.</translation>
        </message>
        <message>
            <source>The discs of %1 lie on one another by the hundred; remove the copies and try again.</source>
            <translation>Los discos de %1 están unos sobre otros a centenares; quite las copias e inténtelo de nuevo.</translation>
        </message>
        <message>
            <source>The stones of %1 lie over %2 m; check the scale.</source>
            <translation>Las piedras de %1 ocupan más de %2 m; revise la escala.</translation>
        </message>
        <message>
            <source>%1 has no discs of a stone's size; %2. %3</source>
            <translation>%1 no tiene discos del tamaño de una piedra; %2. %3</translation>
        </message>
        <message>
            <source>A stone needs a diameter and its distance from the edge cannot be negative; check both.</source>
            <translation>Una piedra necesita un diámetro y su distancia al borde no puede ser negativa; revise ambos.</translation>
        </message>
        <message>
            <source>A pitch of %1 mm sets stones of %2 mm on top of each other; give at least their diameter.</source>
            <translation>Una distancia entre centros de %1 mm pone piedras de %2 mm unas sobre otras; dé al menos su diámetro.</translation>
        </message>
        <message>
            <source>%1 would take more than %2 stones at this size; check the scale.</source>
            <translation>%1 llevaría más de %2 piedras a este tamaño; revise la escala.</translation>
        </message>
        <message>
            <source>No part of %1 is wide enough for a stone of %2 mm; take a smaller stone or a larger size.</source>
            <translation>Ninguna parte de %1 es bastante ancha para una piedra de %2 mm; tome una piedra menor o un tamaño mayor.</translation>
        </message>
        <message>
            <source>%1 reaches over a kilometre at this scale; check the scale.</source>
            <translation>%1 pasa de un kilómetro a esta escala; revise la escala.</translation>
        </message>
        <message>
            <source>The shapes of %1 are too involved to estimate (%2 corners); simplify the paths and try again.</source>
            <translation>Las figuras de %1 son demasiado complicadas para estimarlas (%2 vértices); simplifique los trazados e inténtelo de nuevo.</translation>
        </message>
        <message>
            <source>The area of %1 could not be worked out (%2); simplify the paths and try again.</source>
            <translation>No se pudo calcular el área de %1 (%2); simplifique los trazados e inténtelo de nuevo.</translation>
        </message>
        <message>
            <source>%1 has no closed or filled shape to set stones on; close its outlines, or turn text into outlines, and try again.</source>
            <translation>%1 no tiene ninguna figura cerrada o rellena donde colocar piedras; cierre sus contornos o convierta el texto en contornos e inténtelo de nuevo.</translation>
        </message>
        <message>
            <source>"%1" is not a scale; write 96 dpi, mm, in, or the millimetres one unit is, as in 0.2646.</source>
            <translation>«%1» no es una escala; escriba 96 dpi, mm, in o los milímetros que mide una unidad, como 0.2646.</translation>
        </message>
        <message>
            <source>A scale of %1 makes the drawing absurdly small or large; check the number.</source>
            <translation>Una escala de %1 hace el dibujo absurdamente pequeño o grande; revise el número.</translation>
        </message>
        <message>
            <source>%1 not read</source>
            <translation>%1 sin leer</translation>
        </message>
        <message>
            <source>beyond all measure</source>
            <translation>fuera de toda medida</translation>
        </message>
        <message numerus="yes">
            <source>bitmaps</source>
            <translation>
                <numerusform>mapa de bits</numerusform>
                <numerusform>mapas de bits</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>copies of a part inside itself</source>
            <translation>
                <numerusform>copia de una parte dentro de sí misma</numerusform>
                <numerusform>copias de una parte dentro de sí misma</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>copies of a part that is not in the file</source>
            <translation>
                <numerusform>copia de una parte que no está en el archivo</numerusform>
                <numerusform>copias de una parte que no está en el archivo</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>cut lines or large shapes</source>
            <translation>
                <numerusform>línea de corte o figura grande</numerusform>
                <numerusform>líneas de corte o figuras grandes</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>dotted lines, their dots not counted</source>
            <translation>
                <numerusform>línea de puntos, con sus puntos sin contar</numerusform>
                <numerusform>líneas de puntos, con sus puntos sin contar</numerusform>
            </translation>
        </message>
        <message>
            <source>drawn twice</source>
            <translation>dibujado dos veces</translation>
        </message>
        <message numerus="yes">
            <source>ellipses</source>
            <translation>
                <numerusform>elipse</numerusform>
                <numerusform>elipses</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>embedded pages, not drawings</source>
            <translation>
                <numerusform>página incrustada, no un dibujo</numerusform>
                <numerusform>páginas incrustadas, no dibujos</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>entities with a mistake in them</source>
            <translation>
                <numerusform>entidad con un error</numerusform>
                <numerusform>entidades con un error</numerusform>
            </translation>
        </message>
        <message>
            <source>hidden</source>
            <translation>oculto</translation>
        </message>
        <message numerus="yes">
            <source>lines with markers, the markers not counted</source>
            <translation>
                <numerusform>línea con marcadores, los marcadores sin contar</numerusform>
                <numerusform>líneas con marcadores, los marcadores sin contar</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>meshes, not outlines</source>
            <translation>
                <numerusform>malla, no un contorno</numerusform>
                <numerusform>mallas, no contornos</numerusform>
            </translation>
        </message>
        <message>
            <source>not painted</source>
            <translation>sin pintar</translation>
        </message>
        <message>
            <source>not round</source>
            <translation>no redondo</translation>
        </message>
        <message>
            <source>on the paper sheet, not in the drawing</source>
            <translation>en la hoja de papel, no en el dibujo</translation>
        </message>
        <message numerus="yes">
            <source>open lines</source>
            <translation>
                <numerusform>línea abierta</numerusform>
                <numerusform>líneas abiertas</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>other entities not read</source>
            <translation>
                <numerusform>otra entidad sin leer</numerusform>
                <numerusform>otras entidades sin leer</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>other unknown elements</source>
            <translation>
                <numerusform>otro elemento desconocido</numerusform>
                <numerusform>otros elementos desconocidos</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>parts of another file, not opened</source>
            <translation>
                <numerusform>parte de otro archivo, sin abrir</numerusform>
                <numerusform>partes de otro archivo, sin abrir</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>shapes filled with a pattern, what it shows not counted</source>
            <translation>
                <numerusform>figura rellena con un motivo, lo que muestra sin contar</numerusform>
                <numerusform>figuras rellenas con un motivo, lo que muestra sin contar</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>points without a size</source>
            <translation>
                <numerusform>punto sin tamaño</numerusform>
                <numerusform>puntos sin tamaño</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>rings of other discs</source>
            <translation>
                <numerusform>anillo de otro disco</numerusform>
                <numerusform>anillos de otros discos</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>round lines around stones</source>
            <translation>
                <numerusform>línea redonda alrededor de piedras</numerusform>
                <numerusform>líneas redondas alrededor de piedras</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>scripts, never run</source>
            <translation>
                <numerusform>script, nunca ejecutado</numerusform>
                <numerusform>scripts, nunca ejecutados</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>shapes with a mistake in them, read as far as they go</source>
            <translation>
                <numerusform>figura con un error, leída hasta donde llega</numerusform>
                <numerusform>figuras con un error, leídas hasta donde llegan</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>discs whose place or size cannot be read</source>
            <translation>
                <numerusform>disco cuyo lugar o tamaño no se puede leer</numerusform>
                <numerusform>discos cuyo lugar o tamaño no se puede leer</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>splines not read</source>
            <translation>
                <numerusform>spline sin leer</numerusform>
                <numerusform>splines sin leer</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>stones</source>
            <translation>
                <numerusform>piedra</numerusform>
                <numerusform>piedras</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>texts not turned to outlines</source>
            <translation>
                <numerusform>texto sin convertir en contornos</numerusform>
                <numerusform>textos sin convertir en contornos</numerusform>
            </translation>
        </message>
        <message>
            <source>tilted out of the plane</source>
            <translation>inclinado fuera del plano</translation>
        </message>
        <message>
            <source>too large</source>
            <translation>demasiado grande</translation>
        </message>
        <message>
            <source>too small</source>
            <translation>demasiado pequeño</translation>
        </message>
        <message numerus="yes">
            <source>unknown elements %1</source>
            <translation>
                <numerusform>elemento desconocido %1</numerusform>
                <numerusform>elementos desconocidos %1</numerusform>
            </translation>
        </message>
        <message>
            <source>it has no outlines at all</source>
            <translation>no tiene ningún contorno</translation>
        </message>
        <message>
            <source>what it has: %1</source>
            <translation>lo que tiene: %1</translation>
        </message>
        <message>
            <source>%1 %2</source>
            <translation>%1 %2</translation>
        </message>
        <message>
            <source>Turn the text into outlines of stones and save it again.</source>
            <translation>Convierta el texto en contornos de piedras y guárdelo de nuevo.</translation>
        </message>
        <message>
            <source>A bitmap cannot be counted; place stones over it as circles.</source>
            <translation>Un mapa de bits no se puede contar; coloque piedras encima como círculos.</translation>
        </message>
        <message>
            <source>Draw its stones as circles, or estimate from its shape instead.</source>
            <translation>Dibuje sus piedras como círculos o estime a partir de su forma.</translation>
        </message>
        <message>
            <source>The dots of a dotted line are no outlines; turn its stroke into outlines, so that each dot is a circle, and save it again.</source>
            <translation>Los puntos de una línea de puntos no son contornos; convierta su trazo en contornos, de modo que cada punto sea un círculo, y guárdelo de nuevo.</translation>
        </message>
        <message>
            <source>What a pattern shows has no outlines of its own; expand the pattern into single objects and save it again.</source>
            <translation>Lo que muestra un motivo no tiene contornos propios; expanda el motivo en objetos sueltos y guárdelo de nuevo.</translation>
        </message>
        <message>
            <source>Markers on a line are no outlines; turn them into objects of their own and save it again.</source>
            <translation>Los marcadores de una línea no son contornos; conviértalos en objetos propios y guárdelo de nuevo.</translation>
        </message>
        <message>
            <source>A point has no size; draw a circle as large as its stone on each point and save it again.</source>
            <translation>Un punto no tiene tamaño; dibuje en cada punto un círculo tan grande como su piedra y guárdelo de nuevo.</translation>
        </message>
        <message>
            <source>A hatch has no outlines of its own; explode it, or draw the outline it fills, and save it again.</source>
            <translation>Un sombreado no tiene contornos propios; descompóngalo o dibuje el contorno que rellena y guárdelo de nuevo.</translation>
        </message>
        <message>
            <source>Its discs are %1 to %2 mm across, stones %3 to %4 mm; save it at its true size, or estimate from its shape instead.</source>
            <translation>Sus discos miden de %1 a %2 mm y las piedras de %3 a %4 mm; guárdelo a su tamaño real o estime a partir de su forma.</translation>
        </message>
        <message numerus="yes">
            <source>%n style rules were not understood and left aside.</source>
            <translation>
                <numerusform>No se entendió %n regla de estilo y se dejó de lado.</numerusform>
                <numerusform>No se entendieron %n reglas de estilo y se dejaron de lado.</numerusform>
            </translation>
        </message>
        <message>
            <source>The drawing asks for a style sheet in another file, which was not opened.</source>
            <translation>El dibujo pide una hoja de estilos de otro archivo, que no se abrió.</translation>
        </message>
        <message>
            <source>The drawing asks for text in another file, which was not opened.</source>
            <translation>El dibujo pide texto de otro archivo, que no se abrió.</translation>
        </message>
        <message numerus="yes">
            <source>%n gradients stand for the colours of their middle.</source>
            <translation>
                <numerusform>%n degradado representa el color de su centro.</numerusform>
                <numerusform>%n degradados representan los colores de su centro.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n shapes stand behind a clip path or mask and are counted whole.</source>
            <translation>
                <numerusform>%n figura está tras un recorte o máscara y se cuenta entera.</numerusform>
                <numerusform>%n figuras están tras un recorte o máscara y se cuentan enteras.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n transforms could not be read; what they move may stand in the wrong place.</source>
            <translation>
                <numerusform>No se pudo leer %n transformación; lo que mueve puede estar en otro lugar.</numerusform>
                <numerusform>No se pudieron leer %n transformaciones; lo que mueven puede estar en otro lugar.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n of %2 separate pieces of %3 are narrower than a stone and hold none; take a smaller stone or a larger size.</source>
            <translation>
                <numerusform>%n de %2 partes separadas de %3 es más estrecha que una piedra y no lleva ninguna; tome una piedra menor o un tamaño mayor.</numerusform>
                <numerusform>%n de %2 partes separadas de %3 son más estrechas que una piedra y no llevan ninguna; tome una piedra menor o un tamaño mayor.</numerusform>
            </translation>
        </message>
        <message>
            <source>along the outline</source>
            <translation>a lo largo del contorno</translation>
        </message>
        <message>
            <source>along the outline, as it is too narrow for rows</source>
            <translation>a lo largo del contorno, pues es muy estrecho para hileras</translation>
        </message>
        <message>
            <source>square rows</source>
            <translation>hileras rectas</translation>
        </message>
        <message>
            <source>staggered rows</source>
            <translation>hileras alternadas</translation>
        </message>
        <message>
            <source>square rows turned by %1 degrees</source>
            <translation>hileras rectas giradas %1 grados</translation>
        </message>
        <message>
            <source>staggered rows turned by %1 degrees</source>
            <translation>hileras alternadas giradas %1 grados</translation>
        </message>
        <message>
            <source>rows, those of each piece turned as fits it best</source>
            <translation>hileras, giradas en cada parte como mejor encajan</translation>
        </message>
        <message>
            <source>along the outline, then %1</source>
            <translation>a lo largo del contorno, luego %1</translation>
        </message>
        <message>
            <source>along the outline, then in lines beside it</source>
            <translation>a lo largo del contorno, luego en líneas junto a él</translation>
        </message>
        <message>
            <source>%1; along the outline where a piece is narrow</source>
            <translation>%1; a lo largo del contorno donde una parte es estrecha</translation>
        </message>
        <message>
            <source>in a row along the lines</source>
            <translation>en una hilera a lo largo de las líneas</translation>
        </message>
        <message>
            <source>%1; in a row along the lines</source>
            <translation>%1; en una hilera a lo largo de las líneas</translation>
        </message>
        <message>
            <source>Laid in other rows, the areas hold up to %1 fewer or %2 more.</source>
            <translation>En otras hileras, las áreas llevan hasta %1 menos o %2 más.</translation>
        </message>
        <message numerus="yes">
            <source>Each of %n stretches from corner to corner may take one more or less.</source>
            <translation>
                <numerusform>El único tramo a lo largo del borde puede llevar una más o una menos.</numerusform>
                <numerusform>Cada uno de los %n tramos de esquina a esquina puede llevar una más o una menos.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n narrow parts hold no stone; widened, they take up to %2.</source>
            <translation>
                <numerusform>%n parte estrecha no lleva piedras; ensanchada, lleva hasta %2.</numerusform>
                <numerusform>%n partes estrechas no llevan piedras; ensanchadas, llevan hasta %2.</numerusform>
            </translation>
        </message>
        <message>
            <source>There is no other way to lay them.</source>
            <translation>No hay otro modo de colocarlas.</translation>
        </message>
        <message numerus="yes">
            <source>%n lines that end somewhere are not set with stones.</source>
            <translation>
                <numerusform>%n línea que termina en algún punto no lleva piedras.</numerusform>
                <numerusform>%n líneas que terminan en algún punto no llevan piedras.</numerusform>
            </translation>
        </message>
        <message>
            <source>Nothing of %1 is to be seen; other shapes lie on it.</source>
            <translation>De %1 no se ve nada; otras figuras están encima.</translation>
        </message>
    </context>
    <context>
        <name>Base</name>
        <message>
            <source>This is not a key in the 8-4-4-4-12 form.</source>
            <translation>Esto no es una clave en la forma 8-4-4-4-12.</translation>
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
            <translation>la prenda del propio cliente</translation>
        </message>
        <message>
            <source>Wanted by %1</source>
            <translation>Pedido para el %1</translation>
        </message>
        <message>
            <source>for %1</source>
            <translation>para %1</translation>
        </message>
        <message>
            <source>choice %1 of %2</source>
            <translation>opción %1 de %2</translation>
        </message>
        <message>
            <source>Choice %1 of %2: none is taken yet.</source>
            <translation>Opción %1 de %2: aún no se ha tomado ninguna.</translation>
        </message>
        <message>
            <source>on the plan for %1</source>
            <translation>en el plan para el %1</translation>
        </message>
        <message>
            <source>Lay out %1, hand over %2</source>
            <translation>Sacar %1, entregar %2</translation>
        </message>
        <message>
            <source>Lay out %1</source>
            <translation>Sacar %1</translation>
        </message>
        <message>
            <source>plain</source>
            <translation>sin talla</translation>
        </message>
        <message>
            <source>%1 to spare, for what may be spoiled.</source>
            <translation>%1 de reserva, por lo que se pueda estropear.</translation>
        </message>
        <message>
            <source>%1 of size %2 to spare, for what may be spoiled.</source>
            <translation>%1 de talla %2 de reserva, por lo que se pueda estropear.</translation>
        </message>
        <message>
            <source>no drawing is kept</source>
            <translation>no se guarda ningún dibujo</translation>
        </message>
        <message>
            <source>Brush in this order</source>
            <translation>Cepillar en este orden</translation>
        </message>
        <message>
            <source>most stones first</source>
            <translation>primero el de más piedras</translation>
        </message>
        <message>
            <source>a piece</source>
            <translation>por pieza</translation>
        </message>
        <message>
            <source>to fetch</source>
            <translation>para traer</translation>
        </message>
        <message>
            <source>%1 of %2, %3 off the roll</source>
            <translation>%1 de %2, %3 del rollo</translation>
        </message>
        <message>
            <source>%1 of %2, %3 a sheet: sheets to cut into: %4</source>
            <translation>%1 de %2, %3 por lámina: láminas que se cortan: %4</translation>
        </message>
        <message>
            <source>One a colour, cut once.</source>
            <translation>Una por color, cortada una vez.</translation>
        </message>
        <message>
            <source>It covers the widest colour; hinge it, lift %1 times with it.</source>
            <translation>Cubre el color más ancho; póngale bisagra, levante %1 veces con ella.</translation>
        </message>
        <message>
            <source>It covers the widest colour; hinge it.</source>
            <translation>Cubre el color más ancho; póngale bisagra.</translation>
        </message>
        <message>
            <source>The templates are on the wall.</source>
            <translation>Las plantillas están en la pared.</translation>
        </message>
        <message>
            <source>The templates are those cut above, for %1.</source>
            <translation>Las plantillas son las cortadas arriba, para %1.</translation>
        </message>
        <message>
            <source>The templates are those cut on bench sheet %1 of %2, for %3.</source>
            <translation>Las plantillas son las cortadas en la hoja de taller %1 de %2, para %3.</translation>
        </message>
        <message>
            <source>Cut</source>
            <translation>Cortar</translation>
        </message>
        <message>
            <source>done</source>
            <translation>hecho</translation>
        </message>
        <message>
            <source>No backing: it goes on %1.</source>
            <translation>Sin respaldo: va sobre %1.</translation>
        </message>
        <message>
            <source>as the makers say</source>
            <translation>según los fabricantes</translation>
        </message>
        <message>
            <source>platen</source>
            <translation>placa</translation>
        </message>
        <message>
            <source>dwell</source>
            <translation>tiempo de prensado</translation>
        </message>
        <message>
            <source>medium</source>
            <translation>media</translation>
        </message>
        <message>
            <source>pressure, even all over</source>
            <translation>presión, pareja en todo</translation>
        </message>
        <message>
            <source>second press, where an edge is loose</source>
            <translation>segundo prensado, donde un borde esté suelto</translation>
        </message>
        <message>
            <source>What the makers of stones, tape and cloth say comes first. Press one and look at it before the rest.</source>
            <translation>Lo que dicen los fabricantes de piedras, cinta y tela va primero. Prense una y mírela antes que el resto.</translation>
        </message>
        <message>
            <source>Steps</source>
            <translation>Pasos</translation>
        </message>
        <message>
            <source>%1 planned</source>
            <translation>%1 previstos</translation>
        </message>
        <message>
            <source>planned</source>
            <translation>previsto</translation>
        </message>
        <message>
            <source>who</source>
            <translation>quién</translation>
        </message>
        <message>
            <source>day</source>
            <translation>día</translation>
        </message>
        <message>
            <source>minutes taken</source>
            <translation>minutos reales</translation>
        </message>
        <message>
            <source>Draw</source>
            <translation>Dibujar</translation>
        </message>
        <message>
            <source>Cut; retract the blade before loading</source>
            <translation>Cortar; cuchilla retraída al cargar</translation>
        </message>
        <message>
            <source>Weed</source>
            <translation>Depilar</translation>
        </message>
        <message>
            <source>Set up</source>
            <translation>Preparar</translation>
        </message>
        <message>
            <source>Brush %1, small circles, no hole empty</source>
            <translation>Cepillar %1 en círculos; todo lleno</translation>
        </message>
        <message>
            <source>Lift %1, the tape hinged</source>
            <translation>Levantar %1, la cinta con bisagra</translation>
        </message>
        <message>
            <source>Press; look along the edges of the stones</source>
            <translation>Prensar; mirar el borde de las piedras</translation>
        </message>
        <message>
            <source>Trim, check against the picture</source>
            <translation>Recortar, comparar con la imagen</translation>
        </message>
        <message>
            <source>Pack %1</source>
            <translation>Empacar %1</translation>
        </message>
        <message>
            <source>%1 min</source>
            <translation>%1 min</translation>
        </message>
        <message>
            <source>Pressed</source>
            <translation>Prensado</translation>
        </message>
        <message>
            <source>and so on, up to %1</source>
            <translation>y así hasta %1</translation>
        </message>
        <message>
            <source>spoiled</source>
            <translation>estropeadas</translation>
        </message>
        <message>
            <source>Take care</source>
            <translation>Tenga cuidado</translation>
        </message>
        <message>
            <source>Press and fresh work burn: gloves, a cover sheet, fresh air.</source>
            <translation>La prensa y lo recién prensado queman: guantes, hoja protectora, aire fresco.</translation>
        </message>
        <message>
            <source>Blades cut: retract before loading.</source>
            <translation>Las cuchillas cortan: retraer antes de cargar.</translation>
        </message>
        <message>
            <source>Stones may hold lead, small parts choke: not for under three. Makers’ certificates, local rules and licensed practice decide.</source>
            <translation>Las piedras pueden contener plomo y las piezas pequeñas ahogan: no para menores de tres años. Deciden los certificados del fabricante, las normas locales y la práctica autorizada.</translation>
        </message>
        <message>
            <source>Bench sheet %1</source>
            <translation>Hoja de taller %1</translation>
        </message>
        <message>
            <source>Bench sheet %1, %2 of %3</source>
            <translation>Hoja de taller %1, %2 de %3</translation>
        </message>
    </context>
    <context>
        <name>BillWords</name>
        <message>
            <source>Quote %1</source>
            <translation>Presupuesto %1</translation>
        </message>
        <message>
            <source>Invoice %1</source>
            <translation>Factura %1</translation>
        </message>
        <message>
            <source>Receipt %1</source>
            <translation>Recibo %1</translation>
        </message>
        <message>
            <source>Credit note %1</source>
            <translation>Nota de crédito %1</translation>
        </message>
        <message>
            <source>Date</source>
            <translation>Fecha</translation>
        </message>
        <message>
            <source>Due</source>
            <translation>Vence</translation>
        </message>
        <message>
            <source>Quote</source>
            <translation>Presupuesto</translation>
        </message>
        <message>
            <source>Invoice</source>
            <translation>Factura</translation>
        </message>
        <message>
            <source>Total</source>
            <translation>Total</translation>
        </message>
        <message>
            <source>Received</source>
            <translation>Recibido</translation>
        </message>
        <message>
            <source>Credited</source>
            <translation>Acreditado</translation>
        </message>
        <message>
            <source>Without tax: %1</source>
            <translation>Sin impuesto: %1</translation>
        </message>
        <message>
            <source>Further to invoice %1</source>
            <translation>Adicional a la factura %1</translation>
        </message>
        <message>
            <source>Takes back all of invoice %1</source>
            <translation>Anula toda la factura %1</translation>
        </message>
        <message>
            <source>Takes back a part of invoice %1</source>
            <translation>Anula una parte de la factura %1</translation>
        </message>
        <message>
            <source>%1, %2, for quote %3</source>
            <extracomment>Of a payment: how it was paid, on which day, for which quote: "Cash, 3 Dec 2026, for quote 2026-0042".</extracomment>
            <translation>%1, %2, por el presupuesto %3</translation>
        </message>
        <message>
            <source>Taken %1, change %2</source>
            <translation>Recibido %1, cambio %2</translation>
        </message>
        <message>
            <source>Invoiced, less credited</source>
            <translation>Facturado, menos lo acreditado</translation>
        </message>
        <message>
            <source>The order comes to</source>
            <translation>El pedido suma</translation>
        </message>
        <message>
            <source>Paid %1, %2</source>
            <translation>Pagado %1, %2</translation>
        </message>
        <message>
            <source>Given back %1, %2</source>
            <translation>Devuelto %1, %2</translation>
        </message>
        <message>
            <source>Payment taken back %1, %2</source>
            <translation>Pago anulado %1, %2</translation>
        </message>
        <message>
            <source>Rounded %1, %2</source>
            <extracomment>Of a payment whose sum was rounded to the smallest coin: its day, and how it was paid.</extracomment>
            <translation>Redondeado %1, %2</translation>
        </message>
        <message>
            <source>Paid before, less given back</source>
            <translation>Pagado antes, menos lo devuelto</translation>
        </message>
        <message>
            <source>Left to pay</source>
            <translation>Queda por pagar</translation>
        </message>
        <message>
            <source>Left to pay by %1</source>
            <translation>Queda por pagar hasta el %1</translation>
        </message>
        <message>
            <source>Your credit</source>
            <translation>Su saldo a favor</translation>
        </message>
        <message>
            <source>Receipt</source>
            <translation>Recibo</translation>
        </message>
        <message>
            <source>Credit note</source>
            <translation>Nota de crédito</translation>
        </message>
        <message>
            <source>The law where you are may ask more of an invoice: other words, numbers, a tax number, how long it is kept. That is yours to confirm with your tax authority or an accountant.</source>
            <translation>La ley de su lugar puede exigir más de una factura: otras palabras, números, un número fiscal, cuánto tiempo se guarda. A usted le toca confirmarlo con su autoridad fiscal o un contador.</translation>
        </message>
    </context>
    <context>
        <name>Buying</name>
        <message>
            <source>kits</source>
            <translation>surtidos</translation>
        </message>
        <message>
            <source>bulk</source>
            <translation>a granel</translation>
        </message>
        <message>
            <source>mix</source>
            <translation>mixto</translation>
        </message>
        <message>
            <source>nothing to buy</source>
            <translation>nada que comprar</translation>
        </message>
        <message>
            <source>no way</source>
            <translation>sin manera</translation>
        </message>
        <message>
            <source>Cost of one piece, %1</source>
            <translation>Costo de una pieza, %1</translation>
        </message>
        <message>
            <source>Pieces</source>
            <translation>Piezas</translation>
        </message>
        <message numerus="yes">
            <source>%1 pieces, each: %2</source>
            <translation>
                <numerusform>%1 pieza: %2</numerusform>
                <numerusform>%1 piezas, cada una: %2</numerusform>
            </translation>
        </message>
        <message>
            <source>; %1 cheapest</source>
            <translation>; lo más barato: %1</translation>
        </message>
        <message>
            <source>; nothing to buy</source>
            <translation>; nada que comprar</translation>
        </message>
        <message>
            <source> (not proven)</source>
            <translation> (no demostrado)</translation>
        </message>
        <message>
            <source>from %1 on bulk stays cheaper than kits, proven</source>
            <translation>desde %1, a granel sigue siendo más barato que en surtidos, demostrado</translation>
        </message>
        <message>
            <source>quantities up to %1 are shown: beyond it no plan was found in time</source>
            <translation>se muestran cantidades hasta %1: más allá no se halló ningún plan a tiempo</translation>
        </message>
        <message>
            <source>quantities up to %1 are shown, of %2 asked for: each is planned on its own, and all of them would take too long</source>
            <translation>se muestran cantidades hasta %1, de las %2 pedidas: cada una se planea por separado, y todas llevarían demasiado tiempo</translation>
        </message>
        <message>
            <source> and </source>
            <translation> y </translation>
        </message>
        <message>
            <source>from %1 on</source>
            <translation>desde %1</translation>
        </message>
        <message>
            <source>Makes none: %1 is missing or too little.</source>
            <translation>No sale ninguna: falta %1 o es muy poco.</translation>
        </message>
        <message numerus="yes">
            <source>%1 run out first.</source>
            <translation>
                <numerusform>%1 se acaba primero.</numerusform>
                <numerusform>%1 se acaban primero.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%1 pieces for sure</source>
            <translation>
                <numerusform>%1 pieza segura</numerusform>
                <numerusform>%1 piezas seguras</numerusform>
            </translation>
        </message>
        <message>
            <source>%1; %2</source>
            <comment>so many pieces; what runs out</comment>
            <translation>%1; %2</translation>
        </message>
        <message>
            <source>No piece for sure, %1 with odds of %2; %3</source>
            <translation>Ninguna pieza segura, %1 con probabilidad de %2; %3</translation>
        </message>
        <message>
            <source>%1, %2 with odds of %3; %4</source>
            <translation>%1, %2 con probabilidad de %3; %4</translation>
        </message>
        <message>
            <source>kit</source>
            <translation>surtido</translation>
        </message>
        <message>
            <source>Cheaper from the kit: %1.</source>
            <translation>Más barato con el surtido: %1.</translation>
        </message>
        <message>
            <source>Cheaper in bulk: %1.</source>
            <translation>Más barato a granel: %1.</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <comment>a kit: what it makes</comment>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>%1: %2 Each of %3, shipping in: kit %4, bulk %5. %6</source>
            <translation>%1: %2 Cada una de %3, con envío: surtido %4, a granel %5. %6</translation>
        </message>
        <message>
            <source>, templates cut</source>
            <translation>, plantillas cortadas</translation>
        </message>
        <message>
            <source>%1 × kit, %2 each</source>
            <translation>%1 × surtido, %2 c/u</translation>
        </message>
        <message>
            <source>%1 × %2, %3 each</source>
            <translation>%1 × %2, %3 c/u</translation>
        </message>
        <message>
            <source>once for the order</source>
            <translation>una vez por pedido</translation>
        </message>
        <message>
            <source>free from %1</source>
            <translation>gratis desde %1</translation>
        </message>
        <message>
            <source>free, as the goods reach %1</source>
            <translation>gratis, pues la mercancía llega a %1</translation>
        </message>
        <message>
            <source>Shipping</source>
            <translation>Envío</translation>
        </message>
        <message>
            <source>%1 × %2 ÷ (1 − %3 lost)</source>
            <translation>%1 × %2 ÷ (1 − %3 de pérdida)</translation>
        </message>
        <message numerus="yes">
            <source>%1 pieces, %2 a sheet</source>
            <translation>
                <numerusform>%1 pieza, %2 por lámina</numerusform>
                <numerusform>%1 piezas, %2 por lámina</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%1 pieces, each cut lifts %2 times, %3 a sheet</source>
            <translation>
                <numerusform>%1 pieza, cada corte levanta %2 veces, %3 por lámina</numerusform>
                <numerusform>%1 piezas, cada corte levanta %2 veces, %3 por lámina</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>once: %1 templates, %2 a sheet</source>
            <translation>
                <numerusform>una vez: %1 plantilla, %2 por lámina</numerusform>
                <numerusform>una vez: %1 plantillas, %2 por lámina</numerusform>
            </translation>
        </message>
        <message>
            <source>once, with a kit</source>
            <translation>una vez, con un surtido</translation>
        </message>
        <message>
            <source>one a piece</source>
            <translation>una por pieza</translation>
        </message>
        <message>
            <source>%1 a piece</source>
            <translation>%1 por pieza</translation>
        </message>
        <message>
            <source>%1 for the order</source>
            <translation>%1 para el pedido</translation>
        </message>
        <message>
            <source>Needed</source>
            <translation>Necesario</translation>
        </message>
        <message>
            <source>%1 on the shelf</source>
            <translation>%1 en el estante</translation>
        </message>
        <message>
            <source>unknown</source>
            <translation>no se sabe</translation>
        </message>
        <message>
            <source>Left on the shelf, worth</source>
            <translation>Queda en el estante, valor</translation>
        </message>
        <message>
            <source>%1; nobody sells it in bulk</source>
            <translation>%1; nadie lo vende a granel</translation>
        </message>
        <message>
            <source>Kits only</source>
            <translation>Solo surtidos</translation>
        </message>
        <message>
            <source>Bulk only</source>
            <translation>Solo a granel</translation>
        </message>
        <message>
            <source>Cheapest mix</source>
            <translation>Mezcla más barata</translation>
        </message>
        <message>
            <source>Buy nothing: the shelf is enough</source>
            <translation>No compre nada: el estante basta</translation>
        </message>
        <message>
            <source>Buy: %1</source>
            <translation>Compre: %1</translation>
        </message>
        <message>
            <source>Buy: %1, %2</source>
            <translation>Compre: %1, %2</translation>
        </message>
        <message>
            <source>Templates of %1, ready cut</source>
            <translation>Plantillas de %1, ya cortadas</translation>
        </message>
        <message>
            <source>Nothing has to be bought: the shelf is enough.</source>
            <translation>No hay que comprar nada: el estante basta.</translation>
        </message>
        <message>
            <source>Together</source>
            <translation>En total</translation>
        </message>
        <message>
            <source>%1, continued</source>
            <translation>%1, continuación</translation>
        </message>
        <message>
            <source>Supplier</source>
            <translation>Proveedor</translation>
        </message>
        <message>
            <source>Pack</source>
            <translation>Paquete</translation>
        </message>
        <message>
            <source>Material</source>
            <translation>Material</translation>
        </message>
        <message>
            <source>Packs</source>
            <translation>Paquetes</translation>
        </message>
        <message>
            <source>Each</source>
            <translation>C/u</translation>
        </message>
        <message>
            <source>Goods</source>
            <translation>Mercancía</translation>
        </message>
        <message>
            <source>Shopping list</source>
            <translation>Lista de compras</translation>
        </message>
        <message>
            <source>Cost of one piece by quantity</source>
            <translation>Costo de una pieza por cantidad</translation>
        </message>
    </context>
    <context>
        <name>CareCard</name>
        <message>
            <source>Care and safety</source>
            <translation>Cuidados y seguridad</translation>
        </message>
        <message>
            <source>To apply a decal</source>
            <translation>Para aplicar una calcomanía</translation>
        </message>
        <message>
            <source>Press the empty garment for a few seconds, to drive out damp and creases.</source>
            <translation>Prense la prenda vacía unos segundos para quitar humedad y arrugas.</translation>
        </message>
        <message>
            <source>Peel off the backing, lay the decal with its film up, and cover it.</source>
            <translation>Despegue el respaldo, ponga la calcomanía con la película hacia arriba y cúbrala.</translation>
        </message>
        <message>
            <source>Press at %1 for %2, evenly and firmly; try it on a hidden spot of delicate cloth first.</source>
            <translation>Prense a %1 durante %2, de modo parejo y firme; pruebe antes en un lugar oculto de la tela delicada.</translation>
        </message>
        <message>
            <source>Press evenly and firmly, as hot and as long as the maker of the stones says.</source>
            <translation>Prense de modo parejo y firme, con el calor y el tiempo que diga el fabricante de las piedras.</translation>
        </message>
        <message>
            <source>Let it cool, then peel the film off flat. A stone that comes along is pressed once more, from the inside.</source>
            <translation>Deje enfriar y despegue la película a ras. Una piedra que se venga con ella se prensa otra vez, por dentro.</translation>
        </message>
        <message>
            <source>A press burns: gloves, and nothing meltable under it. What the makers of cloth and stones say comes first.</source>
            <translation>Una prensa quema: guantes, y nada que se funda debajo. Lo que dicen los fabricantes de tela y piedras va primero.</translation>
        </message>
        <message>
            <source>Care card</source>
            <translation>Tarjeta de cuidados</translation>
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
            <translation>Lo recién prensado está caliente: deje que se enfríe antes de tocarlo.
Lave las prendas al revés y en frío, séquelas sin calor, no planche las piedras.
No para menores de tres años: las piedras son piezas pequeñas que se pueden tragar.
Las piedras pueden contener plomo: para lo que vaya a llevar un niño, pida el certificado del fabricante y revise las normas locales.
En un vehículo, deje libre el vidrio por donde mira quien conduce: las normas varían según el lugar, y usted decide dónde va.</translation>
        </message>
        <message>
            <source>Local rules, the makers' data and licensed practice come before these notes.</source>
            <translation>Las normas locales, los datos de los fabricantes y la práctica autorizada van antes que estas notas.</translation>
        </message>
        <message>
            <source>Not for children under three. Keep glass clear where you drive; check local rules. Fresh press work is hot.</source>
            <translation>No para menores de tres años. Deje libre el vidrio por donde mira quien conduce; revise las normas locales. Lo recién prensado está caliente.</translation>
        </message>
        <message>
            <source>Blades cut: retract the blade before loading, and keep fingers off its path.</source>
            <translation>Las cuchillas cortan: retraiga la cuchilla antes de cargar y no ponga los dedos en su camino.</translation>
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
            <translation>%1 por hora</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <comment>a part of the cost and the place it is for</comment>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>%1, × %2 of the %3 pieces that share the set</source>
            <translation>%1, × %2 de las %3 piezas que comparten el juego</translation>
        </message>
        <message>
            <source>(%1 dwell + %2 handling)</source>
            <translation>(%1 de prensado + %2 de manejo)</translation>
        </message>
        <message>
            <source>%1 × %2 a month ÷ %3 of bench time</source>
            <translation>%1 × %2 al mes ÷ %3 de tiempo de taller</translation>
        </message>
        <message>
            <source>fixed price</source>
            <translation>precio fijo</translation>
        </message>
        <message>
            <source>its fixed price is not set</source>
            <translation>su precio fijo no está puesto</translation>
        </message>
        <message>
            <source>average of the shelf</source>
            <translation>promedio del estante</translation>
        </message>
        <message>
            <source>no pack of it is known</source>
            <translation>no se conoce ningún paquete</translation>
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
            <translation>no hay nada con costo en el estante; %1</translation>
        </message>
        <message>
            <source>for the %1 of this order</source>
            <translation>para %1 de este pedido</translation>
        </message>
        <message>
            <source>%1 cost less: %2 instead of %3</source>
            <translation>con %1 cuesta menos: %2 en vez de %3</translation>
        </message>
        <message>
            <source>less in another pack: %1 of %2, %3, for %4 instead of %5, without shipping</source>
            <translation>menos en otro paquete: %1 de %2, %3, por %4 en vez de %5, sin envío</translation>
        </message>
        <message>
            <source>%1 × %2</source>
            <comment>so many of a packing material</comment>
            <translation>%1 × %2</translation>
        </message>
        <message>
            <source>Art</source>
            <translation>Arte</translation>
        </message>
        <message>
            <source>Cut</source>
            <translation>Corte</translation>
        </message>
        <message>
            <source>Weed</source>
            <translation>Depilado</translation>
        </message>
        <message>
            <source>Set up</source>
            <translation>Preparación</translation>
        </message>
        <message>
            <source>Brush</source>
            <translation>Cepillado</translation>
        </message>
        <message>
            <source>Lift</source>
            <translation>Levantado</translation>
        </message>
        <message>
            <source>Press</source>
            <comment>the step at the bench</comment>
            <translation>Prensado</translation>
        </message>
        <message>
            <source>Trim</source>
            <translation>Recorte</translation>
        </message>
        <message>
            <source>Pack</source>
            <translation>Empacado</translation>
        </message>
        <message>
            <source>This job</source>
            <translation>Este trabajo</translation>
        </message>
        <message>
            <source>Stones</source>
            <translation>Piedras</translation>
        </message>
        <message>
            <source>Tape</source>
            <translation>Cinta</translation>
        </message>
        <message>
            <source>Templates</source>
            <translation>Plantillas</translation>
        </message>
        <message>
            <source>Templates, paid off</source>
            <translation>Plantillas, amortizadas</translation>
        </message>
        <message>
            <source>Art and cutting, paid off</source>
            <translation>Arte y corte, amortizados</translation>
        </message>
        <message>
            <source>Blanks</source>
            <translation>Prendas base</translation>
        </message>
        <message>
            <source>Backing</source>
            <translation>Respaldo</translation>
        </message>
        <message>
            <source>Extra for size %1</source>
            <translation>Extra por talla %1</translation>
        </message>
        <message>
            <source>Packing</source>
            <translation>Empaque</translation>
        </message>
        <message>
            <source>For the order</source>
            <translation>Para el pedido</translation>
        </message>
        <message>
            <source>Freight in</source>
            <translation>Flete de compra</translation>
        </message>
        <message>
            <source>Bench labour</source>
            <translation>Mano de obra</translation>
        </message>
        <message>
            <source>Press</source>
            <comment>the machine</comment>
            <translation>Prensa</translation>
        </message>
        <message>
            <source>Press cycles</source>
            <translation>Ciclos de prensa</translation>
        </message>
        <message>
            <source>Second presses</source>
            <translation>Segundos prensados</translation>
        </message>
        <message>
            <source>Warm-up</source>
            <translation>Calentamiento</translation>
        </message>
        <message>
            <source>Test presses</source>
            <translation>Prensados de prueba</translation>
        </message>
        <message>
            <source>Machine wear</source>
            <translation>Desgaste de máquinas</translation>
        </message>
        <message>
            <source>Press wear</source>
            <translation>Desgaste de la prensa</translation>
        </message>
        <message>
            <source>Cutter wear</source>
            <translation>Desgaste de la cortadora</translation>
        </message>
        <message>
            <source>Overhead</source>
            <translation>Gastos generales</translation>
        </message>
        <message>
            <source>On the set-up</source>
            <translation>Sobre la preparación</translation>
        </message>
        <message>
            <source>On the pieces</source>
            <translation>Sobre las piezas</translation>
        </message>
        <message>
            <source>Spoilage</source>
            <translation>Merma</translation>
        </message>
        <message>
            <source>Stones lost</source>
            <translation>Piedras perdidas</translation>
        </message>
        <message>
            <source>Materials lost</source>
            <translation>Materiales perdidos</translation>
        </message>
        <message>
            <source>Labour lost</source>
            <translation>Mano de obra perdida</translation>
        </message>
        <message>
            <source>Work lost</source>
            <translation>Trabajo perdido</translation>
        </message>
        <message>
            <source>Replacing garments</source>
            <translation>Reponer prendas</translation>
        </message>
        <message>
            <source>Card fee</source>
            <translation>Comisión de tarjeta</translation>
        </message>
        <message>
            <source>%1 a piece × %2</source>
            <translation>%1 por pieza × %2</translation>
        </message>
        <message>
            <source>%1 × %2</source>
            <translation>%1 × %2</translation>
        </message>
        <message>
            <source>%1 ÷ (1 − %2 loss) × %3</source>
            <translation>%1 ÷ (1 − %2 de pérdida) × %3</translation>
        </message>
        <message>
            <source>%1: %2 off a roll of %3 × %4</source>
            <translation>%1: %2 de un rollo de %3 × %4</translation>
        </message>
        <message>
            <source>%1, %2 to a sheet: %3 × %4</source>
            <translation>%1, %2 por lámina: %3 × %4</translation>
        </message>
        <message>
            <source>%1 ÷ %2 to a sheet × %3</source>
            <translation>%1 ÷ %2 por lámina × %3</translation>
        </message>
        <message>
            <source>%1 ÷ %2 of a piece of tape</source>
            <translation>%1 ÷ %2 de un trozo de cinta</translation>
        </message>
        <message>
            <source>%1 = %2 of tape</source>
            <translation>%1 = %2 de cinta</translation>
        </message>
        <message>
            <source>the templates hang on the wall: nothing to cut</source>
            <translation>las plantillas cuelgan en la pared: nada que cortar</translation>
        </message>
        <message>
            <source>%1, one for each colour</source>
            <translation>%1, una por cada color</translation>
        </message>
        <message>
            <source>%1, × %2 of %3 planned pieces</source>
            <translation>%1, × %2 de %3 piezas previstas</translation>
        </message>
        <message>
            <source>%1 for the set: its %2 planned pieces are sold</source>
            <translation>%1 por el juego: sus %2 piezas previstas están vendidas</translation>
        </message>
        <message>
            <source>%1, what it cost when the set was cut, × %2 of %3 planned pieces</source>
            <translation>%1, lo que costó al cortar el juego, × %2 de %3 piezas previstas</translation>
        </message>
        <message>
            <source>%1, what it costs for the set today, × %2 of %3 planned pieces</source>
            <translation>%1, lo que cuesta hoy el juego, × %2 de %3 piezas previstas</translation>
        </message>
        <message>
            <source>%1, of which %2 are sold</source>
            <translation>%1, de las que %2 están vendidas</translation>
        </message>
        <message>
            <source>%1, × %2 of the %3 pieces of the design in this order</source>
            <translation>%1, × %2 de las %3 piezas del diseño en este pedido</translation>
        </message>
        <message>
            <source>%1 a job</source>
            <translation>%1 por trabajo</translation>
        </message>
        <message>
            <source>%1 a piece</source>
            <translation>%1 por pieza</translation>
        </message>
        <message>
            <source>%1 a colour × %2</source>
            <translation>%1 por color × %2</translation>
        </message>
        <message>
            <source>%1 for 100 stones</source>
            <translation>%1 por 100 piedras</translation>
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
            <translation>%1 por ciclo de prensa × %2</translation>
        </message>
        <message>
            <source>%1 + %2</source>
            <comment>times of a step</comment>
            <translation>%1 + %2</translation>
        </message>
        <message>
            <source>%1, learning %2</source>
            <translation>%1, aprendizaje %2</translation>
        </message>
        <message>
            <source>%1 = %2 × %3</source>
            <translation>%1 = %2 × %3</translation>
        </message>
        <message>
            <source>%1 × %2 presses each, larger than the platen</source>
            <translation>%1 × %2 prensados cada una, mayor que la placa</translation>
        </message>
        <message>
            <source>%1, %2 at once</source>
            <translation>%1, %2 a la vez</translation>
        </message>
        <message>
            <source>%1 = %2 × %3 × %4</source>
            <translation>%1 = %2 × %3 × %4</translation>
        </message>
        <message>
            <source>(%1 − %2 salvage) ÷ %3 presses × (%4 + %5 of %6 pressed twice) + %7 of the order’s tests</source>
            <translation>(%1 − %2 de valor final) ÷ %3 prensados × (%4 + %5 de %6 prensadas dos veces) + %7 de las pruebas del pedido</translation>
        </message>
        <message>
            <source>(%1 − %2 salvage) ÷ %3 presses × (%4 + %5 of %6 pressed twice + %7)</source>
            <translation>(%1 − %2 de valor final) ÷ %3 prensados × (%4 + %5 de %6 prensadas dos veces + %7)</translation>
        </message>
        <message>
            <source>(%1 − %2 salvage) ÷ %3 holes × %4 holes</source>
            <translation>(%1 − %2 de valor final) ÷ %3 agujeros × %4 agujeros</translation>
        </message>
        <message>
            <source>× (1 ÷ (1 − %1) − 1)</source>
            <translation>× (1 ÷ (1 − %1) − 1)</translation>
        </message>
        <message>
            <source>%1 × %2 for replacing one %3</source>
            <translation>%1 × %2 por reponer una %3</translation>
        </message>
        <message>
            <source>the stones of the pieces and their freight %1</source>
            <translation>las piedras de las piezas y su flete %1</translation>
        </message>
        <message>
            <source>stones, tape, base, their freight and pressing of the pieces %1</source>
            <translation>piedras, cinta, base, su flete y el prensado de las piezas %1</translation>
        </message>
        <message>
            <source>the stones of the pieces %1</source>
            <translation>las piedras de las piezas %1</translation>
        </message>
        <message>
            <source>stones, tape, base and pressing of the pieces %1</source>
            <translation>piedras, cinta, base y prensado de las piezas %1</translation>
        </message>
        <message>
            <source>the labour of the pieces until they are packed %1</source>
            <translation>la mano de obra de las piezas hasta empacarlas %1</translation>
        </message>
        <message>
            <source>labour, wear and overhead of the pieces until they are packed %1</source>
            <translation>mano de obra, desgaste y gastos generales de las piezas hasta empacarlas %1</translation>
        </message>
        <message>
            <source>%1 of %2</source>
            <translation>%1 de %2</translation>
        </message>
        <message>
            <source>%1 × %2 shipping ÷ %3, the goods of a usual order</source>
            <translation>%1 × %2 de envío ÷ %3, la mercancía de un pedido habitual</translation>
        </message>
        <message>
            <source>%1: the sum of the parts</source>
            <translation>%1: la suma de las partes</translation>
        </message>
        <message>
            <source>the sum of the parts</source>
            <translation>la suma de las partes</translation>
        </message>
        <message>
            <source>%1 of %2 × %3</source>
            <translation>%1 de %2 × %3</translation>
        </message>
        <message>
            <source>its share, by cost, of what goes with the order: %1</source>
            <translation>su parte, según costo, de lo que va con el pedido: %1</translation>
        </message>
        <message>
            <source>, </source>
            <translation>, </translation>
        </message>
        <message>
            <source>its share, by cost, of the freight on what goes with the order</source>
            <translation>su parte, según costo, del flete de lo que va con el pedido</translation>
        </message>
        <message>
            <source>%1 at the bench × %2</source>
            <translation>%1 en el taller × %2</translation>
        </message>
        <message>
            <source>%1 of %2 × %3 × %4</source>
            <translation>%1 de %2 × %3 × %4</translation>
        </message>
        <message>
            <source>its share of warming up once for the order, by what the lines cost</source>
            <translation>su parte de calentar una vez para el pedido, según lo que cuestan las líneas</translation>
        </message>
        <message>
            <source>its share of testing once for the order, by what the lines cost</source>
            <translation>su parte de probar una vez para el pedido, según lo que cuestan las líneas</translation>
        </message>
        <message>
            <source>%1 × %2 × %3</source>
            <translation>%1 × %2 × %3</translation>
        </message>
        <message>
            <source>(all the above + share of %1 fixed) ÷ (1 − %2), less all the above</source>
            <translation>(todo lo anterior + parte de %1 fijo) ÷ (1 − %2), menos todo lo anterior</translation>
        </message>
        <message>
            <source>%1 of the pieces made cannot be sold</source>
            <translation>%1 de las piezas hechas no se puede vender</translation>
        </message>
    </context>
    <context>
        <name>Costing</name>
        <message>
            <source>%1 comes to more money than this program reckons with; check its pieces, stones and prices.</source>
            <translation>%1 suma más dinero del que calcula este programa; revise sus piezas, piedras y precios.</translation>
        </message>
        <message>
            <source>The month has no productive hours to carry the overhead; give them in Shop.</source>
            <translation>El mes no tiene horas productivas que carguen los gastos generales; póngalas en Negocio.</translation>
        </message>
        <message>
            <source>Spoilage must be from 0 to below 100 %; correct it in Shop.</source>
            <translation>La merma debe ser de 0 a menos de 100 %; corríjala en Negocio.</translation>
        </message>
        <message>
            <source>The card fee must be from 0 to below 100 %; correct it in Shop.</source>
            <translation>La comisión de tarjeta debe ser de 0 a menos de 100 %; corríjala en Negocio.</translation>
        </message>
        <message>
            <source>A machine must be reckoned to last at least one use; correct its life in Shop.</source>
            <translation>De una máquina se debe calcular que dura al menos un uso; corrija su vida útil en Negocio.</translation>
        </message>
    </context>
    <context>
        <name>Counts</name>
        <message numerus="yes">
            <source>%1 pieces</source>
            <translation>
                <numerusform>%1 pieza</numerusform>
                <numerusform>%1 piezas</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%1 stones</source>
            <translation>
                <numerusform>%1 piedra</numerusform>
                <numerusform>%1 piedras</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%1 sheets</source>
            <translation>
                <numerusform>%1 lámina</numerusform>
                <numerusform>%1 láminas</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%1 lifts</source>
            <translation>
                <numerusform>%1 levantada</numerusform>
                <numerusform>%1 levantadas</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%1 templates</source>
            <translation>
                <numerusform>%1 plantilla</numerusform>
                <numerusform>%1 plantillas</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%1 cycles</source>
            <translation>
                <numerusform>%1 ciclo</numerusform>
                <numerusform>%1 ciclos</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%1 tests</source>
            <translation>
                <numerusform>%1 prueba</numerusform>
                <numerusform>%1 pruebas</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%1 kits</source>
            <translation>
                <numerusform>%1 surtido</numerusform>
                <numerusform>%1 surtidos</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%1 packs</source>
            <translation>
                <numerusform>%1 paquete</numerusform>
                <numerusform>%1 paquetes</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>Day</name>
        <message>
            <source>“%1” is not a day; write it like %2, fri or +10.</source>
            <translation>«%1» no es una fecha; escríbala como %2, fri o +10.</translation>
        </message>
        <message>
            <source>%1 is a %2; correct the day or the weekday.</source>
            <translation>%1 cae en %2; corrija la fecha o el día de la semana.</translation>
        </message>
        <message>
            <source>week</source>
            <translation>semana</translation>
        </message>
        <message>
            <source>weeks</source>
            <translation>semanas</translation>
        </message>
        <message>
            <source>day</source>
            <translation>día</translation>
        </message>
        <message>
            <source>days</source>
            <translation>días</translation>
        </message>
        <message>
            <source>today</source>
            <translation>hoy</translation>
        </message>
        <message>
            <source>tomorrow</source>
            <translation>mañana</translation>
        </message>
    </context>
    <context>
        <name>Days</name>
        <message>
            <source>Jan</source>
            <translation>ene</translation>
        </message>
        <message>
            <source>Feb</source>
            <translation>feb</translation>
        </message>
        <message>
            <source>Mar</source>
            <translation>mar</translation>
        </message>
        <message>
            <source>Apr</source>
            <translation>abr</translation>
        </message>
        <message>
            <source>May</source>
            <translation>may</translation>
        </message>
        <message>
            <source>Jun</source>
            <translation>jun</translation>
        </message>
        <message>
            <source>Jul</source>
            <translation>jul</translation>
        </message>
        <message>
            <source>Aug</source>
            <translation>ago</translation>
        </message>
        <message>
            <source>Sep</source>
            <translation>sep</translation>
        </message>
        <message>
            <source>Oct</source>
            <translation>oct</translation>
        </message>
        <message>
            <source>Nov</source>
            <translation>nov</translation>
        </message>
        <message>
            <source>Dec</source>
            <translation>dic</translation>
        </message>
        <message>
            <source>%1 %2 %3</source>
            <extracomment>A day: %1 is its number, %2 the month, %3 the year.</extracomment>
            <translation>%1 %2 %3</translation>
        </message>
        <message>
            <source>Sun</source>
            <translation>dom</translation>
        </message>
        <message>
            <source>Mon</source>
            <translation>lun</translation>
        </message>
        <message>
            <source>Tue</source>
            <translation>mar</translation>
        </message>
        <message>
            <source>Wed</source>
            <translation>mié</translation>
        </message>
        <message>
            <source>Thu</source>
            <translation>jue</translation>
        </message>
        <message>
            <source>Fri</source>
            <translation>vie</translation>
        </message>
        <message>
            <source>Sat</source>
            <translation>sáb</translation>
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
            <translation>Una cifra es mayor de lo que maneja el programa; revise los importes.</translation>
        </message>
        <message>
            <source>The job book could not finish this; try again.</source>
            <translation>El libro de trabajos no pudo terminar esto; inténtelo de nuevo.</translation>
        </message>
        <message>
            <source>The job book could not finish this (%1); try again.</source>
            <translation>El libro de trabajos no pudo terminar esto (%1); inténtelo de nuevo.</translation>
        </message>
        <message>
            <source>The computer gave no random numbers; restart it.</source>
            <translation>El equipo no dio números aleatorios; reinícielo.</translation>
        </message>
        <message>
            <source>The disk that holds “%1” is full; make room and try again.</source>
            <translation>El disco que contiene «%1» está lleno; haga espacio e inténtelo de nuevo.</translation>
        </message>
        <message>
            <source>“%1” could not be written, because the disk is full or failing; make room or save a copy on another disk.</source>
            <translation>No se pudo escribir «%1» porque el disco está lleno o falla; haga espacio o guarde una copia en otro disco.</translation>
        </message>
        <message>
            <source>“%1” was not closed properly and has to be opened once where it can be written; move it to a folder of your own.</source>
            <translation>«%1» no se cerró bien y hay que abrirlo una vez donde se pueda escribir; páselo a una carpeta suya.</translation>
        </message>
        <message>
            <source>“%1” cannot be written; move it to a folder of your own or allow writing.</source>
            <translation>No se puede escribir en «%1»; páselo a una carpeta suya o permita la escritura.</translation>
        </message>
        <message>
            <source>“%1” or its folder cannot be written; check who may use them and try again.</source>
            <translation>No se puede escribir en «%1» o en su carpeta; revise quién puede usarlos e inténtelo de nuevo.</translation>
        </message>
        <message>
            <source>“%1” cannot be used in this folder; choose a folder of your own.</source>
            <translation>«%1» no se puede usar en esta carpeta; elija una carpeta suya.</translation>
        </message>
        <message>
            <source>“%1” may not be read; ask its owner for leave.</source>
            <translation>No está permitido leer «%1»; pida permiso a su dueño.</translation>
        </message>
        <message>
            <source>“%1” could not be used (%2); check the disk and try again.</source>
            <translation>No se pudo usar «%1» (%2); revise el disco e inténtelo de nuevo.</translation>
        </message>
        <message>
            <source>The computer could not read or write “%1” (%2, code %3); check the disk and try again.</source>
            <translation>El equipo no pudo leer o escribir «%1» (%2, código %3); revise el disco e inténtelo de nuevo.</translation>
        </message>
        <message>
            <source>“%1” could not be read, because the disk did not give it, which says nothing of the book; see that the disk is plugged in and sound, and try again.</source>
            <translation>No se pudo leer «%1» porque el disco no lo entregó, lo que no dice nada del libro; vea que el disco esté conectado y en buen estado, e inténtelo de nuevo.</translation>
        </message>
        <message>
            <source>The disk did not confirm that “%1” took this; it may be done, so look before you do it again, and save a copy on another disk.</source>
            <translation>El disco no confirmó que «%1» recibiera esto; puede estar hecho, así que mire antes de repetirlo y guarde una copia en otro disco.</translation>
        </message>
        <message>
            <source>This was stopped; nothing was changed.</source>
            <translation>Esto se detuvo; no se cambió nada.</translation>
        </message>
        <message>
            <source>There is no job book “%1”; choose another file or make a new book.</source>
            <translation>No hay ningún libro de trabajos «%1»; elija otro archivo o cree un libro nuevo.</translation>
        </message>
        <message>
            <source>“%1” is not a job book but a folder or device; choose a file.</source>
            <translation>«%1» no es un libro de trabajos, sino una carpeta o un dispositivo; elija un archivo.</translation>
        </message>
        <message>
            <source>There is no folder “%1”; make it first or choose another.</source>
            <translation>No hay ninguna carpeta «%1»; créela antes o elija otra.</translation>
        </message>
        <message>
            <source>“%1” is there already and is no empty folder; name a new one.</source>
            <translation>«%1» ya existe y no es una carpeta vacía; indique una nueva.</translation>
        </message>
        <message>
            <source>There is a file “%1” already; choose another name.</source>
            <translation>Ya existe un archivo «%1»; elija otro nombre.</translation>
        </message>
        <message>
            <source>“%1” is no file but a folder, a link or a device; choose another name.</source>
            <translation>«%1» no es un archivo, sino una carpeta, un enlace o un dispositivo; elija otro nombre.</translation>
        </message>
        <message>
            <source>“%1” is a job book or belongs to one and stays as it is; choose another name.</source>
            <translation>«%1» es un libro de trabajos o pertenece a uno y se queda como está; elija otro nombre.</translation>
        </message>
        <message>
            <source>“%1” has a second name somewhere, by which another program could change it unseen; make a copy and open that.</source>
            <translation>«%1» tiene en algún lugar un segundo nombre, por el que otro programa podría cambiarlo sin que se vea; haga una copia y abra esa.</translation>
        </message>
        <message>
            <source>Another program is using “%1”; close it there and try again.</source>
            <translation>Otro programa está usando «%1»; ciérrelo allí e inténtelo de nuevo.</translation>
        </message>
        <message>
            <source>“%1” is damaged; open a backup.</source>
            <translation>«%1» está dañado; abra una copia de seguridad.</translation>
        </message>
        <message>
            <source>An index of “%1” is damaged, by which things are found, not what was written; save a copy and open a backup.</source>
            <translation>Está dañado un índice de «%1», que sirve para hallar las cosas, no lo escrito; guarde una copia y abra una copia de seguridad.</translation>
        </message>
        <message>
            <source>The backup “%1” is damaged; choose another one.</source>
            <translation>La copia de seguridad «%1» está dañada; elija otra.</translation>
        </message>
        <message>
            <source>“%1” is damaged or not a job book; open a backup.</source>
            <translation>«%1» está dañado o no es un libro de trabajos; abra una copia de seguridad.</translation>
        </message>
        <message>
            <source>Reading “%1” took too long, it may be damaged; open a backup.</source>
            <translation>La lectura de «%1» tardó demasiado, puede estar dañado; abra una copia de seguridad.</translation>
        </message>
        <message>
            <source>This is larger than “%1” can hold; make it smaller.</source>
            <translation>Esto es más grande de lo que cabe en «%1»; hágalo más pequeño.</translation>
        </message>
        <message>
            <source>“%1” already holds a thing of this name; choose another name.</source>
            <translation>«%1» ya contiene algo con este nombre; elija otro nombre.</translation>
        </message>
        <message>
            <source>“%1” does not take this value; check what was typed.</source>
            <translation>«%1» no admite este valor; revise lo que escribió.</translation>
        </message>
        <message>
            <source>There is not enough memory to work with “%1”; close other programs.</source>
            <translation>No hay memoria suficiente para trabajar con «%1»; cierre otros programas.</translation>
        </message>
        <message>
            <source>SQLite %1 is too old for job books; install 3.37 or later.</source>
            <translation>SQLite %1 es demasiado antiguo para libros de trabajos; instale 3.37 o posterior.</translation>
        </message>
        <message>
            <source>This SQLite does not take the safety setting %1; install the distribution's own.</source>
            <translation>Este SQLite no admite el ajuste de seguridad %1; instale el de la distribución.</translation>
        </message>
        <message>
            <source>This SQLite does not take the limit %1; install the distribution's own.</source>
            <translation>Este SQLite no admite el límite %1; instale el de la distribución.</translation>
        </message>
        <message>
            <source>“%1” cannot be kept safe here (%2 is %3 instead of %4); keep it on a disk of this computer.</source>
            <translation>«%1» no se puede guardar aquí con seguridad (%2 es %3 en vez de %4); guárdelo en un disco de este equipo.</translation>
        </message>
        <message>
            <source>“%1” is damaged: the column “%2” holds what cannot stand there; open a backup.</source>
            <translation>«%1» está dañado: la columna «%2» contiene lo que no puede estar ahí; abra una copia de seguridad.</translation>
        </message>
        <message>
            <source>“%1” is open in this window already.</source>
            <translation>«%1» ya está abierto en esta ventana.</translation>
        </message>
        <message>
            <source>“%1” is empty; choose a job book or a backup of it.</source>
            <translation>«%1» está vacío; elija un libro de trabajos o una copia de seguridad suya.</translation>
        </message>
        <message>
            <source>“%1” is not a job book; choose another file.</source>
            <translation>«%1» no es un libro de trabajos; elija otro archivo.</translation>
        </message>
        <message>
            <source>“%1” is a database of another program, not a job book; choose another file.</source>
            <translation>«%1» es una base de datos de otro programa, no un libro de trabajos; elija otro archivo.</translation>
        </message>
        <message>
            <source>“%1” was altered by another program; open a backup.</source>
            <translation>Otro programa alteró «%1»; abra una copia de seguridad.</translation>
        </message>
        <message>
            <source>“%1” was switched to another way of writing by another program and cannot be opened for reading only; open it where it can be written.</source>
            <translation>Otro programa pasó «%1» a otro modo de escritura y no se puede abrir solo para lectura; ábralo donde se pueda escribir.</translation>
        </message>
        <message>
            <source>“%1” was written by a later Stonepenny (book version %2, this one knows %3); update Stonepenny to open it.</source>
            <translation>«%1» lo escribió un Stonepenny posterior (versión del libro %2, este conoce %3); actualice Stonepenny para abrirlo.</translation>
        </message>
        <message>
            <source>“%1” is in a form that is newer than this Stonepenny knows; update Stonepenny to open it.</source>
            <translation>«%1» está en un formato más nuevo de lo que conoce este Stonepenny; actualice Stonepenny para abrirlo.</translation>
        </message>
        <message>
            <source>“%1” is damaged, most of it is missing; open a backup.</source>
            <translation>«%1» está dañado, falta la mayor parte; abra una copia de seguridad.</translation>
        </message>
        <message>
            <source>“%1” is damaged at its beginning; open a backup.</source>
            <translation>«%1» está dañado al principio; abra una copia de seguridad.</translation>
        </message>
        <message>
            <source>“%1” is damaged, the end of it is missing; open a backup.</source>
            <translation>«%1» está dañado, falta el final; abra una copia de seguridad.</translation>
        </message>
        <message>
            <source>“%1” is damaged; open a backup. %2</source>
            <translation>«%1» está dañado; abra una copia de seguridad. %2</translation>
        </message>
        <message>
            <source>“%1” could not be copied whole; try another disk. %2</source>
            <translation>No se pudo copiar «%1» entero; pruebe con otro disco. %2</translation>
        </message>
        <message>
            <source>“%1” could not be brought up to date, because a row of its table “%2” refers to a row that is missing; open a backup.</source>
            <translation>«%1» no se pudo actualizar porque una fila de su tabla «%2» remite a una fila que falta; abra una copia de seguridad.</translation>
        </message>
        <message>
            <source>“%1” is open for reading only, because it lies in a network folder (%2) where two computers could spoil it; move it to this computer to change it.</source>
            <translation>«%1» está abierto solo para lectura porque está en una carpeta de red (%2) donde dos equipos podrían estropearlo; páselo a este equipo para cambiarlo.</translation>
        </message>
        <message>
            <source>“%1” is open for reading only, because it lies in a folder (%2) that is kept alike on several computers, where two of them could spoil it; copy it to a folder of this computer to change it.</source>
            <translation>«%1» está abierto solo para lectura porque está en una carpeta (%2) que se mantiene igual en varios equipos, donde dos de ellos podrían estropearlo; cópielo a una carpeta de este equipo para cambiarlo.</translation>
        </message>
        <message>
            <source>“%1” is open for reading only, because it or its folder cannot be written; move it to a folder of your own to change it.</source>
            <translation>«%1» está abierto solo para lectura porque no se puede escribir en él o en su carpeta; páselo a una carpeta suya para cambiarlo.</translation>
        </message>
        <message>
            <source>“%1” is open for reading only, because nothing can be written in its folder; move it to a folder of your own to change it.</source>
            <translation>«%1» está abierto solo para lectura porque no se puede escribir nada en su carpeta; páselo a una carpeta suya para cambiarlo.</translation>
        </message>
        <message>
            <source>“%1” is open for reading only, because %2 on %3 (process %4) has it open; close it there to change it here.</source>
            <translation>«%1» está abierto solo para lectura porque %2 en %3 (proceso %4) lo tiene abierto; ciérrelo allí para cambiarlo aquí.</translation>
        </message>
        <message>
            <source>“%1” is open for reading only, because another program has it open; close it there to change it here.</source>
            <translation>«%1» está abierto solo para lectura porque otro programa lo tiene abierto; ciérrelo allí para cambiarlo aquí.</translation>
        </message>
        <message>
            <source>“%1” is no longer where it was opened (moved, renamed or deleted, or its disk taken out), and nothing more is written to it; put it back and open it again, or save a copy of what is open.</source>
            <translation>«%1» ya no está donde se abrió (se movió, se renombró o se borró, o se quitó su disco) y no se escribe nada más en él; vuelva a ponerlo y ábralo de nuevo, o guarde una copia de lo que está abierto.</translation>
        </message>
        <message>
            <source>Another file has taken the place of “%1” since it was opened, and nothing more is written; save a copy of what is open here, then open the file that is there now.</source>
            <translation>Otro archivo ocupa el lugar de «%1» desde que se abrió y no se escribe nada más; guarde una copia de lo que está abierto aquí y abra después el archivo que hay ahora.</translation>
        </message>
        <message>
            <source>“%1” was written by another program while it was open here, and nothing more is written to it; save a copy, open it again to see what it holds now, and look for what is missing in the backups.</source>
            <translation>Otro programa escribió en «%1» mientras estaba abierto aquí y no se escribe nada más en él; guarde una copia, ábralo de nuevo para ver qué contiene ahora y busque lo que falte en las copias de seguridad.</translation>
        </message>
        <message>
            <source>“%1” is open for reading only, because it comes from an earlier Stonepenny and a seal of what was given in it does not match; open a backup.</source>
            <translation>«%1» está abierto solo para lectura porque viene de un Stonepenny anterior y un sello de lo dado en él no coincide; abra una copia de seguridad.</translation>
        </message>
        <message>
            <source>“%1” is open for reading only, because it comes from an earlier Stonepenny and there is no room to back it up and bring it up to date; make room on the disk and open it again.</source>
            <translation>«%1» está abierto solo para lectura porque viene de un Stonepenny anterior y no hay espacio para hacer la copia de seguridad y actualizarlo; haga espacio en el disco y ábralo de nuevo.</translation>
        </message>
        <message>
            <source>“%1” is open for reading only, because it comes from an earlier Stonepenny and no backup could be written beside it before it is brought up to date; move it to a folder of your own and open it again.</source>
            <translation>«%1» está abierto solo para lectura porque viene de un Stonepenny anterior y no se pudo escribir a su lado una copia de seguridad antes de actualizarlo; páselo a una carpeta suya y ábralo de nuevo.</translation>
        </message>
        <message>
            <source>A saved record is damaged and cannot be read; open a backup.</source>
            <translation>Un registro guardado está dañado y no se puede leer; abra una copia de seguridad.</translation>
        </message>
        <message>
            <source>A saved record is damaged: “%1” is missing or holds what cannot stand there; open a backup.</source>
            <translation>Un registro guardado está dañado: «%1» falta o contiene lo que no puede estar ahí; abra una copia de seguridad.</translation>
        </message>
        <message>
            <source>A saved record is damaged: it holds a field of another program; open a backup.</source>
            <translation>Un registro guardado está dañado: contiene un campo de otro programa; abra una copia de seguridad.</translation>
        </message>
        <message>
            <source>A saved record is not of the sort it should be; open a backup.</source>
            <translation>Un registro guardado no es de la clase que debería; abra una copia de seguridad.</translation>
        </message>
        <message>
            <source>A saved record (“%1”, version %2) was written by a later version; update Stonepenny.</source>
            <translation>Un registro guardado («%1», versión %2) lo escribió una versión posterior; actualice Stonepenny.</translation>
        </message>
        <message>
            <source>A saved record was written by a later version; update Stonepenny.</source>
            <translation>Un registro guardado lo escribió una versión posterior; actualice Stonepenny.</translation>
        </message>
        <message>
            <source>A record in “%1” is damaged; open a backup.</source>
            <translation>Un registro de «%1» está dañado; abra una copia de seguridad.</translation>
        </message>
        <message>
            <source>“%1” is damaged: %2 Open a backup.</source>
            <translation>«%1» está dañado: %2 Abra una copia de seguridad.</translation>
        </message>
        <message>
            <source>A certificate is there by half.</source>
            <translation>Un certificado está a medias.</translation>
        </message>
        <message>
            <source>The drawing of a design in “%1” is damaged; open a backup.</source>
            <translation>El dibujo de un diseño de «%1» está dañado; abra una copia de seguridad.</translation>
        </message>
        <message>
            <source>The order does not say what the lists say; open a backup.</source>
            <translation>El pedido no dice lo que dicen las listas; abra una copia de seguridad.</translation>
        </message>
        <message>
            <source>The shop does not say what is kept beside it; open a backup.</source>
            <translation>El negocio no dice lo que se guarda junto a él; abra una copia de seguridad.</translation>
        </message>
        <message>
            <source>The quote %1 in “%2” is damaged: its seal does not match; open a backup.</source>
            <translation>El presupuesto %1 de «%2» está dañado: su sello no coincide; abra una copia de seguridad.</translation>
        </message>
        <message>
            <source>The quote %1 in “%2” is damaged: it is not as it was sealed; open a backup.</source>
            <translation>El presupuesto %1 de «%2» está dañado: no es como se selló; abra una copia de seguridad.</translation>
        </message>
        <message>
            <source>A movement of the shelf is missing; open a backup.</source>
            <translation>Falta un movimiento del estante; abra una copia de seguridad.</translation>
        </message>
        <message>
            <source>%1 is not named as it should be; open a backup.</source>
            <translation>%1 no se llama como debería; abra una copia de seguridad.</translation>
        </message>
        <message>
            <source>%1 cannot be read; count the drawing again.</source>
            <translation>%1 no se puede leer; cuente el dibujo de nuevo.</translation>
        </message>
        <message>
            <source>%1 is nothing; type how many came in or went out.</source>
            <translation>%1 es cero; escriba cuántos entraron o salieron.</translation>
        </message>
        <message>
            <source>%1 belongs to what comes in; leave it out for what goes out.</source>
            <translation>%1 corresponde a lo que entra; omítalo en lo que sale.</translation>
        </message>
        <message>
            <source>%1 does not fit: what is bought comes in, and what is used, lost or spoiled goes out; check the sign of the amount.</source>
            <translation>%1 no concuerda: lo comprado entra, y lo usado, perdido o estropeado sale; revise el signo de la cantidad.</translation>
        </message>
        <message>
            <source>The %1 “%2” is no longer in the book; add it anew.</source>
            <translation>El %1 «%2» ya no está en el libro; añádalo de nuevo.</translation>
        </message>
        <message>
            <source>This %1 is no longer in the book; there is nothing to remove.</source>
            <translation>Este %1 ya no está en el libro; no hay nada que quitar.</translation>
        </message>
        <message>
            <source>There is another %1 called “%2”; choose another name.</source>
            <translation>Hay otro %1 llamado «%2»; elija otro nombre.</translation>
        </message>
        <message>
            <source>The %1 refers to something that is not in the book; choose it anew.</source>
            <translation>El %1 remite a algo que no está en el libro; elíjalo de nuevo.</translation>
        </message>
        <message>
            <source>“%1” refers to something that is not in the book; choose it anew.</source>
            <translation>«%1» remite a algo que no está en el libro; elíjalo de nuevo.</translation>
        </message>
        <message>
            <source>There is another customer of this name; rename one.</source>
            <translation>Hay otro cliente con este nombre; cambie el nombre de uno.</translation>
        </message>
        <message>
            <source>This material is used by the design “%1”; take it out there first.</source>
            <translation>El diseño «%1» usa este material; quítelo antes allí.</translation>
        </message>
        <message>
            <source>This material is used by the kit “%1”; take it out there first.</source>
            <translation>El surtido «%1» usa este material; quítelo antes allí.</translation>
        </message>
        <message>
            <source>This material is used by the packing list of the shop; take it out there first.</source>
            <translation>La lista de empaque del negocio usa este material; quítelo antes allí.</translation>
        </message>
        <message>
            <source>This material is used by the shop’s usual tape or template sheet; take it out there first.</source>
            <translation>Este material es la cinta o la lámina de plantilla habitual del negocio; quítelo antes allí.</translation>
        </message>
        <message>
            <source>This supplier sells the kit “%1”; remove that kit or give it another supplier first.</source>
            <translation>Este proveedor vende el surtido «%1»; quite ese surtido o déselo antes a otro proveedor.</translation>
        </message>
        <message>
            <source>The kit “%1” is made for this design; remove that kit or make it for another first.</source>
            <translation>El surtido «%1» es para este diseño; quite ese surtido o hágalo antes para otro.</translation>
        </message>
        <message>
            <source>%1 planned pieces are fewer than the %2 that are sold already; plan as many at least, or none.</source>
            <translation>%1 piezas previstas son menos que las %2 ya vendidas; prevea al menos tantas, o ninguna.</translation>
        </message>
        <message>
            <source>This material is no longer in the book; add it anew.</source>
            <translation>Este material ya no está en el libro; añádalo de nuevo.</translation>
        </message>
        <message>
            <source>This supplier is no longer in the book; add it anew.</source>
            <translation>Este proveedor ya no está en el libro; añádalo de nuevo.</translation>
        </message>
        <message>
            <source>“%1” is one entry already; choose another one.</source>
            <translation>«%1» ya es un solo registro; elija otro.</translation>
        </message>
        <message>
            <source>“%1” has a job that is still open: %2; finish it or let it go, then erase the customer.</source>
            <translation>«%1» tiene un trabajo aún abierto: %2; termínelo o descártelo, y después borre al cliente.</translation>
        </message>
        <message>
            <source>“%1” and the shop are not quits: %2 is not paid to the cent; take the payment, give back what is too much or credit it, then erase the customer.</source>
            <translation>«%1» y el negocio no están en paz: %2 no está pagado con exactitud; tome el pago, devuelva lo que sobra o acredítelo, y después borre al cliente.</translation>
        </message>
        <message>
            <source>The customer is erased, but the free space of “%1” was not cleaned: %2 Make room on the disk; when the next customer is erased, it is cleaned as well.</source>
            <translation>El cliente está borrado, pero no se limpió el espacio libre de «%1»: %2 Haga espacio en el disco; al borrar al próximo cliente también se limpia.</translation>
        </message>
        <message>
            <source>This customer is no longer in the book; choose another.</source>
            <translation>Este cliente ya no está en el libro; elija otro.</translation>
        </message>
        <message>
            <source>This stone is no longer in the book; choose another.</source>
            <translation>Esta piedra ya no está en el libro; elija otra.</translation>
        </message>
        <message>
            <source>The design of the drawing “%1” is no longer in the book; add it anew.</source>
            <translation>El diseño del dibujo «%1» ya no está en el libro; añádalo de nuevo.</translation>
        </message>
        <message>
            <source>This design has no drawing in the book.</source>
            <translation>Este diseño no tiene dibujo en el libro.</translation>
        </message>
        <message>
            <source>The drawing “%1” is empty; choose another file.</source>
            <translation>El dibujo «%1» está vacío; elija otro archivo.</translation>
        </message>
        <message>
            <source>The drawing “%1” is larger than %2 MB; make it smaller.</source>
            <translation>El dibujo «%1» pasa de %2 MB; hágalo más pequeño.</translation>
        </message>
        <message>
            <source>The small picture of “%1” is larger than %2 MB; make a smaller one.</source>
            <translation>La imagen pequeña de «%1» pasa de %2 MB; haga una más pequeña.</translation>
        </message>
        <message>
            <source>Only %1 of “%2” are on the shelf; count it and book what is there first.</source>
            <translation>Solo hay %1 de «%2» en el estante; cuéntelo y anote antes lo que hay.</translation>
        </message>
        <message>
            <source>There would be more than %1 of “%2” on the shelf; check the amount.</source>
            <translation>Habría más de %1 de «%2» en el estante; revise la cantidad.</translation>
        </message>
        <message>
            <source>So many of “%1” cannot be counted; type a number from 0 to %2.</source>
            <translation>No se pueden contar tantos de «%1»; escriba un número de 0 a %2.</translation>
        </message>
        <message>
            <source>These things are no longer on the shelf; count it and book what is there.</source>
            <translation>Estas cosas ya no están en el estante; cuéntelo y anote lo que hay.</translation>
        </message>
        <message>
            <source>This quote is not in the book; look for it under another number.</source>
            <translation>Este presupuesto no está en el libro; búsquelo con otro número.</translation>
        </message>
        <message>
            <source>There is no quote %1 in this book; look for it under another number.</source>
            <translation>No hay ningún presupuesto %1 en este libro; búsquelo con otro número.</translation>
        </message>
        <message>
            <source>Quote %1 has been given and stays as it is; start a new quote instead.</source>
            <translation>El presupuesto %1 está dado y se queda como está; empiece uno nuevo.</translation>
        </message>
        <message>
            <source>This quote was changed meanwhile in another place; look at it again before you change it.</source>
            <translation>Este presupuesto se cambió mientras tanto en otro lugar; véalo de nuevo antes de cambiarlo.</translation>
        </message>
        <message>
            <source>Quote %1 was replaced by %2; say that number instead.</source>
            <translation>Al presupuesto %1 lo reemplazó %2; diga ese número.</translation>
        </message>
        <message>
            <source>Quote %1 was revised meanwhile in another place and is %2 now; what is typed here is kept as a draft, and %2 can be revised.</source>
            <translation>El presupuesto %1 se modificó mientras tanto en otro lugar y ahora es %2; lo escrito aquí se guarda como borrador, y %2 se puede modificar.</translation>
        </message>
        <message>
            <source>Quote %1 was let go and is not revised; order it again instead.</source>
            <translation>El presupuesto %1 se descartó y no se modifica; pídalo otra vez.</translation>
        </message>
        <message>
            <source>Quote %1 was collected and is not revised; put it back to Ready first, or credit its invoice.</source>
            <translation>El presupuesto %1 se recogió y no se modifica; devuélvalo antes a Listo o acredite su factura.</translation>
        </message>
        <message>
            <source>The quote refers to a customer, design or material that is not in the book; choose it anew.</source>
            <translation>El presupuesto remite a un cliente, diseño o material que no está en el libro; elíjalo de nuevo.</translation>
        </message>
        <message>
            <source>A stone of the order is not in the book; choose it anew.</source>
            <translation>Una piedra del pedido no está en el libro; elíjala de nuevo.</translation>
        </message>
        <message>
            <source>There is nothing on this quote; add a line before giving it.</source>
            <translation>No hay nada en este presupuesto; añada una línea antes de darlo.</translation>
        </message>
        <message>
            <source>The total is larger than a book can hold; check the quantities and prices.</source>
            <translation>El total es mayor de lo que cabe en un libro; revise las cantidades y los precios.</translation>
        </message>
        <message>
            <source>The last day of the quote lies before its first; choose a later one.</source>
            <translation>El último día del presupuesto está antes del primero; elija uno posterior.</translation>
        </message>
        <message>
            <source>The prices are those of another customer; choose the customer again.</source>
            <translation>Los precios son los de otro cliente; elija al cliente de nuevo.</translation>
        </message>
        <message>
            <source>The prices are mixed up; open the quote again.</source>
            <translation>Los precios están mezclados; abra el presupuesto de nuevo.</translation>
        </message>
        <message>
            <source>What quote %1 came to cannot be sealed again.</source>
            <translation>Lo que sumó el presupuesto %1 no se puede sellar de nuevo.</translation>
        </message>
        <message>
            <source>This quote has not been given yet; give it before you move it on.</source>
            <translation>Este presupuesto aún no se ha dado; delo antes de pasarlo adelante.</translation>
        </message>
        <message>
            <source>Quote %1 offers %2 choices; say first which one the customer takes.</source>
            <translation>El presupuesto %1 ofrece %2 opciones; diga antes cuál toma el cliente.</translation>
        </message>
        <message>
            <source>Quote %1 offers %2 choices, and this is none of them; choose one of those.</source>
            <translation>El presupuesto %1 ofrece %2 opciones y esta no es ninguna de ellas; elija una de esas.</translation>
        </message>
        <message>
            <source>%1 cannot go there from the stage it is in; choose one that may follow.</source>
            <translation>%1 no puede pasar ahí desde la etapa en que está; elija una que pueda seguir.</translation>
        </message>
        <message>
            <source>Quote %1 has been given and is no enquiry any more; start a new quote.</source>
            <translation>El presupuesto %1 está dado y ya no es una consulta; empiece uno nuevo.</translation>
        </message>
        <message>
            <source>The action was given up after an error; try it again.</source>
            <translation>La acción se abandonó tras un error; inténtela de nuevo.</translation>
        </message>
        <message>
            <source>The book cannot be copied in the middle of an action.</source>
            <translation>El libro no se puede copiar en medio de una acción.</translation>
        </message>
        <message>
            <source>A payment is missing from the book; open a backup.</source>
            <translation>Falta un pago en el libro; abra una copia de seguridad.</translation>
        </message>
        <message>
            <source>This payment for %1 was taken back already; enter a new one.</source>
            <translation>Este pago de %1 ya se anuló; anote uno nuevo.</translation>
        </message>
        <message>
            <source>%1 was given back in part already for %2; take that back first.</source>
            <translation>De %1 ya se devolvió una parte por %2; anule antes eso.</translation>
        </message>
        <message>
            <source>The paper %1 in “%2” is damaged: its seal does not match; open a backup.</source>
            <translation>El documento %1 de «%2» está dañado: su sello no coincide; abra una copia de seguridad.</translation>
        </message>
        <message>
            <source>Quote %1 is not agreed to yet; move it to Agreed before you invoice it.</source>
            <translation>El presupuesto %1 aún no está acordado; páselo a Acordado antes de facturarlo.</translation>
        </message>
        <message>
            <source>Quote %1 comes to nothing; there is nothing to invoice.</source>
            <translation>El presupuesto %1 suma cero; no hay nada que facturar.</translation>
        </message>
        <message>
            <source>All of %1 is invoiced by %2 already; print that again, or credit it first.</source>
            <translation>Todo lo de %1 ya está facturado con %2; imprima esa factura de nuevo o acredítela antes.</translation>
        </message>
        <message>
            <source>More of %1 is invoiced by %2 than it comes to; write a credit note first.</source>
            <translation>De %1 hay más facturado con %2 de lo que suma; haga antes una nota de crédito.</translation>
        </message>
        <message>
            <source>%1 is invoiced and stays agreed as it is; write a credit note first.</source>
            <translation>%1 está facturado y se queda como se acordó; haga antes una nota de crédito.</translation>
        </message>
        <message>
            <source>“%1” is not an invoice; only an invoice can be credited.</source>
            <translation>«%1» no es una factura; solo se puede acreditar una factura.</translation>
        </message>
        <message>
            <source>All of invoice %1 was taken back already; nothing is left to credit.</source>
            <translation>Toda la factura %1 ya se anuló; no queda nada por acreditar.</translation>
        </message>
        <message>
            <source>This payment for %1 has the receipt %2 already; print that again.</source>
            <translation>Este pago de %1 ya tiene el recibo %2; imprima ese de nuevo.</translation>
        </message>
        <message>
            <source>For money that was given or taken back there is no receipt; the next paper of %1 says it.</source>
            <translation>Del dinero devuelto o anulado no hay recibo; lo dice el próximo documento de %1.</translation>
        </message>
        <message>
            <source>There is no paper %1 in this book; look for it under another number.</source>
            <translation>No hay ningún documento %1 en este libro; búsquelo con otro número.</translation>
        </message>
        <message>
            <source>There is nothing to undo.</source>
            <translation>No hay nada que deshacer.</translation>
        </message>
        <message>
            <source>There is nothing to redo.</source>
            <translation>No hay nada que rehacer.</translation>
        </message>
        <message>
            <source>This was changed meanwhile in another way; it can no longer be undone.</source>
            <translation>Esto se cambió mientras tanto de otro modo; ya no se puede deshacer.</translation>
        </message>
        <message>
            <source>shop</source>
            <translation>negocio</translation>
        </message>
        <message>
            <source>bench</source>
            <translation>taller</translation>
        </message>
        <message>
            <source>material</source>
            <translation>material</translation>
        </message>
        <message>
            <source>supplier</source>
            <translation>proveedor</translation>
        </message>
        <message>
            <source>pack</source>
            <translation>paquete</translation>
        </message>
        <message>
            <source>kit</source>
            <translation>surtido</translation>
        </message>
        <message>
            <source>design</source>
            <translation>diseño</translation>
        </message>
        <message>
            <source>customer</source>
            <translation>cliente</translation>
        </message>
        <message>
            <source>adding %1</source>
            <translation>añadir %1</translation>
        </message>
        <message>
            <source>customers out of a file</source>
            <translation>clientes de un archivo</translation>
        </message>
        <message>
            <source>erasing a customer</source>
            <translation>borrar un cliente</translation>
        </message>
        <message>
            <source>merging %1 into %2</source>
            <translation>unir %1 con %2</translation>
        </message>
        <message>
            <source>removing %1</source>
            <translation>quitar %1</translation>
        </message>
        <message>
            <source>change of %1</source>
            <translation>cambio de %1</translation>
        </message>
        <message>
            <source>%1 of %2</source>
            <translation>%1 de %2</translation>
        </message>
        <message>
            <source>change of the shop</source>
            <translation>cambio del negocio</translation>
        </message>
        <message>
            <source>change of the bench</source>
            <translation>cambio del taller</translation>
        </message>
        <message>
            <source>change of the quote</source>
            <translation>cambio del presupuesto</translation>
        </message>
        <message>
            <source>%1 of the quote</source>
            <translation>%1 del presupuesto</translation>
        </message>
        <message>
            <source>lines of the quote</source>
            <translation>líneas del presupuesto</translation>
        </message>
        <message>
            <source>a line</source>
            <translation>una línea</translation>
        </message>
        <message>
            <source>the quote</source>
            <translation>el presupuesto</translation>
        </message>
        <message>
            <source>new quote</source>
            <translation>presupuesto nuevo</translation>
        </message>
        <message>
            <source>revising %1</source>
            <translation>modificar %1</translation>
        </message>
        <message>
            <source>giving %1</source>
            <translation>dar %1</translation>
        </message>
        <message>
            <source>payment for %1</source>
            <translation>pago de %1</translation>
        </message>
        <message>
            <source>%1 for %2</source>
            <translation>%1 para %2</translation>
        </message>
        <message>
            <source>choice taken of %1</source>
            <translation>opción tomada de %1</translation>
        </message>
        <message>
            <source>stage of %1</source>
            <translation>etapa de %1</translation>
        </message>
        <message>
            <source>movement of %1</source>
            <translation>movimiento de %1</translation>
        </message>
        <message>
            <source>drawing of %1</source>
            <translation>dibujo de %1</translation>
        </message>
        <message>
            <source>removing the drawing of %1</source>
            <translation>quitar el dibujo de %1</translation>
        </message>
        <message>
            <source>the stone for a colour in cut files</source>
            <translation>la piedra para un color en archivos de corte</translation>
        </message>
        <message>
            <source>columns of the price list of %1</source>
            <translation>columnas de la lista de precios de %1</translation>
        </message>
        <message>
            <source>In %1: %2</source>
            <translation>En %1: %2</translation>
        </message>
        <message>
            <source>the lists</source>
            <translation>las listas</translation>
        </message>
        <message>
            <source>the drawings</source>
            <translation>los dibujos</translation>
        </message>
        <message>
            <source>the shelf</source>
            <translation>el estante</translation>
        </message>
        <message>
            <source>the quotes</source>
            <translation>los presupuestos</translation>
        </message>
        <message>
            <source>a quote</source>
            <translation>un presupuesto</translation>
        </message>
        <message>
            <source>the seals</source>
            <translation>los sellos</translation>
        </message>
        <message>
            <source>a given quote</source>
            <translation>un presupuesto dado</translation>
        </message>
        <message>
            <source>an invoice, receipt or credit note</source>
            <translation>una factura, recibo o nota de crédito</translation>
        </message>
        <message>
            <source>the numbers</source>
            <translation>los números</translation>
        </message>
        <message>
            <source>the records</source>
            <translation>los registros</translation>
        </message>
        <message>
            <source>the change log</source>
            <translation>el registro de cambios</translation>
        </message>
        <message>
            <source>the columns of a price list</source>
            <translation>las columnas de una lista de precios</translation>
        </message>
        <message>
            <source>the shop</source>
            <translation>el negocio</translation>
        </message>
        <message>
            <source>the bench</source>
            <translation>el taller</translation>
        </message>
        <message>
            <source>the stone of a colour</source>
            <translation>la piedra de un color</translation>
        </message>
        <message>
            <source>a payment</source>
            <translation>un pago</translation>
        </message>
        <message>
            <source>a movement of the shelf</source>
            <translation>un movimiento del estante</translation>
        </message>
        <message>
            <source>a draft</source>
            <translation>un borrador</translation>
        </message>
        <message>
            <source>The structure of the file is damaged (%1).</source>
            <translation>La estructura del archivo está dañada (%1).</translation>
        </message>
        <message>
            <source>Behind the end of the book lie %1 bytes more, which do not belong to it; save a copy.</source>
            <translation>Tras el final del libro hay %1 bytes más que no le pertenecen; guarde una copia.</translation>
        </message>
        <message>
            <source>An index, by which things are found, is damaged; what was written is not: %1</source>
            <translation>Está dañado un índice, que sirve para hallar las cosas; lo escrito no lo está: %1</translation>
        </message>
        <message>
            <source>A row of the table “%1” refers to a row that is missing.</source>
            <translation>Una fila de la tabla «%1» remite a una fila que falta.</translation>
        </message>
        <message>
            <source>“%1” is not as it was last saved; compare it with a backup.</source>
            <translation>«%1» no es como se guardó la última vez; compárelo con una copia de seguridad.</translation>
        </message>
        <message>
            <source>The stage of %1 is not as it was last saved; compare it with a backup.</source>
            <translation>La etapa de %1 no es como se guardó la última vez; compárela con una copia de seguridad.</translation>
        </message>
        <message>
            <source>The rates and rules of the shop are missing; open a backup.</source>
            <translation>Faltan las tarifas y reglas del negocio; abra una copia de seguridad.</translation>
        </message>
        <message>
            <source>The bench standards are missing; open a backup.</source>
            <translation>Faltan los tiempos estándar del taller; abra una copia de seguridad.</translation>
        </message>
        <message>
            <source>Less than nothing of a material is on the shelf; count it.</source>
            <translation>De un material hay menos que nada en el estante; cuéntelo.</translation>
        </message>
        <message>
            <source>The order of a quote is missing; open a backup.</source>
            <translation>Falta el pedido de un presupuesto; abra una copia de seguridad.</translation>
        </message>
        <message>
            <source>A given quote is missing from the book; open a backup.</source>
            <translation>Falta en el libro un presupuesto dado; abra una copia de seguridad.</translation>
        </message>
        <message>
            <source>Between two given quotes another one was taken out or exchanged; open a backup.</source>
            <translation>Entre dos presupuestos dados se quitó o se cambió otro; abra una copia de seguridad.</translation>
        </message>
        <message>
            <source>The seal of quote %1 is missing; open a backup.</source>
            <translation>Falta el sello del presupuesto %1; abra una copia de seguridad.</translation>
        </message>
        <message>
            <source>Quote %1 was given but is no longer listed; open a backup.</source>
            <translation>El presupuesto %1 se dio pero ya no aparece en la lista; abra una copia de seguridad.</translation>
        </message>
        <message>
            <source>Quote %1 is not as it was sealed; open a backup.</source>
            <translation>El presupuesto %1 no es como se selló; abra una copia de seguridad.</translation>
        </message>
        <message>
            <source>Quote %1 does not follow the one that it replaced; open a backup.</source>
            <translation>El presupuesto %1 no sigue al que reemplazó; abra una copia de seguridad.</translation>
        </message>
        <message>
            <source>There are numbers of papers that nobody issued; open a backup.</source>
            <translation>Hay números de documentos que nadie emitió; abra una copia de seguridad.</translation>
        </message>
        <message>
            <source>Quote %1 was given but cannot be read; open a backup.</source>
            <translation>El presupuesto %1 se dio pero no se puede leer; abra una copia de seguridad.</translation>
        </message>
        <message>
            <source>The count of quotes has lost %1; open a backup.</source>
            <translation>La numeración de presupuestos ha perdido %1; abra una copia de seguridad.</translation>
        </message>
        <message>
            <source>%1 was issued but is missing or cannot be read; open a backup.</source>
            <translation>%1 se emitió pero falta o no se puede leer; abra una copia de seguridad.</translation>
        </message>
        <message>
            <source>The count of papers has lost %1; open a backup.</source>
            <translation>La numeración de documentos ha perdido %1; abra una copia de seguridad.</translation>
        </message>
        <message>
            <source>%1 is for a payment or an invoice that is missing; open a backup.</source>
            <translation>%1 es de un pago o una factura que falta; abra una copia de seguridad.</translation>
        </message>
        <message>
            <source>More of %1 is credited than was invoiced; open a backup.</source>
            <translation>De %1 se acreditó más de lo facturado; abra una copia de seguridad.</translation>
        </message>
        <message>
            <source>A row of the change log is missing; open a backup.</source>
            <translation>Falta una fila del registro de cambios; abra una copia de seguridad.</translation>
        </message>
        <message>
            <source>Record %1 of the change log does not follow from the one before it.</source>
            <translation>La entrada %1 del registro de cambios no se sigue de la anterior.</translation>
        </message>
        <message>
            <source>Of %1 the customer was taken out, and no erasing of a customer says so.</source>
            <translation>De %1 se quitó al cliente, y ningún borrado de cliente lo dice.</translation>
        </message>
        <message>
            <source>A thing and the change log do not agree on when it was last changed; compare with a backup.</source>
            <translation>Una cosa y el registro de cambios no concuerdan en cuándo se cambió por última vez; compare con una copia de seguridad.</translation>
        </message>
        <message>
            <source>What of “%1” goes back to a supplier is for no job; leave the job out.</source>
            <translation>Lo que de «%1» se devuelve a un proveedor no es para ningún trabajo; quite el trabajo.</translation>
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
            <translation>%1 cambió</translation>
        </message>
        <message>
            <source>%1: %2 (was none)</source>
            <translation>%1: %2 (antes ninguno)</translation>
        </message>
        <message>
            <source>%1: none (was %2)</source>
            <translation>%1: ninguno (antes %2)</translation>
        </message>
        <message>
            <source>%1: %2 (was %3)</source>
            <translation>%1: %2 (antes %3)</translation>
        </message>
        <message>
            <source>added</source>
            <translation>añadido</translation>
        </message>
        <message>
            <source>taken out</source>
            <translation>quitado</translation>
        </message>
        <message>
            <source>Replaced by %1 on %2</source>
            <translation>Reemplazado por %1 el %2</translation>
        </message>
        <message>
            <source>%1 is invoiced: once the revision is agreed to, a credit note and another invoice settle the difference.</source>
            <translation>%1 está facturado: una vez acordada la modificación, una nota de crédito y otra factura saldan la diferencia.</translation>
        </message>
    </context>
    <context>
        <name>Fields</name>
        <message>
            <source>%1 must be from %2 to %3.</source>
            <translation>%1 debe estar entre %2 y %3.</translation>
        </message>
        <message>
            <source>%1 is none of those there are; choose one of the list.</source>
            <translation>%1 no es ninguno de los que hay; elija uno de la lista.</translation>
        </message>
        <message>
            <source>%1 is missing; choose one.</source>
            <translation>%1 falta; elija uno.</translation>
        </message>
        <message>
            <source>%1 are more than %2; take some out.</source>
            <translation>%1 tiene más de %2; quite algunos.</translation>
        </message>
        <message>
            <source>%1 holds characters that are not text; type it again.</source>
            <translation>%1 contiene caracteres que no son texto; escríbalo de nuevo.</translation>
        </message>
        <message>
            <source>%1 is missing; type one.</source>
            <translation>%1 falta; escriba uno.</translation>
        </message>
        <message>
            <source>%1 is longer than %2 bytes; shorten it.</source>
            <translation>%1 pasa de %2 bytes; acórtelo.</translation>
        </message>
        <message>
            <source>%1 holds control characters; type it again.</source>
            <translation>%1 contiene caracteres de control; escríbalo de nuevo.</translation>
        </message>
        <message>
            <source>%1 must be a day of the years 1 to 9999.</source>
            <translation>%1 debe ser una fecha de los años 1 a 9999.</translation>
        </message>
        <message>
            <source>%1 must be from -50 to 500 °C.</source>
            <translation>%1 debe estar entre -50 y 500 °C.</translation>
        </message>
        <message>
            <source>%1 must begin with a row from 1.</source>
            <translation>%1 debe empezar con una fila desde 1.</translation>
        </message>
        <message>
            <source>%1 must have its rows in ascending order.</source>
            <translation>%1 debe tener sus filas en orden ascendente.</translation>
        </message>
        <message>
            <source>%1 must have its days in ascending order.</source>
            <translation>%1 debe tener sus días en orden ascendente.</translation>
        </message>
        <message>
            <source>%1 is not in the table of sizes; choose one from SS6 to SS40.</source>
            <translation>%1 no está en la tabla de tamaños; elija uno de SS6 a SS40.</translation>
        </message>
        <message>
            <source>%1 name a size twice; rename one.</source>
            <translation>%1 nombra dos veces una talla; cambie el nombre de una.</translation>
        </message>
        <message>
            <source>%1 lies before the first one; correct one of them.</source>
            <translation>%1 está antes del primero; corrija uno de los dos.</translation>
        </message>
        <message>
            <source>%1 lies before the day of issue; correct one of them.</source>
            <translation>%1 está antes de la fecha de emisión; corrija una de las dos.</translation>
        </message>
        <message>
            <source>%1 is missing in a row; choose one.</source>
            <translation>%1 falta en una fila; elija uno.</translation>
        </message>
        <message>
            <source>%1 name a material twice; put the two rows into one.</source>
            <translation>%1 nombra dos veces un material; junte las dos filas en una.</translation>
        </message>
        <message>
            <source>%1 name a place twice; rename one.</source>
            <translation>%1 nombra dos veces un lugar; cambie el nombre de uno.</translation>
        </message>
        <message>
            <source>%1 cannot be a part of the currency’s smallest unit; type a whole one.</source>
            <translation>%1 no puede ser parte de la unidad menor de la moneda; escriba una entera.</translation>
        </message>
        <message>
            <source>%1 have a name twice; rename one.</source>
            <translation>%1 repite un nombre; cambie uno.</translation>
        </message>
        <message>
            <source>%1 name a rate twice; rename one.</source>
            <translation>%1 nombra dos veces una tasa; cambie el nombre de una.</translation>
        </message>
        <message>
            <source>%1 say the same twice; choose one column for each.</source>
            <translation>%1 dice dos veces lo mismo; elija una columna para cada cosa.</translation>
        </message>
        <message>
            <source>%1 is given twice; keep the share or the amount.</source>
            <translation>%1 se da dos veces; deje la proporción o el importe.</translation>
        </message>
        <message>
            <source>The %1</source>
            <translation>El dato «%1»</translation>
        </message>
        <message>
            <source>The %1 of “%2”</source>
            <translation>El dato «%1» de «%2»</translation>
        </message>
    </context>
    <context>
        <name>FirstSteps</name>
        <message>
            <source>Done. %1</source>
            <translation>Hecho. %1</translation>
        </message>
        <message>
            <source>Left open. %1</source>
            <translation>Dejado abierto. %1</translation>
        </message>
    </context>
    <context>
        <name>KitWords</name>
        <message>
            <source> and </source>
            <translation> y </translation>
        </message>
        <message>
            <source>No piece comes out of it: %1 is missing or too little.</source>
            <translation>No sale ninguna pieza: falta %1 o es muy poco.</translation>
        </message>
        <message>
            <source>%1 for sure</source>
            <translation>%1 con seguridad</translation>
        </message>
        <message>
            <source>%1 %2</source>
            <translation>%1 %2</translation>
        </message>
        <message numerus="yes">
            <source>Makes %1; %2 run out first.</source>
            <translation>
                <numerusform>Rinde %1; primero se acaba %2.</numerusform>
                <numerusform>Rinde %1; primero se acaban %2.</numerusform>
            </translation>
        </message>
        <message>
            <source>%1 for %2 more</source>
            <translation>%1 para %2 más</translation>
        </message>
        <message>
            <source> (%1)</source>
            <translation> (%1)</translation>
        </message>
        <message>
            <source>Nothing is left over.</source>
            <translation>No sobra nada.</translation>
        </message>
        <message>
            <source>Left over: %1.</source>
            <translation>Sobra: %1.</translation>
        </message>
        <message>
            <source>%1 Worth %2 at bulk prices.</source>
            <translation>%1 Vale %2 a precios a granel.</translation>
        </message>
        <message>
            <source>now and then</source>
            <translation>de vez en cuando</translation>
        </message>
        <message>
            <source>one time in ten</source>
            <translation>una de cada diez veces</translation>
        </message>
        <message>
            <source>one time in five</source>
            <translation>una de cada cinco veces</translation>
        </message>
        <message>
            <source>one time in four</source>
            <translation>una de cada cuatro veces</translation>
        </message>
        <message>
            <source>one time in three</source>
            <translation>una de cada tres veces</translation>
        </message>
        <message>
            <source>every other time</source>
            <translation>una de cada dos veces</translation>
        </message>
        <message>
            <source>two times in three</source>
            <translation>dos de cada tres veces</translation>
        </message>
        <message>
            <source>three times in four</source>
            <translation>tres de cada cuatro veces</translation>
        </message>
        <message>
            <source>four times in five</source>
            <translation>cuatro de cada cinco veces</translation>
        </message>
        <message>
            <source>nine times in ten</source>
            <translation>nueve de cada diez veces</translation>
        </message>
        <message>
            <source>nearly always</source>
            <translation>casi siempre</translation>
        </message>
        <message>
            <source>That is %1 a piece.</source>
            <translation>Son %1 por pieza.</translation>
        </message>
        <message>
            <source>One more gross of %1 would add one piece.</source>
            <translation>Una gruesa más de %1 daría una pieza más.</translation>
        </message>
        <message numerus="yes">
            <source>One more gross of %1 would add %2 pieces.</source>
            <translation>
                <numerusform>Una gruesa más de %1 daría %2 pieza más.</numerusform>
                <numerusform>Una gruesa más de %1 daría %2 piezas más.</numerusform>
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
                <numerusform>%1 pieza: %2, %3 en total</numerusform>
                <numerusform>%1 piezas: %2 c/u, %3 en total</numerusform>
            </translation>
        </message>
        <message>
            <source>; %1 come to less, %2</source>
            <translation>; %1 cuestan menos, %2</translation>
        </message>
        <message>
            <source>%1 come to more than %2, which are %3.</source>
            <translation>%1 cuestan más que %2, que salen en %3.</translation>
        </message>
        <message>
            <source>%1 to %2 come to more than %3, which are %4.</source>
            <translation>De %1 a %2 cuestan más que %3, que salen en %4.</translation>
        </message>
        <message>
            <source>More pieces always come to as much or more.</source>
            <translation>Más piezas siempre cuestan lo mismo o más.</translation>
        </message>
    </context>
    <context>
        <name>Language</name>
        <message>
            <source>English</source>
            <extracomment>What the language that this file translates into calls itself.</extracomment>
            <translation>Español</translation>
        </message>
    </context>
    <context>
        <name>Layout</name>
        <message>
            <source>The number of pieces must be 1 to %1; enter a number in that range.</source>
            <translation>El número de piezas debe ser de 1 a %1; escriba un número entre esos.</translation>
        </message>
        <message numerus="yes">
            <source>%n pieces of %2 need more than 1 km of roll; ask for fewer pieces.</source>
            <translation>
                <numerusform>%n pieza de %2 necesita más de 1 km de rollo; pida menos piezas.</numerusform>
                <numerusform>%n piezas de %2 necesitan más de 1 km de rollo; pida menos piezas.</numerusform>
            </translation>
        </message>
        <message>
            <source>Margin and gap must be 0 or more: change them.</source>
            <translation>El margen y la separación deben ser 0 o más: cámbielos.</translation>
        </message>
        <message>
            <source>There is nothing to lay: say what is to be cut.</source>
            <translation>No hay nada que acomodar: diga qué se corta.</translation>
        </message>
        <message>
            <source>More than 1,000 different pieces are not planned at once: plan them in parts.</source>
            <translation>No se planean más de 1000 piezas distintas a la vez: planéelas por partes.</translation>
        </message>
        <message>
            <source>Piece %1 must have sides above 0 and up to 1 km: change its size.</source>
            <translation>La pieza %1 debe tener lados mayores que 0 y de hasta 1 km: cambie su tamaño.</translation>
        </message>
        <message>
            <source>Of piece %1 1 or more must be cut: change its count.</source>
            <translation>De la pieza %1 se debe cortar 1 o más: cambie su cantidad.</translation>
        </message>
        <message>
            <source>More than 20,000 pieces are not planned at once: plan them in parts.</source>
            <translation>No se planean más de 20 000 piezas a la vez: planéelas por partes.</translation>
        </message>
        <message>
            <source>Piece %1 fits no sheet, whichever way round: take a larger sheet or a smaller margin.</source>
            <translation>La pieza %1 no cabe en ninguna lámina, en ningún sentido: tome una lámina mayor o un margen menor.</translation>
        </message>
        <message>
            <source>The sheets that can be had do not take all pieces: allow more of them.</source>
            <translation>Las láminas disponibles no bastan para todas las piezas: permita más.</translation>
        </message>
        <message>
            <source>No way was found to lay all pieces on the sheets that can be had: allow one more.</source>
            <translation>No se halló modo de acomodar todas las piezas en las láminas disponibles: permita una más.</translation>
        </message>
        <message>
            <source>There is no sheet to lay on: name one.</source>
            <translation>No hay lámina donde acomodar: indique una.</translation>
        </message>
        <message>
            <source>More than 50 kinds of sheets are not compared at once: leave some out.</source>
            <translation>No se comparan más de 50 tipos de láminas a la vez: quite algunos.</translation>
        </message>
        <message>
            <source>Sheet %1 must have sides above 0 and up to 1 km: change its size.</source>
            <translation>La lámina %1 debe tener lados mayores que 0 y de hasta 1 km: cambie su tamaño.</translation>
        </message>
        <message>
            <source>Price and number of sheet %1 must be 0 or more: change them.</source>
            <translation>El precio y el número de la lámina %1 deben ser 0 o más: cámbielos.</translation>
        </message>
        <message>
            <source>No sheet has anything left inside its margin, or none can be had: change margin or sheets.</source>
            <translation>A ninguna lámina le queda nada dentro de su margen, o no hay ninguna disponible: cambie el margen o las láminas.</translation>
        </message>
        <message>
            <source>The sizes are larger than the program works with: change them.</source>
            <translation>Los tamaños son mayores de lo que maneja el programa: cámbielos.</translation>
        </message>
        <message>
            <source>The roll has no width left inside its margin: change one of them.</source>
            <translation>Al rollo no le queda ancho dentro de su margen: cambie uno de los dos.</translation>
        </message>
        <message>
            <source>Piece %1 is wider than the roll, whichever way round: take a wider roll or a smaller margin.</source>
            <translation>La pieza %1 es más ancha que el rollo, en cualquier sentido: tome un rollo más ancho o un margen menor.</translation>
        </message>
        <message>
            <source>The pieces take more than 1 km of roll: plan them in parts.</source>
            <translation>Las piezas llevan más de 1 km de rollo: planéelas por partes.</translation>
        </message>
        <message>
            <source>More than %1 pieces of %2 would fit the sheet; check the unit the piece was entered in.</source>
            <translation>En la lámina cabrían más de %1 piezas de %2; revise la unidad en que se escribió la pieza.</translation>
        </message>
        <message>
            <source>The roll width must be more than zero; enter its size.</source>
            <translation>El ancho del rollo debe ser mayor que cero; escriba su tamaño.</translation>
        </message>
        <message>
            <source>The roll width is longer than 1 km; check the unit it was entered in.</source>
            <translation>El ancho del rollo pasa de 1 km; revise la unidad en que se escribió.</translation>
        </message>
        <message>
            <source>The sheet width must be more than zero; enter its size.</source>
            <translation>El ancho de la lámina debe ser mayor que cero; escriba su tamaño.</translation>
        </message>
        <message>
            <source>The sheet width is longer than 1 km; check the unit it was entered in.</source>
            <translation>El ancho de la lámina pasa de 1 km; revise la unidad en que se escribió.</translation>
        </message>
        <message>
            <source>The sheet height must be more than zero; enter its size.</source>
            <translation>El alto de la lámina debe ser mayor que cero; escriba su tamaño.</translation>
        </message>
        <message>
            <source>The sheet height is longer than 1 km; check the unit it was entered in.</source>
            <translation>El alto de la lámina pasa de 1 km; revise la unidad en que se escribió.</translation>
        </message>
        <message>
            <source>The piece width must be more than zero; enter its size.</source>
            <translation>El ancho de la pieza debe ser mayor que cero; escriba su tamaño.</translation>
        </message>
        <message>
            <source>The piece width is longer than 1 km; check the unit it was entered in.</source>
            <translation>El ancho de la pieza pasa de 1 km; revise la unidad en que se escribió.</translation>
        </message>
        <message>
            <source>The piece height must be more than zero; enter its size.</source>
            <translation>El alto de la pieza debe ser mayor que cero; escriba su tamaño.</translation>
        </message>
        <message>
            <source>The piece height is longer than 1 km; check the unit it was entered in.</source>
            <translation>El alto de la pieza pasa de 1 km; revise la unidad en que se escribió.</translation>
        </message>
        <message>
            <source>The margin cannot be less than zero; enter 0 for none.</source>
            <translation>El margen no puede ser menor que cero; escriba 0 si no hay.</translation>
        </message>
        <message>
            <source>The margin is longer than 1 km; check the unit it was entered in.</source>
            <translation>El margen pasa de 1 km; revise la unidad en que se escribió.</translation>
        </message>
        <message>
            <source>The gap cannot be less than zero; enter 0 for none.</source>
            <translation>La separación no puede ser menor que cero; escriba 0 si no hay.</translation>
        </message>
        <message>
            <source>The gap is longer than 1 km; check the unit it was entered in.</source>
            <translation>La separación pasa de 1 km; revise la unidad en que se escribió.</translation>
        </message>
        <message>
            <source>A margin of %1 all round leaves nothing of a roll of %2; make the margin smaller.</source>
            <translation>Un margen de %1 alrededor no deja nada de un rollo de %2; haga el margen menor.</translation>
        </message>
        <message>
            <source>A margin of %1 all round leaves nothing of a sheet of %2; make the margin smaller.</source>
            <translation>Un margen de %1 alrededor no deja nada de una lámina de %2; haga el margen menor.</translation>
        </message>
        <message>
            <source>A piece of %1 does not fit the usable width of the roll, %2, either way round; make the piece smaller or choose a larger roll.</source>
            <translation>Una pieza de %1 no cabe en el ancho útil del rollo, %2, en ningún sentido; haga la pieza menor o elija un rollo mayor.</translation>
        </message>
        <message>
            <source>A piece of %1 does not fit the usable width of the roll, %2, the way the material runs; make the piece smaller or choose a larger roll.</source>
            <translation>Una pieza de %1 no cabe en el ancho útil del rollo, %2, en el sentido del material; haga la pieza menor o elija un rollo mayor.</translation>
        </message>
        <message>
            <source>A piece of %1 does not fit the usable part of the sheet, %2, either way round; make the piece smaller or choose a larger sheet.</source>
            <translation>Una pieza de %1 no cabe en la parte útil de la lámina, %2, en ningún sentido; haga la pieza menor o elija una lámina mayor.</translation>
        </message>
        <message>
            <source>A piece of %1 does not fit the usable part of the sheet, %2, the way the material runs; make the piece smaller or choose a larger sheet.</source>
            <translation>Una pieza de %1 no cabe en la parte útil de la lámina, %2, en el sentido del material; haga la pieza menor o elija una lámina mayor.</translation>
        </message>
    </context>
    <context>
        <name>Names</name>
        <message>
            <source>stone</source>
            <translation>piedra</translation>
        </message>
        <message>
            <source>tape</source>
            <translation>cinta</translation>
        </message>
        <message>
            <source>template</source>
            <translation>plantilla</translation>
        </message>
        <message>
            <source>backing</source>
            <translation>respaldo</translation>
        </message>
        <message>
            <source>blank</source>
            <translation>prenda base</translation>
        </message>
        <message>
            <source>packing</source>
            <translation>empaque</translation>
        </message>
        <message>
            <source>art</source>
            <translation>arte</translation>
        </message>
        <message>
            <source>cut</source>
            <translation>corte</translation>
        </message>
        <message>
            <source>weed</source>
            <translation>depilado</translation>
        </message>
        <message>
            <source>set up</source>
            <translation>preparación</translation>
        </message>
        <message>
            <source>brush</source>
            <translation>cepillado</translation>
        </message>
        <message>
            <source>lift</source>
            <translation>levantado</translation>
        </message>
        <message>
            <source>press</source>
            <translation>prensado</translation>
        </message>
        <message>
            <source>trim</source>
            <translation>recorte</translation>
        </message>
        <message>
            <source>pack</source>
            <translation>empacado</translation>
        </message>
        <message>
            <source>Crystal</source>
            <translation>Cristal</translation>
        </message>
        <message>
            <source>Pearl</source>
            <translation>Perla</translation>
        </message>
        <message>
            <source>Silver</source>
            <translation>Plata</translation>
        </message>
        <message>
            <source>Black diamond</source>
            <translation>Diamante negro</translation>
        </message>
        <message>
            <source>Hematite</source>
            <translation>Hematita</translation>
        </message>
        <message>
            <source>Jet</source>
            <translation>Azabache</translation>
        </message>
        <message>
            <source>Rose</source>
            <translation>Rosa</translation>
        </message>
        <message>
            <source>Light rose</source>
            <translation>Rosa claro</translation>
        </message>
        <message>
            <source>Fuchsia</source>
            <translation>Fucsia</translation>
        </message>
        <message>
            <source>Coral</source>
            <translation>Coral</translation>
        </message>
        <message>
            <source>Red</source>
            <translation>Rojo</translation>
        </message>
        <message>
            <source>Siam</source>
            <translation>Siam</translation>
        </message>
        <message>
            <source>Orange</source>
            <translation>Naranja</translation>
        </message>
        <message>
            <source>Amber</source>
            <translation>Ámbar</translation>
        </message>
        <message>
            <source>Topaz</source>
            <translation>Topacio</translation>
        </message>
        <message>
            <source>Citrine</source>
            <translation>Citrino</translation>
        </message>
        <message>
            <source>Peridot</source>
            <translation>Peridoto</translation>
        </message>
        <message>
            <source>Emerald</source>
            <translation>Esmeralda</translation>
        </message>
        <message>
            <source>Turquoise</source>
            <translation>Turquesa</translation>
        </message>
        <message>
            <source>Aquamarine</source>
            <translation>Aguamarina</translation>
        </message>
        <message>
            <source>Light sapphire</source>
            <translation>Zafiro claro</translation>
        </message>
        <message>
            <source>Sapphire</source>
            <translation>Zafiro</translation>
        </message>
        <message>
            <source>Lilac</source>
            <translation>Lila</translation>
        </message>
        <message>
            <source>Amethyst</source>
            <translation>Amatista</translation>
        </message>
        <message>
            <source>Brown</source>
            <translation>Marrón</translation>
        </message>
        <message>
            <source>Untitled</source>
            <translation>Sin título</translation>
        </message>
        <message>
            <source>%1 and %2 more</source>
            <translation>%1 y %2 más</translation>
        </message>
    </context>
    <context>
        <name>Needs</name>
        <message>
            <source>The platen of the press has no size; give its width and depth in Shop.</source>
            <translation>La placa de la prensa no tiene tamaño; dé su ancho y su fondo en Negocio.</translation>
        </message>
        <message>
            <source>The %1 of %2 is no longer among the supplies; choose another.</source>
            <translation>Lo elegido como %1 de %2 ya no está entre los insumos; elija otra cosa.</translation>
        </message>
        <message>
            <source>%1 cannot be the %2 of %3: it is %4; choose another.</source>
            <translation>%1 no puede ser %2 de %3: es %4; elija otra cosa.</translation>
        </message>
        <message>
            <source>%1 has no price; add a pack with a price to it in Supplies.</source>
            <translation>%1 no tiene precio; añádale un paquete con precio en Insumos.</translation>
        </message>
        <message>
            <source>%1 names %2 twice; put both counts in one row.</source>
            <translation>%1 nombra %2 dos veces; ponga ambas cantidades en una fila.</translation>
        </message>
        <message>
            <source>%1 of %2 is not from 0 to %3, the pieces of the line; correct the sizes.</source>
            <translation>%1 de %2 no está entre 0 y %3, las piezas de la línea; corrija las tallas.</translation>
        </message>
        <message>
            <source>%1 is not a size of what %2 goes on; choose one of its sizes.</source>
            <translation>%1 no es una talla de la base de %2; elija una de sus tallas.</translation>
        </message>
        <message>
            <source>The sizes of %1 add up to %2, more than its pieces, %3; correct one of them.</source>
            <translation>Las tallas de %1 suman %2, más que sus piezas, %3; corrija una de ellas.</translation>
        </message>
        <message>
            <source>%2 has %1 pieces; give a number from 1 to 1,000,000.</source>
            <translation>%2 tiene %1 piezas; dé un número de 1 a 1 000 000.</translation>
        </message>
        <message>
            <source>%1 needs a width and a height above nothing and up to a kilometre.</source>
            <translation>%1 necesita un ancho y un alto mayores que cero y de hasta un kilómetro.</translation>
        </message>
        <message>
            <source>The price asked for %1 is below nothing; type 0 or more.</source>
            <translation>El precio pedido por %1 es menor que cero; escriba 0 o más.</translation>
        </message>
        <message>
            <source>The templates of %1 cannot be spread over %2 pieces; plan for 1 or more.</source>
            <translation>Las plantillas de %1 no se pueden repartir entre %2 piezas; prevea 1 o más.</translation>
        </message>
        <message>
            <source>%1 has designs at more than %2 places; leave some out.</source>
            <translation>%1 tiene diseños en más de %2 lugares; quite algunos.</translation>
        </message>
        <message>
            <source>%1 has no price; type one, or say what is sold.</source>
            <translation>%1 no tiene precio; escriba uno o diga qué se vende.</translation>
        </message>
        <message>
            <source>%1 has no stones; add a colour and how many a piece takes.</source>
            <translation>%1 no tiene piedras; añada un color y cuántas lleva una pieza.</translation>
        </message>
        <message>
            <source>%1 has more than %2 colours; leave some out.</source>
            <translation>%1 tiene más de %2 colores; quite algunos.</translation>
        </message>
        <message>
            <source>%1 takes %2 of %3 a piece; give a number from 1 to 1,000,000.</source>
            <translation>%1 lleva %2 de %3 por pieza; dé un número de 1 a 1 000 000.</translation>
        </message>
        <message>
            <source>The loss of %1 must be from 0 to below 100 %; correct it in Supplies.</source>
            <translation>La pérdida de %1 debe ser de 0 a menos de 100 %; corríjala en Insumos.</translation>
        </message>
        <message>
            <source>Say what %1 goes on: a backing, a blank, or the customer's own garment.</source>
            <translation>Diga sobre qué va %1: un respaldo, una prenda base o la prenda del propio cliente.</translation>
        </message>
        <message>
            <source>The bench minutes of this order are more than can be reckoned with; make it smaller.</source>
            <translation>Los minutos de taller de este pedido son más de los que se pueden calcular; hágalo menor.</translation>
        </message>
        <message>
            <source>This line</source>
            <translation>Esta línea</translation>
        </message>
        <message>
            <source>base</source>
            <translation>base</translation>
        </message>
        <message>
            <source>tape</source>
            <translation>cinta</translation>
        </message>
        <message>
            <source>template</source>
            <translation>plantilla</translation>
        </message>
        <message>
            <source>packing</source>
            <translation>empaque</translation>
        </message>
        <message>
            <source>stone in row %1</source>
            <translation>piedra en la fila %1</translation>
        </message>
        <message>
            <source>No spares: only %1 of %2 is expected to be spoiled.</source>
            <translation>Sin reserva: solo se espera que se estropeen %1 de %2.</translation>
        </message>
        <message>
            <source>Spares: %1, as %2 of %3 are expected to be spoiled.</source>
            <translation>Reserva: %1, pues se espera que se estropeen %2 de %3.</translation>
        </message>
        <message>
            <source>Spares: %1 in %4, as %2 of %3 are expected to be spoiled.</source>
            <translation>Reserva: %1 en %4, pues se espera que se estropeen %2 de %3.</translation>
        </message>
        <message>
            <source>Spares: %1 with another line on the same, as %2 of %3 are expected to be spoiled.</source>
            <translation>Reserva: %1 con otra línea sobre lo mismo, pues se espera que se estropeen %2 de %3.</translation>
        </message>
    </context>
    <context>
        <name>Owner</name>
        <message>
            <source>Below what it costs with your own time, wear and overhead.</source>
            <translation>Por debajo de lo que cuesta con su propio tiempo, desgaste y gastos generales.</translation>
        </message>
        <message>
            <source>Below the floor: it does not cover the %1 a piece that is paid out.</source>
            <translation>Por debajo del límite: no cubre los %1 por pieza que se desembolsan.</translation>
        </message>
        <message>
            <source>The whole order is below what it costs with your own time, wear and overhead.</source>
            <translation>Todo el pedido está por debajo de lo que cuesta con su propio tiempo, desgaste y gastos generales.</translation>
        </message>
        <message>
            <source>The whole order is below the floor: it does not cover the %1 that is paid out.</source>
            <translation>Todo el pedido está por debajo del límite: no cubre los %1 que se desembolsan.</translation>
        </message>
        <message>
            <source>Of the price the card takes %1 a piece, %2 on the line.</source>
            <translation>Del precio, la tarjeta se lleva %1 por pieza, %2 en la línea.</translation>
        </message>
        <message>
            <source>Of the line’s cost %1 is tax on what is given away.</source>
            <translation>Del costo de la línea, %1 son impuesto sobre lo regalado.</translation>
        </message>
        <message>
            <source>%1 cost less than %2, %3 instead of %4: offer %1.</source>
            <translation>%1 cuestan menos que %2, %3 en vez de %4: ofrezca %1.</translation>
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
            <translation>cliente borrado</translation>
        </message>
        <message>
            <source>Date</source>
            <translation>Fecha</translation>
        </message>
    </context>
    <context>
        <name>Payments</name>
        <message>
            <source>Cash</source>
            <translation>Efectivo</translation>
        </message>
        <message>
            <source>Card</source>
            <translation>Tarjeta</translation>
        </message>
        <message>
            <source>Transfer</source>
            <translation>Transferencia</translation>
        </message>
        <message>
            <source>Other</source>
            <comment>way to pay</comment>
            <translation>Otro</translation>
        </message>
        <message>
            <source>taken back</source>
            <translation>anulado</translation>
        </message>
        <message>
            <source>change taken back</source>
            <translation>cambio anulado</translation>
        </message>
        <message>
            <source>change</source>
            <translation>cambio</translation>
        </message>
        <message>
            <source>rounding taken back</source>
            <translation>redondeo anulado</translation>
        </message>
        <message>
            <source>rounded to the coin</source>
            <translation>redondeado a la moneda</translation>
        </message>
    </context>
    <context>
        <name>PlanWords</name>
        <message>
            <source>%1, turned</source>
            <translation>%1, girada</translation>
        </message>
        <message>
            <source>%1, every %2</source>
            <translation>%1, cada %2</translation>
        </message>
        <message>
            <source>%1, %2: %3 from the left, %4 from the top</source>
            <translation>%1, %2: %3 desde la izquierda, %4 desde arriba</translation>
        </message>
        <message>
            <source>; across %1</source>
            <translation>; a lo ancho %1</translation>
        </message>
        <message>
            <source>; down %1</source>
            <translation>; a lo alto %1</translation>
        </message>
        <message>
            <source>Cutting plan</source>
            <translation>Plan de corte</translation>
        </message>
        <message>
            <source>Drawn to scale. A filled corner is a piece turned a quarter; dashes are what is left.</source>
            <translation>Dibujado a escala. Una esquina rellena es una pieza girada un cuarto de vuelta; los guiones son lo que sobra.</translation>
        </message>
        <message>
            <source>%1, continued</source>
            <translation>%1, continuación</translation>
        </message>
        <message>
            <source>%1 left</source>
            <translation>sobra %1</translation>
        </message>
        <message>
            <source>Cutting plan, %1</source>
            <extracomment>The name of a document.</extracomment>
            <translation>Plan de corte, %1</translation>
        </message>
        <message>
            <source>roll %1 wide</source>
            <translation>rollo de %1 de ancho</translation>
        </message>
        <message>
            <source>%1 off the roll, shortest possible</source>
            <translation>%1 del rollo, lo menos posible</translation>
        </message>
        <message>
            <source>%1 off the roll; no plan needs less than %2</source>
            <translation>%1 del rollo; ningún plan necesita menos de %2</translation>
        </message>
        <message>
            <source>%1. That is more than one roll of %2: plan it in parts.</source>
            <translation>%1. Es más de un rollo de %2: planéelo por partes.</translation>
        </message>
        <message numerus="yes">
            <source>%1 sheets, fewest possible</source>
            <translation>
                <numerusform>%1 lámina, lo menos posible</numerusform>
                <numerusform>%1 láminas, lo menos posible</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%1 sheets; no plan needs fewer than %2</source>
            <translation>
                <numerusform>%1 lámina; ningún plan necesita menos de %2</numerusform>
                <numerusform>%1 láminas; ningún plan necesita menos de %2</numerusform>
            </translation>
        </message>
        <message>
            <source>nothing left beside the pieces</source>
            <translation>no sobra nada junto a las piezas</translation>
        </message>
        <message>
            <source>nothing left of the last sheet</source>
            <translation>no sobra nada de la última lámina</translation>
        </message>
        <message>
            <source>%1 left beside the pieces</source>
            <translation>sobra %1 junto a las piezas</translation>
        </message>
        <message>
            <source>%1 left of the last sheet</source>
            <translation>sobra %1 de la última lámina</translation>
        </message>
        <message>
            <source>Roll</source>
            <translation>Rollo</translation>
        </message>
        <message>
            <source>%1 to %2</source>
            <translation>%1 a %2</translation>
        </message>
        <message>
            <source>Sheet %1</source>
            <translation>Lámina %1</translation>
        </message>
        <message>
            <source>Sheets %1, cut alike</source>
            <translation>Láminas %1, cortadas igual</translation>
        </message>
    </context>
    <context>
        <name>Planning</name>
        <message>
            <source>A material of %1 is no longer in the book; choose another one.</source>
            <translation>Un material de %1 ya no está en el libro; elija otro.</translation>
        </message>
        <message>
            <source>%1 needs a number of pieces, a width and a height before it can be laid on a sheet.</source>
            <translation>%1 necesita un número de piezas, un ancho y un alto antes de acomodarse en una lámina.</translation>
        </message>
        <message>
            <source>A line</source>
            <translation>Una línea</translation>
        </message>
    </context>
    <context>
        <name>PriceList</name>
        <message>
            <source>pack of %1</source>
            <translation>paquete de %1</translation>
        </message>
        <message>
            <source>“%1” holds no rows below its headings; choose another file.</source>
            <translation>«%1» no tiene filas bajo sus encabezados; elija otro archivo.</translation>
        </message>
    </context>
    <context>
        <name>PriceListDialog</name>
        <message numerus="yes">
            <source>&amp;Make the %n missing stones</source>
            <translation>
                <numerusform>Crea&amp;r la piedra que falta</numerusform>
                <numerusform>Crea&amp;r las %n piedras que faltan</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>PriceText</name>
        <message>
            <source>from %1 packs %2</source>
            <translation>desde %1 paquetes %2</translation>
        </message>
    </context>
    <context>
        <name>Pricing</name>
        <message>
            <source>There is no tax rate “%1” in the shop any more; choose another for “%2”.</source>
            <translation>Ya no hay tasa de impuesto «%1» en el negocio; elija otra para «%2».</translation>
        </message>
        <message>
            <source>The tax rate must be from 0 to 100 %; correct it in Shop.</source>
            <translation>La tasa de impuesto debe ser de 0 a 100 %; corríjala en Negocio.</translation>
        </message>
        <message>
            <source>The deposit must be from 0 to 100 %; correct it in Shop.</source>
            <translation>El anticipo debe ser de 0 a 100 %; corríjalo en Negocio.</translation>
        </message>
        <message>
            <source>The card fee takes the whole of a price with its tax; correct it in Shop.</source>
            <translation>La comisión de tarjeta se lleva todo un precio con su impuesto; corríjala en Negocio.</translation>
        </message>
        <message numerus="yes">
            <source>The mark-up from %n pieces must be from -100 to 10,000 %; correct it in Shop.</source>
            <translation>
                <numerusform>El recargo desde %n pieza debe ser de -100 a 10 000 %; corríjalo en Negocio.</numerusform>
                <numerusform>El recargo desde %n piezas debe ser de -100 a 10 000 %; corríjalo en Negocio.</numerusform>
            </translation>
        </message>
        <message>
            <source>A price ending is a number from 0 to 99; correct it in Shop.</source>
            <translation>La terminación de un precio es un número de 0 a 99; corríjala en Negocio.</translation>
        </message>
        <message>
            <source>A discount is from 0 to 100 %; type another.</source>
            <translation>Un descuento va de 0 a 100 %; escriba otro.</translation>
        </message>
        <message>
            <source>The discount is more than the order comes to, or below nothing; type another.</source>
            <translation>El descuento es más de lo que suma el pedido, o menor que cero; escriba otro.</translation>
        </message>
        <message>
            <source>%1 comes to more than 1,000,000,000; check its pieces and prices.</source>
            <translation>%1 suma más de 1 000 000 000; revise sus piezas y precios.</translation>
        </message>
        <message>
            <source>A payment of nothing is none; type how much it is.</source>
            <translation>Un pago de cero no es un pago; escriba de cuánto es.</translation>
        </message>
        <message>
            <source>The day of the payment, %1, is still to come; type today’s or an earlier one.</source>
            <translation>La fecha del pago, %1, aún no llega; escriba la de hoy o una anterior.</translation>
        </message>
        <message>
            <source>%1 cannot be counted out, the smallest there is being %2; type a multiple of it.</source>
            <translation>%1 no se puede pagar en monedas, pues la menor que hay es %2; escriba un múltiplo de ella.</translation>
        </message>
        <message>
            <source>%1 is more than the %2 that is left to pay, and change is given in cash alone; take what is left, or keep the rest as credit.</source>
            <translation>%1 es más que los %2 que quedan por pagar, y solo se da cambio en efectivo; tome lo que queda o guarde el resto como saldo a favor.</translation>
        </message>
        <message>
            <source>%1 is more than the %2 that is left to pay; take what is left and give change, or keep it as the customer’s credit.</source>
            <translation>%1 es más que los %2 que quedan por pagar; tome lo que queda y dé cambio, o guárdelo como saldo a favor del cliente.</translation>
        </message>
        <message>
            <source>Nothing is left to pay; keep the %1 as the customer’s credit, or give them back.</source>
            <translation>No queda nada por pagar; guarde los %1 como saldo a favor del cliente o devuélvalos.</translation>
        </message>
        <message>
            <source>%1 is more than the %2 that was paid; give back less.</source>
            <translation>%1 es más que los %2 que se pagaron; devuelva menos.</translation>
        </message>
        <message>
            <source>A credit note of nothing is no credit note; say how much it takes back.</source>
            <translation>Una nota de crédito de cero no es una nota de crédito; diga cuánto anula.</translation>
        </message>
        <message>
            <source>%1 is not a whole number of the smallest coin; take back a whole one.</source>
            <translation>%1 no es un número entero de la moneda más pequeña; anule uno entero.</translation>
        </message>
        <message>
            <source>%1 is more than the %2 that is left of the invoice; take back less.</source>
            <translation>%1 es más que los %2 que quedan de la factura; anule menos.</translation>
        </message>
        <message>
            <source>Nothing is ordered yet; type a design or add a one-off.</source>
            <translation>Aún no se ha pedido nada; escriba un diseño o añada un trabajo único.</translation>
        </message>
        <message>
            <source>The day it is wanted, %1, lies before the day of the quote, %2; type a later one.</source>
            <translation>La fecha pedida, %1, está antes de la fecha del presupuesto, %2; escriba una posterior.</translation>
        </message>
        <message>
            <source>The order comes to more than 1,000,000,000; check its pieces and prices.</source>
            <translation>El pedido suma más de 1 000 000 000; revise sus piezas y precios.</translation>
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
            <translation>Certificado de exención</translation>
        </message>
        <message>
            <source>What the program reckons otherwise</source>
            <translation>Lo que el programa calcula de otro modo</translation>
        </message>
        <message>
            <source>none</source>
            <translation>ninguna</translation>
        </message>
        <message>
            <source>Wanted by a day</source>
            <translation>Fecha pedida</translation>
        </message>
        <message>
            <source>Day of the quote</source>
            <translation>Fecha del presupuesto</translation>
        </message>
        <message>
            <source>It was at no charge</source>
            <translation>Era sin cobro</translation>
        </message>
        <message>
            <source>%1 was at no charge</source>
            <translation>%1 era sin cobro</translation>
        </message>
        <message>
            <source>Typed price of %1</source>
            <translation>Precio escrito de %1</translation>
        </message>
        <message>
            <source>Templates of %1 are on the wall</source>
            <translation>Las plantillas de %1 están en la pared</translation>
        </message>
        <message>
            <source>brought by the customer</source>
            <translation>la trae el cliente</translation>
        </message>
        <message>
            <source>Rush surcharge</source>
            <translation>Suplemento por urgencia</translation>
        </message>
        <message>
            <source>Discount</source>
            <translation>Descuento</translation>
        </message>
        <message>
            <source>Up to the smallest order</source>
            <translation>Hasta el mínimo del pedido</translation>
        </message>
        <message>
            <source>Tax</source>
            <translation>Impuesto</translation>
        </message>
        <message>
            <source>No tape is chosen</source>
            <translation>No hay cinta elegida</translation>
        </message>
        <message>
            <source>No template sheet is chosen</source>
            <translation>No hay lámina de plantilla elegida</translation>
        </message>
        <message>
            <source>Labour is %1 an hour</source>
            <translation>La mano de obra es %1 por hora</translation>
        </message>
        <message>
            <source>Overhead is %1 a month</source>
            <translation>Los gastos generales son %1 al mes</translation>
        </message>
        <message>
            <source>No step at the bench takes any time</source>
            <translation>Ningún paso del taller lleva tiempo</translation>
        </message>
        <message>
            <source>Running the press is %1 an hour</source>
            <translation>El uso de la prensa es %1 por hora</translation>
        </message>
        <message>
            <source>The press loses %1 of its worth</source>
            <translation>La prensa pierde %1 de su valor</translation>
        </message>
        <message>
            <source>The cutter loses %1 of its worth</source>
            <translation>La cortadora pierde %1 de su valor</translation>
        </message>
        <message>
            <source>%1 is %2</source>
            <translation>%1 es %2</translation>
        </message>
    </context>
    <context>
        <name>Promise</name>
        <message>
            <source>Can be promised for %1.</source>
            <translation>Se puede prometer para el %1.</translation>
        </message>
        <message>
            <source>Holds, ready by %1.</source>
            <translation>Se cumple, listo el %1.</translation>
        </message>
        <message>
            <source>Holds if it is put in for %1, before others.</source>
            <translation>Se cumple si se mete para el %1, antes que otros.</translation>
        </message>
        <message>
            <source>Not by then; %1 is the first day that holds.</source>
            <translation>Para entonces no; el %1 es el primer día que se cumple.</translation>
        </message>
        <message>
            <source>%1 is the first day that holds; sooner, %2 would be later.</source>
            <translation>El %1 es el primer día que se cumple; antes, %2 se atrasaría.</translation>
        </message>
        <message numerus="yes">
            <source>%1 is the first day that holds; sooner, %2 and %n more would be later.</source>
            <translation>
                <numerusform>El %1 es el primer día que se cumple; antes, %2 y %n más se atrasarían.</numerusform>
                <numerusform>El %1 es el primer día que se cumple; antes, %2 y %n más se atrasarían.</numerusform>
            </translation>
        </message>
        <message>
            <source>%1 Not all of it is on the shelf, and when the rest comes is not known.</source>
            <translation>%1 No todo está en el estante y no se sabe cuándo llega el resto.</translation>
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
            <translation>Libros de trabajos (*.jobbook)</translation>
        </message>
    </context>
    <context>
        <name>Scheduling</name>
        <message>
            <source>No day can be promised: no weekday has time at the bench yet; type it in Shop, under Bench hours.</source>
            <translation>No se puede prometer ningún día: ningún día de la semana tiene aún tiempo de taller; escríbalo en Negocio, en Horas de taller.</translation>
        </message>
        <message>
            <source>The bench does not get to it within %1 years; look at the closed days and the hours in Shop.</source>
            <translation>El taller no llega a ello en %1 años; vea los días cerrados y las horas en Negocio.</translation>
        </message>
        <message>
            <source>No day can be promised, since the bench minutes of %1 are not known (%2); mend that job first.</source>
            <translation>No se puede prometer ningún día, pues no se saben los minutos de taller de %1 (%2); corrija antes ese trabajo.</translation>
        </message>
    </context>
    <context>
        <name>SheetWords</name>
        <message>
            <source>en</source>
            <extracomment>The BCP 47 tag of the language that this file translates into.</extracomment>
            <translation>es</translation>
        </message>
        <message>
            <source>For</source>
            <translation>Para</translation>
        </message>
        <message>
            <source>for %1</source>
            <translation>para %1</translation>
        </message>
        <message>
            <source>Pieces</source>
            <translation>Piezas</translation>
        </message>
        <message>
            <source>What</source>
            <translation>Concepto</translation>
        </message>
        <message>
            <source>Each</source>
            <translation>C/u</translation>
        </message>
        <message>
            <source>Amount</source>
            <translation>Importe</translation>
        </message>
        <message>
            <source>Carried forward</source>
            <translation>Suma y sigue</translation>
        </message>
        <message>
            <source>Brought forward</source>
            <translation>Suma anterior</translation>
        </message>
        <message>
            <source>Together</source>
            <translation>En total</translation>
        </message>
        <message>
            <source>To pay</source>
            <translation>A pagar</translation>
        </message>
        <message>
            <source>I take this one</source>
            <translation>Elijo esta</translation>
        </message>
        <message>
            <source>Deposit to start</source>
            <translation>Anticipo para empezar</translation>
        </message>
        <message>
            <source>On collection</source>
            <translation>Al recoger</translation>
        </message>
        <message>
            <source>More or fewer</source>
            <translation>Otras cantidades</translation>
        </message>
        <message>
            <source>Terms</source>
            <translation>Condiciones</translation>
        </message>
        <message>
            <source>Care and safety</source>
            <translation>Cuidados y seguridad</translation>
        </message>
        <message>
            <source>Page %1 of %2</source>
            <translation>Página %1 de %2</translation>
        </message>
        <message>
            <source>Draft</source>
            <translation>Borrador</translation>
        </message>
        <message>
            <source>Quote %1</source>
            <translation>Presupuesto %1</translation>
        </message>
        <message>
            <source>Demo: invented names and prices</source>
            <translation>Demostración: nombres y precios inventados</translation>
        </message>
        <message>
            <source>Quoted</source>
            <translation>Presupuestado</translation>
        </message>
        <message>
            <source>Valid until</source>
            <translation>Válido hasta</translation>
        </message>
        <message>
            <source>Wanted by</source>
            <translation>Fecha pedida</translation>
        </message>
        <message>
            <source>Choice %1</source>
            <translation>Opción %1</translation>
        </message>
        <message>
            <source>%1 choices: take one of them, the others fall away.</source>
            <translation>%1 opciones: elija una, las demás quedan sin efecto.</translation>
        </message>
        <message>
            <source>one piece</source>
            <translation>una pieza</translation>
        </message>
        <message>
            <source>%1 pieces</source>
            <translation>%1 piezas</translation>
        </message>
        <message>
            <source>on %1</source>
            <extracomment>What a line is made on: "on Tee, black".</extracomment>
            <translation>sobre %1</translation>
        </message>
        <message>
            <source>without stones</source>
            <translation>sin piedras</translation>
        </message>
        <message>
            <source>in one colour</source>
            <translation>en un color</translation>
        </message>
        <message>
            <source>in two colours</source>
            <translation>en dos colores</translation>
        </message>
        <message>
            <source>in %1 colours</source>
            <translation>en %1 colores</translation>
        </message>
        <message>
            <source>one stone a piece</source>
            <translation>una piedra por pieza</translation>
        </message>
        <message>
            <source>%1 stones a piece</source>
            <translation>%1 piedras por pieza</translation>
        </message>
        <message>
            <source>On your own garment</source>
            <translation>Sobre su propia prenda</translation>
        </message>
        <message>
            <source>Templates on the wall: no set-up charged</source>
            <translation>Plantillas en la pared: no se cobra preparación</translation>
        </message>
        <message>
            <source>At no charge</source>
            <translation>Sin cobro</translation>
        </message>
        <message>
            <source>No %1</source>
            <translation>Sin %1</translation>
        </message>
        <message>
            <source>%1 would cost you less: %2 instead of %3</source>
            <translation>%1 le costarían menos: %2 en vez de %3</translation>
        </message>
        <message>
            <source>%1 at %2, + %3</source>
            <translation>%1 en %2, + %3</translation>
        </message>
        <message>
            <source>Art and set-up</source>
            <translation>Arte y preparación</translation>
        </message>
        <message>
            <source>Rush, wanted by %1 (%2)</source>
            <translation>Urgencia, pedido para el %1 (%2)</translation>
        </message>
        <message>
            <source>Discount</source>
            <translation>Descuento</translation>
        </message>
        <message>
            <source>Discount (%1)</source>
            <translation>Descuento (%1)</translation>
        </message>
        <message>
            <source>Up to our smallest order, %1</source>
            <translation>Hasta nuestro mínimo del pedido, %1</translation>
        </message>
        <message>
            <source>%1 %2</source>
            <extracomment>A tax and its rate: "Sales tax 8.875 %".</extracomment>
            <translation>%1 %2</translation>
        </message>
        <message>
            <source>%1 %2 on %3</source>
            <extracomment>A tax, its rate and what it is charged on: "Sales tax 8.875 % on 170.40".</extracomment>
            <translation>%1 %2 sobre %3</translation>
        </message>
        <message>
            <source>%1, exempt</source>
            <translation>%1, exento</translation>
        </message>
        <message>
            <source>certificate %1</source>
            <translation>certificado %1</translation>
        </message>
        <message>
            <source>certificate %1, %2</source>
            <translation>certificado %1, %2</translation>
        </message>
        <message>
            <source>Issued %1</source>
            <translation>Emitido el %1</translation>
        </message>
        <message>
            <source>Issued %1, good until %2</source>
            <translation>Emitido el %1, válido hasta el %2</translation>
        </message>
        <message>
            <source>Charged: no exemption certificate in force is on file</source>
            <translation>Se cobra: no consta ningún certificado de exención vigente</translation>
        </message>
        <message>
            <source>Rounded line by line</source>
            <translation>Redondeado línea por línea</translation>
        </message>
        <message>
            <source>%1 %2 is in the price: %3</source>
            <translation>%1 %2 incluido en el precio: %3</translation>
        </message>
        <message>
            <source>Tax is charged as the shop has confirmed it with its authority or accountant.</source>
            <translation>El impuesto se cobra como el negocio lo ha confirmado con su autoridad o contador.</translation>
        </message>
        <message>
            <source>The lines of this quote can no longer be shown as they were given; its total stands.</source>
            <translation>Las líneas de este presupuesto ya no se pueden mostrar como se dieron; su total vale.</translation>
        </message>
        <message>
            <source>Each, before surcharges, set-up, rush, discount and tax</source>
            <translation>Precio c/u, antes de suplementos, preparación, urgencia, descuento e impuesto</translation>
        </message>
        <message>
            <source>Each, before surcharges, set-up, rush, discount</source>
            <translation>Precio c/u, antes de suplementos, preparación, urgencia, descuento</translation>
        </message>
        <message>
            <source>Each, before surcharges, rush, discount and tax</source>
            <translation>Precio c/u, antes de suplementos, urgencia, descuento e impuesto</translation>
        </message>
        <message>
            <source>Each, before surcharges, rush, discount</source>
            <translation>Precio c/u, antes de suplementos, urgencia, descuento</translation>
        </message>
        <message>
            <source>Each, before size surcharges, set-up, rush, discount and tax</source>
            <translation>Precio c/u, antes de suplementos por talla, preparación, urgencia, descuento e impuesto</translation>
        </message>
        <message>
            <source>Each, before size surcharges, set-up, rush, discount</source>
            <translation>Precio c/u, antes de suplementos por talla, preparación, urgencia, descuento</translation>
        </message>
        <message>
            <source>Each, before size surcharges, rush, discount and tax</source>
            <translation>Precio c/u, antes de suplementos por talla, urgencia, descuento e impuesto</translation>
        </message>
        <message>
            <source>Each, before size surcharges, rush, discount</source>
            <translation>Precio c/u, antes de suplementos por talla, urgencia, descuento</translation>
        </message>
        <message>
            <source>Each, before set-up, rush, discount and tax</source>
            <translation>Precio c/u, antes de preparación, urgencia, descuento e impuesto</translation>
        </message>
        <message>
            <source>Each, before set-up, rush, discount</source>
            <translation>Precio c/u, antes de preparación, urgencia, descuento</translation>
        </message>
        <message>
            <source>Each, before rush, discount and tax</source>
            <translation>Precio c/u, antes de urgencia, descuento e impuesto</translation>
        </message>
        <message>
            <source>Each, before rush, discount</source>
            <translation>Precio c/u, antes de urgencia, descuento</translation>
        </message>
        <message>
            <source>Proof</source>
            <translation>Muestra</translation>
        </message>
        <message>
            <source>the stones as they lie, scale %1</source>
            <extracomment>%1 is a scale, "1 : 2".</extracomment>
            <translation>las piedras como van, escala %1</translation>
        </message>
        <message>
            <source>stones a piece</source>
            <translation>piedras por pieza</translation>
        </message>
        <message>
            <source>I agree to the proof</source>
            <translation>Estoy de acuerdo con la muestra</translation>
        </message>
        <message>
            <source>Name</source>
            <translation>Nombre</translation>
        </message>
        <message>
            <source>Day</source>
            <translation>Día</translation>
        </message>
        <message>
            <source>The picture is of another size than this line has.</source>
            <translation>El dibujo es de otro tamaño que el de esta línea.</translation>
        </message>
        <message>
            <source>The picture is of other stones or counts than this line has.</source>
            <translation>El dibujo es de otras piedras o cantidades que las de esta línea.</translation>
        </message>
        <message>
            <source>There is no room for a picture here; ask to see it.</source>
            <translation>Aquí no hay lugar para un dibujo; pida verlo.</translation>
        </message>
    </context>
    <context>
        <name>Shelf</name>
        <message>
            <source>%1 on the shelf</source>
            <translation>%1 en el estante</translation>
        </message>
        <message>
            <source>%1 on the shelf, %2 promised, %3 lacking</source>
            <translation>%1 en el estante, prometido %2, falta %3</translation>
        </message>
        <message>
            <source>%1 on the shelf, %2 promised, %3 free</source>
            <translation>%1 en el estante, prometido %2, libre %3</translation>
        </message>
        <message>
            <source>%1 on the shelf, %2 lacking</source>
            <translation>%1 en el estante, falta %2</translation>
        </message>
        <message>
            <source>%1 on the shelf, %2 free</source>
            <translation>%1 en el estante, libre %2</translation>
        </message>
        <message>
            <source>Nothing was taken off the shelf, for what the job takes is not known: %1</source>
            <translation>No se sacó nada del estante, pues no se sabe lo que lleva el trabajo: %1</translation>
        </message>
        <message>
            <source>The shelf has %1 of “%2” too few; count it, and book what was used besides.</source>
            <translation>Al estante le faltan %1 de «%2»; cuéntelo y anote lo que se usó aparte.</translation>
        </message>
        <message>
            <source>The shelf has %1 of “%2” too few; what of it is there when the job is ready is taken then.</source>
            <translation>Al estante le faltan %1 de «%2»; lo que haya cuando el trabajo esté listo se toma entonces.</translation>
        </message>
        <message>
            <source>For this job %1 of “%2” more were taken than it takes now; what of it is still there, count it in for this job in Supplies.</source>
            <translation>Para este trabajo se tomaron %1 de «%2» más de lo que lleva ahora; lo que aún haya, súmelo al estante para este trabajo en Insumos.</translation>
        </message>
        <message>
            <source>%1 of “%2” stay booked for this job; count in for it what is still there.</source>
            <translation>%1 de «%2» siguen anotados para este trabajo; súmele al estante lo que aún haya.</translation>
        </message>
    </context>
    <context>
        <name>ShopFields</name>
        <message>
            <source>Give the currency, three letters such as USD.</source>
            <translation>Dé la moneda, tres letras como USD.</translation>
        </message>
        <message>
            <source>C&amp;urrency</source>
            <translation>Mon&amp;eda</translation>
        </message>
        <message>
            <source>three letters, such as USD</source>
            <translation>tres letras, como USD</translation>
        </message>
    </context>
    <context>
        <name>Stage</name>
        <message>
            <source>Enquiry</source>
            <translation>Consulta</translation>
        </message>
        <message>
            <source>Quoted</source>
            <translation>Presupuestado</translation>
        </message>
        <message>
            <source>Agreed</source>
            <translation>Acordado</translation>
        </message>
        <message>
            <source>Making</source>
            <translation>En proceso</translation>
        </message>
        <message>
            <source>Ready</source>
            <translation>Listo</translation>
        </message>
        <message>
            <source>Collected</source>
            <translation>Recogido</translation>
        </message>
        <message>
            <source>Let go</source>
            <translation>Descartado</translation>
        </message>
    </context>
    <context>
        <name>Supply</name>
        <message>
            <source>The share lost of %1 must be 0 or more and below 1: change it.</source>
            <translation>La parte perdida de %1 debe ser 0 o más y menor que 1: cámbiela.</translation>
        </message>
        <message>
            <source>Pack %1 gives nothing: say what is in it.</source>
            <translation>El paquete %1 no da nada: diga qué contiene.</translation>
        </message>
        <message>
            <source>Pack %1 must give 1 or more of %2: change its count.</source>
            <translation>El paquete %1 debe dar 1 o más de %2: cambie su cantidad.</translation>
        </message>
        <message>
            <source>Pack %1 has no price: give it one.</source>
            <translation>El paquete %1 no tiene precio: dele uno.</translation>
        </message>
        <message>
            <source>Pack %1 has more than 100 prices: leave some out.</source>
            <translation>El paquete %1 tiene más de 100 precios: quite algunos.</translation>
        </message>
        <message>
            <source>A price of pack %1 must hold from 1 or more packs: change it.</source>
            <translation>Un precio del paquete %1 debe valer desde 1 o más paquetes: cámbielo.</translation>
        </message>
        <message>
            <source>Pack %1 cannot cost less than nothing: change its price.</source>
            <translation>El paquete %1 no puede costar menos que nada: cambie su precio.</translation>
        </message>
        <message>
            <source>Pack %1 cannot be limited to less than none: change the limit.</source>
            <translation>El paquete %1 no se puede limitar a menos que cero: cambie el límite.</translation>
        </message>
        <message>
            <source>Shipping, minimum and free shipping of %1 must be 0 or more: change them.</source>
            <translation>El envío, el mínimo y el envío gratis de %1 deben ser 0 o más: cámbielos.</translation>
        </message>
        <message numerus="yes">
            <source>Pack %1 has two prices from %n packs: keep one.</source>
            <translation>
                <numerusform>El paquete %1 tiene dos precios desde %n paquete: deje uno.</numerusform>
                <numerusform>El paquete %1 tiene dos precios desde %n paquetes: deje uno.</numerusform>
            </translation>
        </message>
        <message>
            <source>Nothing is needed: say what is to be bought.</source>
            <translation>No se necesita nada: diga qué hay que comprar.</translation>
        </message>
        <message>
            <source>The need of %1 must be 0 or more: change it or leave it out.</source>
            <translation>La necesidad de %1 debe ser 0 o más: cámbiela o quítela.</translation>
        </message>
        <message>
            <source>More %1 is needed than the program plans for: need less.</source>
            <translation>Se necesita más %1 de lo que planea el programa: pida menos.</translation>
        </message>
        <message>
            <source>More than 1,000 materials are needed at once: plan for some of them at a time.</source>
            <translation>Se necesitan más de 1000 materiales a la vez: planee para algunos cada vez.</translation>
        </message>
        <message>
            <source>The shelf cannot hold less than no %1: count it again.</source>
            <translation>El estante no puede tener menos que cero de %1: cuéntelo de nuevo.</translation>
        </message>
        <message>
            <source>There are two suppliers %1: keep one.</source>
            <translation>Hay dos proveedores %1: deje uno.</translation>
        </message>
        <message>
            <source>The sums of %1 are larger than the program plans with.</source>
            <translation>Las sumas de %1 son mayores de lo que planea el programa.</translation>
        </message>
        <message>
            <source>There are more than 100,000 packs: leave some out.</source>
            <translation>Hay más de 100 000 paquetes: quite algunos.</translation>
        </message>
        <message>
            <source>There are two packs %1: rename one.</source>
            <translation>Hay dos paquetes %1: cambie el nombre de uno.</translation>
        </message>
        <message>
            <source>Pack %1 is sold by %2, which is not among the suppliers: add it.</source>
            <translation>El paquete %1 lo vende %2, que no está entre los proveedores: añádalo.</translation>
        </message>
        <message>
            <source>The purchase is larger than the program plans for: need less or round the prices.</source>
            <translation>La compra es mayor de lo que planea el programa: pida menos o redondee los precios.</translation>
        </message>
        <message>
            <source>No plan was found that keeps every minimum and every limit: leave out packs or suppliers, or change their minimum.</source>
            <translation>No se halló ningún plan que respete todos los mínimos y límites: quite paquetes o proveedores, o cambie su mínimo.</translation>
        </message>
        <message>
            <source>The price list has no column “%1”; choose its columns anew.</source>
            <translation>La lista de precios no tiene columna «%1»; elija sus columnas de nuevo.</translation>
        </message>
        <message>
            <source>Choose the column that says what is sold.</source>
            <translation>Elija la columna que dice qué se vende.</translation>
        </message>
        <message>
            <source>Choose the column that says the price.</source>
            <translation>Elija la columna que dice el precio.</translation>
        </message>
        <message>
            <source>Line %1 of “%2” goes on after a closing quote; save the list as CSV again.</source>
            <translation>La línea %1 de «%2» sigue tras unas comillas de cierre; guarde la lista como CSV otra vez.</translation>
        </message>
        <message>
            <source>The quote that opens in line %1 of “%2” is never closed; save the list as CSV again.</source>
            <translation>Las comillas que se abren en la línea %1 de «%2» no se cierran nunca; guarde la lista como CSV otra vez.</translation>
        </message>
        <message>
            <source>“%1” is larger than a price list; choose another file.</source>
            <translation>«%1» es mayor que una lista de precios; elija otro archivo.</translation>
        </message>
        <message>
            <source>“%1” is not a list in text; save it as CSV where it was made.</source>
            <translation>«%1» no es una lista en texto; guárdela como CSV donde se hizo.</translation>
        </message>
        <message>
            <source>In line %1 of “%2” a cell is larger than a price list has; choose another file.</source>
            <translation>En la línea %1 de «%2» una celda es mayor que las de una lista de precios; elija otro archivo.</translation>
        </message>
        <message>
            <source>In line %1 of “%2” the number of columns is larger than a price list has; choose another file.</source>
            <translation>En la línea %1 de «%2» hay más columnas de las que tiene una lista de precios; elija otro archivo.</translation>
        </message>
        <message>
            <source>%1 must be either counted or cut from sheets: say which.</source>
            <translation>%1 se debe contar o cortar de láminas: diga cuál de las dos cosas.</translation>
        </message>
        <message>
            <source>The count of %1 must lie between 0 and 1,000,000,000: change it.</source>
            <translation>La cantidad de %1 debe estar entre 0 y 1 000 000 000: cámbiela.</translation>
        </message>
        <message>
            <source>A piece cannot take less than no cut of %1: change it.</source>
            <translation>Una pieza no puede llevar menos que cero cortes de %1: cámbielo.</translation>
        </message>
        <message>
            <source>The sheets of %1 must be 0 or more and serve at least once: change them.</source>
            <translation>Las láminas de %1 deben ser 0 o más y servir al menos una vez: cámbielas.</translation>
        </message>
        <message>
            <source>A kit cannot cost less than nothing: change its price.</source>
            <translation>Un surtido no puede costar menos que nada: cambie su precio.</translation>
        </message>
        <message>
            <source>A kit and a design of more than 200 materials are not compared: leave some out.</source>
            <translation>No se comparan un surtido y un diseño de más de 200 materiales: quite algunos.</translation>
        </message>
        <message>
            <source>The design takes nothing that limits a kit: give it its stones or sheets.</source>
            <translation>El diseño no lleva nada que limite un surtido: dele sus piedras o láminas.</translation>
        </message>
        <message>
            <source>The kit holds more than the program works with: make it smaller.</source>
            <translation>El surtido contiene más de lo que maneja el programa: hágalo menor.</translation>
        </message>
        <message>
            <source>The design “%1” has no stones yet; count them first.</source>
            <translation>El diseño «%1» aún no tiene piedras; cuéntelas antes.</translation>
        </message>
        <message>
            <source>A material of the kit “%1” or its design is no longer in the book; choose it anew.</source>
            <translation>Un material del surtido «%1» o de su diseño ya no está en el libro; elíjalo de nuevo.</translation>
        </message>
        <message>
            <source>The number of kits must be from 1 to 1000.</source>
            <translation>El número de surtidos debe ser de 1 a 1000.</translation>
        </message>
        <message>
            <source>A stone of %1 is no longer among the supplies; choose another.</source>
            <translation>Una piedra de %1 ya no está entre los insumos; elija otra.</translation>
        </message>
        <message>
            <source>What %1 goes on is no longer among the supplies; choose another.</source>
            <translation>La base de %1 ya no está entre los insumos; elija otra.</translation>
        </message>
        <message>
            <source>The order is empty; put a design on it.</source>
            <translation>El pedido está vacío; ponga un diseño en él.</translation>
        </message>
        <message>
            <source>In line %1 of “%2” the number of rows is larger than a price list has; choose another file.</source>
            <translation>En la línea %1 de «%2» hay más filas de las que tiene una lista de precios; elija otro archivo.</translation>
        </message>
        <message>
            <source>The sample must be 1 to 1,000,000 things and weigh something: count some and weigh them without the tray.</source>
            <translation>La muestra debe ser de 1 a 1 000 000 unidades y pesar algo: cuente algunas y péselas sin la bandeja.</translation>
        </message>
        <message>
            <source>A weight must be a number of grams from 0 to 1,000,000: change %1.</source>
            <translation>Un peso debe ser un número de gramos de 0 a 1 000 000: cambie %1.</translation>
        </message>
        <message>
            <source>%1 g on the scale is less than the %2 g of the empty tray: weigh again.</source>
            <translation>%1 g en la báscula es menos que los %2 g de la bandeja vacía: pese de nuevo.</translation>
        </message>
        <message>
            <source>A scale in steps of %1 g cannot weigh a sample of %2 g: count a larger sample.</source>
            <translation>Una báscula con pasos de %1 g no puede pesar una muestra de %2 g: cuente una muestra mayor.</translation>
        </message>
        <message>
            <source>That would be more than %1 things: check the weights.</source>
            <translation>Serían más de %1 unidades: revise los pesos.</translation>
        </message>
        <message>
            <source>There is no material of this name in the book; say what the row is, or add the material.</source>
            <translation>No hay ningún material con este nombre en el libro; diga qué es la fila o añada el material.</translation>
        </message>
        <message>
            <source>There is no stone %1 %2 in the book; have it made, or say what the row is.</source>
            <translation>No hay ninguna piedra %1 %2 en el libro; haga que se cree o diga qué es la fila.</translation>
        </message>
        <message>
            <source>Several stones in the book have this colour and size; say which it is.</source>
            <translation>Varias piedras del libro tienen este color y tamaño; diga cuál es.</translation>
        </message>
        <message>
            <source>“%1” is no size of stones that the program knows; say what the row is.</source>
            <translation>«%1» no es un tamaño de piedra que conozca el programa; diga qué es la fila.</translation>
        </message>
        <message>
            <source>How many are in a pack “%1” cannot be told; write a number in the list.</source>
            <translation>No se puede saber cuántas hay en un paquete «%1»; escriba un número en la lista.</translation>
        </message>
        <message>
            <source>Its price is not above nothing; ask the supplier.</source>
            <translation>Su precio no es mayor que cero; pregunte al proveedor.</translation>
        </message>
        <message>
            <source>Its price holds from less than one pack on; ask the supplier.</source>
            <translation>Su precio vale desde menos de un paquete; pregunte al proveedor.</translation>
        </message>
        <message>
            <source>The list gives a second price for this pack; take one out.</source>
            <translation>La lista da un segundo precio de este paquete; quite uno.</translation>
        </message>
        <message>
            <source>There is nothing in this pack; ask the supplier.</source>
            <translation>No hay nada en este paquete; pregunte al proveedor.</translation>
        </message>
        <message>
            <source>The name of its pack is too long; shorten it.</source>
            <translation>El nombre de su paquete es demasiado largo; acórtelo.</translation>
        </message>
        <message>
            <source>This pack is not in the book and the list does not say how many are in it; add the pack first.</source>
            <translation>Este paquete no está en el libro y la lista no dice cuántas contiene; añada antes el paquete.</translation>
        </message>
        <message>
            <source>The list gives this pack two different contents; ask the supplier.</source>
            <translation>La lista da a este paquete dos contenidos distintos; pregunte al proveedor.</translation>
        </message>
        <message>
            <source>Another row of this pack cannot be taken, so its prices stay as they are.</source>
            <translation>Otra fila de este paquete no se puede tomar, así que sus precios se quedan como están.</translation>
        </message>
        <message>
            <source>The list does not give the price of one pack; ask the supplier.</source>
            <translation>La lista no da el precio de un solo paquete; pregunte al proveedor.</translation>
        </message>
        <message>
            <source>The price of pack %1 rises from %2 packs on: check it.</source>
            <translation>El precio del paquete %1 sube desde %2 paquetes: revíselo.</translation>
        </message>
        <message>
            <source>the minimum order of %1 cannot be reached, and %2 is not to be had otherwise</source>
            <translation>no se puede alcanzar el pedido mínimo de %1, y %2 no se consigue de otro modo</translation>
        </message>
        <message>
            <source>the packs that give %1 cannot be had</source>
            <translation>los paquetes que dan %1 no se consiguen</translation>
        </message>
        <message>
            <source>no pack gives %1</source>
            <translation>ningún paquete da %1</translation>
        </message>
        <message>
            <source>the packs that give %1 hold %2 at most, and %3 must be bought</source>
            <translation>los paquetes que dan %1 contienen %2 a lo sumo, y hay que comprar %3</translation>
        </message>
        <message>
            <source>%1 come only with a kit: the shop cuts none itself.</source>
            <translation>%1 solo vienen con un surtido: el negocio no las corta.</translation>
        </message>
        <message>
            <source>%1 come with no kit, and the shop cuts none itself: add a kit that has them.</source>
            <translation>%1 no vienen con ningún surtido y el negocio no las corta: añada un surtido que las tenga.</translation>
        </message>
        <message>
            <source>%1 is sold without a price: give its packs one in Supplies, or say there that 0.00 is meant.</source>
            <translation>%1 se vende sin precio: dé uno a sus paquetes en Insumos o diga allí que va a 0.00.</translation>
        </message>
        <message>
            <source>No supplier sells %1: add a pack of it in Supplies.</source>
            <translation>Ningún proveedor vende %1: añada un paquete en Insumos.</translation>
        </message>
        <message>
            <source>There is no kit in the book: add one in Supplies.</source>
            <translation>No hay ningún surtido en el libro: añada uno en Insumos.</translation>
        </message>
        <message>
            <source>No kit holds %1.</source>
            <translation>Ningún surtido contiene %1.</translation>
        </message>
        <message>
            <source>Nothing of it was used in these days: look at more of them.</source>
            <translation>En estos días no se usó nada de ello: mire más días.</translation>
        </message>
        <message>
            <source>The lead time must be 0 to %1 days: change it with the supplier.</source>
            <translation>El plazo de entrega debe ser de 0 a %1 días: cámbielo en el proveedor.</translation>
        </message>
        <message>
            <source>So much was used that no order can be worked out: look at fewer days.</source>
            <translation>Se usó tanto que no se puede calcular un pedido: mire menos días.</translation>
        </message>
        <message>
            <source>How much to order is known once an order and keeping a pack cost something: give both.</source>
            <translation>Cuánto pedir se sabe cuando un pedido y guardar un paquete cuestan algo: dé ambos.</translation>
        </message>
        <message>
            <source>How much to order is not known, for its usual pack has no price: say what the pack costs.</source>
            <translation>No se sabe cuánto pedir, pues su paquete habitual no tiene precio: diga lo que cuesta el paquete.</translation>
        </message>
        <message>
            <source>An order would be of more than %1 packs: check what an order and keeping a pack cost.</source>
            <translation>Un pedido sería de más de %1 paquetes: revise lo que cuestan un pedido y guardar un paquete.</translation>
        </message>
    </context>
    <context>
        <name>Terms</name>
        <message>
            <source>address</source>
            <translation>dirección</translation>
        </message>
        <message>
            <source>address of the shop</source>
            <translation>dirección del negocio</translation>
        </message>
        <message>
            <source>allowance for garments</source>
            <translation>provisión para prendas</translation>
        </message>
        <message>
            <source>allowance of the holes</source>
            <translation>holgura de los agujeros</translation>
        </message>
        <message>
            <source>amount</source>
            <translation>cantidad</translation>
        </message>
        <message>
            <source>amount in a pack</source>
            <translation>cantidad en un paquete</translation>
        </message>
        <message>
            <source>art and cutting paid off</source>
            <translation>arte y corte amortizados</translation>
        </message>
        <message>
            <source>art time</source>
            <translation>tiempo de arte</translation>
        </message>
        <message>
            <source>at no charge</source>
            <translation>sin cobro</translation>
        </message>
        <message>
            <source>base</source>
            <translation>base</translation>
        </message>
        <message>
            <source>bench</source>
            <translation>taller</translation>
        </message>
        <message>
            <source>bench hours of a month</source>
            <translation>horas de taller de un mes</translation>
        </message>
        <message>
            <source>bench time on Friday</source>
            <translation>tiempo de taller el viernes</translation>
        </message>
        <message>
            <source>bench time on Monday</source>
            <translation>tiempo de taller el lunes</translation>
        </message>
        <message>
            <source>bench time on Saturday</source>
            <translation>tiempo de taller el sábado</translation>
        </message>
        <message>
            <source>bench time on Sunday</source>
            <translation>tiempo de taller el domingo</translation>
        </message>
        <message>
            <source>bench time on Thursday</source>
            <translation>tiempo de taller el jueves</translation>
        </message>
        <message>
            <source>bench time on Tuesday</source>
            <translation>tiempo de taller el martes</translation>
        </message>
        <message>
            <source>bench time on Wednesday</source>
            <translation>tiempo de taller el miércoles</translation>
        </message>
        <message>
            <source>bench times</source>
            <translation>tiempos de taller</translation>
        </message>
        <message>
            <source>bench hours of a week</source>
            <translation>horas de taller de una semana</translation>
        </message>
        <message>
            <source>border</source>
            <translation>borde</translation>
        </message>
        <message>
            <source>card fee</source>
            <translation>comisión de tarjeta</translation>
        </message>
        <message>
            <source>card fee rate</source>
            <translation>tasa de la comisión de tarjeta</translation>
        </message>
        <message>
            <source>care notes</source>
            <translation>notas de cuidado</translation>
        </message>
        <message>
            <source>certificate</source>
            <translation>certificado</translation>
        </message>
        <message>
            <source>certificate number</source>
            <translation>número de certificado</translation>
        </message>
        <message>
            <source>charge for setting up</source>
            <translation>cobro de la preparación</translation>
        </message>
        <message>
            <source>choice looked at</source>
            <translation>opción a la vista</translation>
        </message>
        <message>
            <source>choice taken</source>
            <translation>opción tomada</translation>
        </message>
        <message>
            <source>closed days</source>
            <translation>días cerrados</translation>
        </message>
        <message>
            <source>first closed day</source>
            <translation>primer día cerrado</translation>
        </message>
        <message>
            <source>last closed day</source>
            <translation>último día cerrado</translation>
        </message>
        <message>
            <source>colour</source>
            <translation>color</translation>
        </message>
        <message>
            <source>colour in the drawing</source>
            <translation>color en el dibujo</translation>
        </message>
        <message>
            <source>colour on the screen</source>
            <translation>color en pantalla</translation>
        </message>
        <message>
            <source>columns of the price list</source>
            <translation>columnas de la lista de precios</translation>
        </message>
        <message>
            <source>contents</source>
            <translation>contenido</translation>
        </message>
        <message>
            <source>cost</source>
            <translation>costo</translation>
        </message>
        <message>
            <source>cost of art and cutting</source>
            <translation>costo del arte y el corte</translation>
        </message>
        <message>
            <source>cost of the set of templates</source>
            <translation>costo del juego de plantillas</translation>
        </message>
        <message>
            <source>cost of the templates</source>
            <translation>costo de las plantillas</translation>
        </message>
        <message>
            <source>counts of the drawing</source>
            <translation>cuentas del dibujo</translation>
        </message>
        <message>
            <source>currency</source>
            <translation>moneda</translation>
        </message>
        <message>
            <source>customer</source>
            <translation>cliente</translation>
        </message>
        <message>
            <source>customer's garment</source>
            <translation>prenda del cliente</translation>
        </message>
        <message>
            <source>cutter</source>
            <translation>cortadora</translation>
        </message>
        <message>
            <source>day</source>
            <translation>día</translation>
        </message>
        <message>
            <source>day it is wanted</source>
            <translation>fecha pedida</translation>
        </message>
        <message>
            <source>day of expiry</source>
            <translation>fecha de vencimiento</translation>
        </message>
        <message>
            <source>day of issue</source>
            <translation>fecha de emisión</translation>
        </message>
        <message>
            <source>day of the price</source>
            <translation>fecha del precio</translation>
        </message>
        <message>
            <source>days to pay an invoice</source>
            <translation>días para pagar una factura</translation>
        </message>
        <message>
            <source>days a quote is valid</source>
            <translation>días de validez de un presupuesto</translation>
        </message>
        <message>
            <source>days of a rush surcharge</source>
            <translation>días de un suplemento por urgencia</translation>
        </message>
        <message>
            <source>decimal comma</source>
            <translation>coma decimal</translation>
        </message>
        <message>
            <source>demo mark</source>
            <translation>marca de demostración</translation>
        </message>
        <message>
            <source>deposit</source>
            <translation>anticipo</translation>
        </message>
        <message>
            <source>design</source>
            <translation>diseño</translation>
        </message>
        <message>
            <source>direction</source>
            <translation>sentido</translation>
        </message>
        <message>
            <source>discount</source>
            <translation>descuento</translation>
        </message>
        <message>
            <source>drawing</source>
            <translation>dibujo</translation>
        </message>
        <message>
            <source>dwell</source>
            <translation>tiempo de prensado</translation>
        </message>
        <message>
            <source>ending of a price</source>
            <translation>terminación de un precio</translation>
        </message>
        <message>
            <source>exemption</source>
            <translation>exención</translation>
        </message>
        <message>
            <source>extra cost of a size</source>
            <translation>costo extra de una talla</translation>
        </message>
        <message>
            <source>whether the first steps are shown</source>
            <translation>si se muestran los primeros pasos</translation>
        </message>
        <message>
            <source>fixed card fee</source>
            <translation>comisión fija de tarjeta</translation>
        </message>
        <message>
            <source>fixed price</source>
            <translation>precio fijo</translation>
        </message>
        <message>
            <source>form</source>
            <translation>forma</translation>
        </message>
        <message>
            <source>freight in</source>
            <translation>flete de compra</translation>
        </message>
        <message>
            <source>share of freight</source>
            <translation>proporción de flete</translation>
        </message>
        <message>
            <source>further tax rates</source>
            <translation>otras tasas de impuesto</translation>
        </message>
        <message>
            <source>gap</source>
            <translation>separación</translation>
        </message>
        <message>
            <source>handling at the press</source>
            <translation>manejo en la prensa</translation>
        </message>
        <message>
            <source>heading of a column</source>
            <translation>encabezado de una columna</translation>
        </message>
        <message>
            <source>height</source>
            <translation>alto</translation>
        </message>
        <message>
            <source>height of the platen</source>
            <translation>alto de la placa</translation>
        </message>
        <message>
            <source>key</source>
            <translation>clave</translation>
        </message>
        <message>
            <source>kind</source>
            <translation>tipo</translation>
        </message>
        <message>
            <source>kind of file</source>
            <translation>tipo de archivo</translation>
        </message>
        <message>
            <source>kind of payment</source>
            <translation>tipo de pago</translation>
        </message>
        <message>
            <source>kind of price</source>
            <translation>tipo de precio</translation>
        </message>
        <message>
            <source>labour rate</source>
            <translation>tarifa de mano de obra</translation>
        </message>
        <message>
            <source>ladder on the sheet</source>
            <translation>tramos en la hoja</translation>
        </message>
        <message>
            <source>language</source>
            <translation>idioma</translation>
        </message>
        <message>
            <source>language of papers</source>
            <translation>idioma de los documentos</translation>
        </message>
        <message>
            <source>last day</source>
            <translation>último día</translation>
        </message>
        <message>
            <source>lead time in days</source>
            <translation>plazo en días</translation>
        </message>
        <message>
            <source>learning rate</source>
            <translation>tasa de aprendizaje</translation>
        </message>
        <message>
            <source>letterhead</source>
            <translation>membrete</translation>
        </message>
        <message>
            <source>life of the cutter</source>
            <translation>vida útil de la cortadora</translation>
        </message>
        <message>
            <source>life of the press</source>
            <translation>vida útil de la prensa</translation>
        </message>
        <message>
            <source>lines</source>
            <translation>líneas</translation>
        </message>
        <message>
            <source>mail address</source>
            <translation>correo</translation>
        </message>
        <message>
            <source>loss</source>
            <translation>pérdida</translation>
        </message>
        <message>
            <source>margin</source>
            <translation>margen</translation>
        </message>
        <message>
            <source>mark-up</source>
            <translation>recargo</translation>
        </message>
        <message>
            <source>material</source>
            <translation>material</translation>
        </message>
        <message>
            <source>materials</source>
            <translation>materiales</translation>
        </message>
        <message>
            <source>meaning of a column</source>
            <translation>significado de una columna</translation>
        </message>
        <message>
            <source>what is meant to cost nothing</source>
            <translation>lo que adrede no cuesta nada</translation>
        </message>
        <message>
            <source>moment</source>
            <translation>momento</translation>
        </message>
        <message>
            <source>more for less on the sheet</source>
            <translation>más por menos en la hoja</translation>
        </message>
        <message>
            <source>what the movement was</source>
            <translation>qué fue el movimiento</translation>
        </message>
        <message>
            <source>job it was for</source>
            <translation>trabajo para el que fue</translation>
        </message>
        <message>
            <source>when supplies count as used</source>
            <translation>cuándo se dan por usados los insumos</translation>
        </message>
        <message>
            <source>movement it takes back</source>
            <translation>movimiento que anula</translation>
        </message>
        <message>
            <source>name</source>
            <translation>nombre</translation>
        </message>
        <message>
            <source>name of a size</source>
            <translation>nombre de una talla</translation>
        </message>
        <message>
            <source>name of the file</source>
            <translation>nombre del archivo</translation>
        </message>
        <message>
            <source>name of the shop</source>
            <translation>nombre del negocio</translation>
        </message>
        <message>
            <source>name of the tax</source>
            <translation>nombre del impuesto</translation>
        </message>
        <message>
            <source>note</source>
            <translation>nota</translation>
        </message>
        <message>
            <source>number</source>
            <translation>número</translation>
        </message>
        <message>
            <source>number in the kit</source>
            <translation>número en el surtido</translation>
        </message>
        <message>
            <source>number it is for</source>
            <translation>número para el que es</translation>
        </message>
        <message>
            <source>number of a size</source>
            <translation>número de una talla</translation>
        </message>
        <message>
            <source>number of lifts</source>
            <translation>número de levantadas</translation>
        </message>
        <message>
            <source>number of packs</source>
            <translation>número de paquetes</translation>
        </message>
        <message>
            <source>number of packing</source>
            <translation>cantidad de empaque</translation>
        </message>
        <message>
            <source>number of stones</source>
            <translation>número de piedras</translation>
        </message>
        <message>
            <source>number of test presses</source>
            <translation>número de prensados de prueba</translation>
        </message>
        <message>
            <source>order</source>
            <translation>pedido</translation>
        </message>
        <message>
            <source>origin of the price</source>
            <translation>origen del precio</translation>
        </message>
        <message>
            <source>origin of the scale</source>
            <translation>origen de la escala</translation>
        </message>
        <message>
            <source>further certificates</source>
            <translation>otros certificados</translation>
        </message>
        <message>
            <source>other choices</source>
            <translation>otras opciones</translation>
        </message>
        <message>
            <source>overhead</source>
            <translation>gastos generales</translation>
        </message>
        <message>
            <source>packing</source>
            <translation>empaque</translation>
        </message>
        <message>
            <source>paper</source>
            <translation>papel</translation>
        </message>
        <message>
            <source>payment it is part of</source>
            <translation>pago del que es parte</translation>
        </message>
        <message>
            <source>payment it takes back</source>
            <translation>pago que anula</translation>
        </message>
        <message>
            <source>pieces of a design counted together</source>
            <translation>piezas de un diseño contadas juntas</translation>
        </message>
        <message>
            <source>pieces sold</source>
            <translation>piezas vendidas</translation>
        </message>
        <message>
            <source>place on the piece</source>
            <translation>lugar en la pieza</translation>
        </message>
        <message>
            <source>places on the piece</source>
            <translation>lugares en la pieza</translation>
        </message>
        <message>
            <source>place of a surcharge</source>
            <translation>lugar de un suplemento</translation>
        </message>
        <message>
            <source>place of the certificate</source>
            <translation>lugar del certificado</translation>
        </message>
        <message>
            <source>planned pieces</source>
            <translation>piezas previstas</translation>
        </message>
        <message>
            <source>press</source>
            <translation>prensa</translation>
        </message>
        <message>
            <source>price</source>
            <translation>precio</translation>
        </message>
        <message>
            <source>price of the cutter</source>
            <translation>precio de la cortadora</translation>
        </message>
        <message>
            <source>price of the press</source>
            <translation>precio de la prensa</translation>
        </message>
        <message>
            <source>price rules</source>
            <translation>reglas de precio</translation>
        </message>
        <message>
            <source>price with templates cut</source>
            <translation>precio con plantillas cortadas</translation>
        </message>
        <message>
            <source>prices</source>
            <translation>precios</translation>
        </message>
        <message>
            <source>prices of more packs</source>
            <translation>precios por más paquetes</translation>
        </message>
        <message>
            <source>quantities of the ladder</source>
            <translation>cantidades de los tramos</translation>
        </message>
        <message>
            <source>quantity</source>
            <translation>cantidad</translation>
        </message>
        <message>
            <source>quantity of a mark-up</source>
            <translation>cantidad de un recargo</translation>
        </message>
        <message>
            <source>quote before</source>
            <translation>presupuesto anterior</translation>
        </message>
        <message>
            <source>quote it revises</source>
            <translation>presupuesto que modifica</translation>
        </message>
        <message>
            <source>rates</source>
            <translation>tarifas</translation>
        </message>
        <message>
            <source>what the row of the ledger is</source>
            <translation>qué es la fila del registro</translation>
        </message>
        <message>
            <source>rounding</source>
            <translation>redondeo</translation>
        </message>
        <message>
            <source>rounding of the tax</source>
            <translation>redondeo del impuesto</translation>
        </message>
        <message>
            <source>running cost of the press</source>
            <translation>costo de uso de la prensa</translation>
        </message>
        <message>
            <source>rush surcharge</source>
            <translation>suplemento por urgencia</translation>
        </message>
        <message>
            <source>salvage of the cutter</source>
            <translation>valor final de la cortadora</translation>
        </message>
        <message>
            <source>salvage of the press</source>
            <translation>valor final de la prensa</translation>
        </message>
        <message>
            <source>entry of the same person</source>
            <translation>registro de la misma persona</translation>
        </message>
        <message>
            <source>scale</source>
            <translation>escala</translation>
        </message>
        <message>
            <source>second dwell</source>
            <translation>segundo tiempo de prensado</translation>
        </message>
        <message>
            <source>share of second presses</source>
            <translation>proporción de segundos prensados</translation>
        </message>
        <message>
            <source>sheet</source>
            <translation>lámina</translation>
        </message>
        <message>
            <source>shipping</source>
            <translation>envío</translation>
        </message>
        <message>
            <source>shop</source>
            <translation>negocio</translation>
        </message>
        <message>
            <source>short count</source>
            <translation>conteo corto</translation>
        </message>
        <message>
            <source>size</source>
            <translation>tamaño</translation>
        </message>
        <message>
            <source>sizes</source>
            <translation>tallas</translation>
        </message>
        <message>
            <source>small picture</source>
            <translation>imagen pequeña</translation>
        </message>
        <message>
            <source>name of the way to pay</source>
            <translation>nombre de la forma de pago</translation>
        </message>
        <message>
            <source>paid in cash</source>
            <translation>pagado en efectivo</translation>
        </message>
        <message>
            <source>ways to pay</source>
            <translation>formas de pago</translation>
        </message>
        <message>
            <source>smallest coin</source>
            <translation>moneda más pequeña</translation>
        </message>
        <message>
            <source>smallest order</source>
            <translation>mínimo del pedido</translation>
        </message>
        <message>
            <source>spares</source>
            <translation>reserva</translation>
        </message>
        <message>
            <source>spoilage</source>
            <translation>merma</translation>
        </message>
        <message>
            <source>stage</source>
            <translation>etapa</translation>
        </message>
        <message>
            <source>step of the deposit</source>
            <translation>paso del anticipo</translation>
        </message>
        <message>
            <source>step of the rounding</source>
            <translation>paso del redondeo</translation>
        </message>
        <message>
            <source>stone</source>
            <translation>piedra</translation>
        </message>
        <message>
            <source>stone size</source>
            <translation>tamaño de piedra</translation>
        </message>
        <message>
            <source>item number</source>
            <translation>número de artículo</translation>
        </message>
        <message>
            <source>stones</source>
            <translation>piedras</translation>
        </message>
        <message>
            <source>sum for free shipping</source>
            <translation>importe para envío gratis</translation>
        </message>
        <message>
            <source>supplier</source>
            <translation>proveedor</translation>
        </message>
        <message>
            <source>surcharge of a place</source>
            <translation>suplemento de un lugar</translation>
        </message>
        <message>
            <source>surcharge of a size</source>
            <translation>suplemento de una talla</translation>
        </message>
        <message>
            <source>surcharges by place</source>
            <translation>suplementos por lugar</translation>
        </message>
        <message>
            <source>tax</source>
            <translation>impuesto</translation>
        </message>
        <message>
            <source>tax in the price</source>
            <translation>impuesto incluido en el precio</translation>
        </message>
        <message>
            <source>tax mark</source>
            <translation>marca de impuesto</translation>
        </message>
        <message>
            <source>tax rate</source>
            <translation>tasa de impuesto</translation>
        </message>
        <message>
            <source>tax on what is given away</source>
            <translation>impuesto sobre lo regalado</translation>
        </message>
        <message>
            <source>tax rate of a line</source>
            <translation>tasa de impuesto de una línea</translation>
        </message>
        <message>
            <source>telephone</source>
            <translation>teléfono</translation>
        </message>
        <message>
            <source>temperature</source>
            <translation>temperatura</translation>
        </message>
        <message>
            <source>templates on the wall</source>
            <translation>plantillas en la pared</translation>
        </message>
        <message>
            <source>terms</source>
            <translation>condiciones</translation>
        </message>
        <message>
            <source>time for 100 stones</source>
            <translation>tiempo por 100 piedras</translation>
        </message>
        <message>
            <source>time for a press cycle</source>
            <translation>tiempo por ciclo de prensa</translation>
        </message>
        <message>
            <source>time for a colour</source>
            <translation>tiempo por color</translation>
        </message>
        <message>
            <source>time for a job</source>
            <translation>tiempo por trabajo</translation>
        </message>
        <message>
            <source>time for a piece</source>
            <translation>tiempo por pieza</translation>
        </message>
        <message>
            <source>title</source>
            <translation>título</translation>
        </message>
        <message>
            <source>title of a choice</source>
            <translation>título de una opción</translation>
        </message>
        <message>
            <source>tools</source>
            <translation>herramientas</translation>
        </message>
        <message>
            <source>total</source>
            <translation>total</translation>
        </message>
        <message>
            <source>typed price</source>
            <translation>precio escrito</translation>
        </message>
        <message>
            <source>unit of length</source>
            <translation>unidad de longitud</translation>
        </message>
        <message>
            <source>unit of temperature</source>
            <translation>unidad de temperatura</translation>
        </message>
        <message>
            <source>unit of the drawing</source>
            <translation>unidad del dibujo</translation>
        </message>
        <message>
            <source>usual base</source>
            <translation>base habitual</translation>
        </message>
        <message>
            <source>usual order</source>
            <translation>pedido habitual</translation>
        </message>
        <message>
            <source>usual pack</source>
            <translation>paquete habitual</translation>
        </message>
        <message>
            <source>usual tape</source>
            <translation>cinta habitual</translation>
        </message>
        <message>
            <source>usual template</source>
            <translation>plantilla habitual</translation>
        </message>
        <message>
            <source>warm-up</source>
            <translation>calentamiento</translation>
        </message>
        <message>
            <source>way of charging</source>
            <translation>modo de cobrar</translation>
        </message>
        <message>
            <source>what packing goes with</source>
            <translation>con qué va el empaque</translation>
        </message>
        <message>
            <source>what tells a choice from the others</source>
            <translation>lo que distingue una opción de las demás</translation>
        </message>
        <message>
            <source>why the bench is closed</source>
            <translation>por qué está cerrado el taller</translation>
        </message>
        <message>
            <source>width</source>
            <translation>ancho</translation>
        </message>
        <message>
            <source>width of the platen</source>
            <translation>ancho de la placa</translation>
        </message>
        <message>
            <source>Allowance for a customer's garment</source>
            <translation>Provisión para la prenda de un cliente</translation>
        </message>
        <message>
            <source>Art and cutting paid off</source>
            <translation>Arte y corte amortizados</translation>
        </message>
        <message>
            <source>Bench hours a month</source>
            <translation>Horas de taller al mes</translation>
        </message>
        <message>
            <source>Bench times</source>
            <translation>Tiempos de taller</translation>
        </message>
        <message>
            <source>Card fee</source>
            <translation>Comisión de tarjeta</translation>
        </message>
        <message>
            <source>Charge for set-up</source>
            <translation>Cobro de la preparación</translation>
        </message>
        <message>
            <source>Currency</source>
            <translation>Moneda</translation>
        </message>
        <message>
            <source>Cutter</source>
            <translation>Cortadora</translation>
        </message>
        <message>
            <source>Deposit</source>
            <translation>Anticipo</translation>
        </message>
        <message>
            <source>Labour an hour</source>
            <translation>Mano de obra por hora</translation>
        </message>
        <message>
            <source>what is lost</source>
            <translation>lo que se pierde</translation>
        </message>
        <message>
            <source>Mark-up ladder</source>
            <translation>Tramos de recargo</translation>
        </message>
        <message>
            <source>Overhead a month</source>
            <translation>Gastos generales al mes</translation>
        </message>
        <message>
            <source>Packing</source>
            <translation>Empaque</translation>
        </message>
        <message>
            <source>Pieces of a design counted over lines</source>
            <translation>Piezas de un diseño contadas entre líneas</translation>
        </message>
        <message>
            <source>Heat press</source>
            <translation>Prensa de calor</translation>
        </message>
        <message>
            <source>Rounding of prices</source>
            <translation>Redondeo de precios</translation>
        </message>
        <message>
            <source>Rush surcharges</source>
            <translation>Suplementos por urgencia</translation>
        </message>
        <message>
            <source>its sheet</source>
            <translation>su lámina</translation>
        </message>
        <message>
            <source>its sizes</source>
            <translation>sus tallas</translation>
        </message>
        <message>
            <source>Smallest order</source>
            <translation>Mínimo del pedido</translation>
        </message>
        <message>
            <source>Spoilage</source>
            <translation>Merma</translation>
        </message>
        <message>
            <source>Surcharges by place</source>
            <translation>Suplementos por lugar</translation>
        </message>
        <message>
            <source>Tax</source>
            <translation>Impuesto</translation>
        </message>
        <message>
            <source>Usual tape</source>
            <translation>Cinta habitual</translation>
        </message>
        <message>
            <source>Usual template sheet</source>
            <translation>Lámina de plantilla habitual</translation>
        </message>
    </context>
    <context>
        <name>Units</name>
        <message>
            <source>A currency is three capital letters, such as USD or EUR.</source>
            <translation>Una moneda son tres letras mayúsculas, como USD o EUR.</translation>
        </message>
        <message>
            <source>“%1” is not a day; write it as 2026-12-11 (year-month-day).</source>
            <translation>«%1» no es una fecha; escríbala como 2026-12-11 (año-mes-día).</translation>
        </message>
        <message>
            <source>This text is too long for %1; type at most 200 characters.</source>
            <translation>Este texto es demasiado largo para %1; escriba 200 caracteres a lo sumo.</translation>
        </message>
        <message>
            <source>This text is damaged and cannot be read as %1; type it again.</source>
            <translation>Este texto está dañado y no se puede leer como %1; escríbalo de nuevo.</translation>
        </message>
        <message>
            <source>Nothing is typed here; type %1 such as %2.</source>
            <translation>Aquí no hay nada escrito; escriba %1 como %2.</translation>
        </message>
        <message>
            <source>%1 has a unit too many, %2; remove it.</source>
            <translation>%1 tiene una unidad de más, %2; quítela.</translation>
        </message>
        <message>
            <source>%1 has %2, which cannot be read here; %3.</source>
            <translation>%1 tiene %2, que aquí no se puede leer; %3.</translation>
        </message>
        <message>
            <source>%1 needs a sign or a unit before %2; put +, -, * or / there.</source>
            <translation>A %1 le falta un signo o una unidad antes de %2; ponga ahí +, -, * o /.</translation>
        </message>
        <message>
            <source>%1 has a closing bracket too many; remove it.</source>
            <translation>%1 tiene un paréntesis de cierre de más; quítelo.</translation>
        </message>
        <message>
            <source>%1 has %2, which cannot be read here; remove it.</source>
            <translation>%1 tiene %2, que aquí no se puede leer; quítelo.</translation>
        </message>
        <message>
            <source>%1 divides %2 by %2, which leaves a plain number; divide by a plain number.</source>
            <translation>%1 divide %2 entre %2, lo que deja un número solo; divida entre un número solo.</translation>
        </message>
        <message>
            <source>%1 could be a range; type one number, or give both numbers a unit.</source>
            <translation>%1 podría ser un intervalo; escriba un solo número o dé una unidad a los dos.</translation>
        </message>
        <message>
            <source>%1 could be a size of two lengths; type one length, or * to multiply.</source>
            <translation>%1 podría ser un tamaño de dos longitudes; escriba una longitud o * para multiplicar.</translation>
        </message>
        <message>
            <source>%1 divides by nothing; change the number after the division sign.</source>
            <translation>%1 divide entre cero; cambie el número tras el signo de división.</translation>
        </message>
        <message>
            <source>%1 has more than 50 brackets inside each other; use fewer.</source>
            <translation>%1 tiene más de 50 paréntesis unos dentro de otros; use menos.</translation>
        </message>
        <message>
            <source>%1 has a bracket that is not closed; add a closing bracket.</source>
            <translation>%1 tiene un paréntesis sin cerrar; añada uno de cierre.</translation>
        </message>
        <message>
            <source>%1 could add or subtract the inches; put a space or " - " after the feet.</source>
            <translation>%1 podría sumar o restar las pulgadas; ponga un espacio o " - " tras los pies.</translation>
        </message>
        <message>
            <source>%1 is not minutes and seconds; type 1:30, or 1 h 30 min, with seconds below 60.</source>
            <translation>%1 no son minutos y segundos; escriba 1:30, o 1 h 30 min, con segundos menores de 60.</translation>
        </message>
        <message>
            <source>%1 could mean %2 %3 or %2 - %3; write one of these.</source>
            <translation>%1 podría significar %2 %3 o %2 - %3; escriba uno de los dos.</translation>
        </message>
        <message>
            <source>%1 adds a plain number to %2; give every part of the sum a unit.</source>
            <translation>%1 suma un número solo a %2; dé una unidad a cada parte de la suma.</translation>
        </message>
        <message>
            <source>%1 multiplies %2 by %2; multiply by a plain number.</source>
            <translation>%1 multiplica %2 por %2; multiplique por un número solo.</translation>
        </message>
        <message>
            <source>%1 divides by %2; divide by a plain number.</source>
            <translation>%1 divide entre %2; divida entre un número solo.</translation>
        </message>
        <message>
            <source>%1 could mean %2 or %3; write one of these.</source>
            <translation>%1 podría significar %2 o %3; escriba uno de los dos.</translation>
        </message>
        <message>
            <source>%1 has %2, which could mean %3 or %4; write one of these.</source>
            <translation>%1 tiene %2, que podría significar %3 o %4; escriba uno de los dos.</translation>
        </message>
        <message>
            <source>%1 is written with a power of ten; write the number out in full.</source>
            <translation>%1 está escrito con una potencia de diez; escriba el número completo.</translation>
        </message>
        <message>
            <source>%1 has a number of more than 30 digits; use fewer.</source>
            <translation>%1 tiene un número de más de 30 cifras; use menos.</translation>
        </message>
        <message>
            <source>%1 has marks in odd places; write at most one decimal mark.</source>
            <translation>%1 tiene signos en lugares extraños; escriba a lo sumo un signo decimal.</translation>
        </message>
        <message>
            <source>%1 has %2, which has marks in odd places; write at most one decimal mark.</source>
            <translation>%1 tiene %2, con signos en lugares extraños; escriba a lo sumo un signo decimal.</translation>
        </message>
        <message>
            <source>%1 stops where a number should stand; type %2 such as %3.</source>
            <translation>%1 se detiene donde debería haber un número; escriba %2 como %3.</translation>
        </message>
        <message>
            <source>%1 is not a number; type %2 such as %3.</source>
            <translation>%1 no es un número; escriba %2 como %3.</translation>
        </message>
        <message>
            <source>%1 has %2 where a number should stand; type %3 such as %4.</source>
            <translation>%1 tiene %2 donde debería haber un número; escriba %3 como %4.</translation>
        </message>
        <message>
            <source>%1 leads to figures too large or too fine to work with; use fewer digits.</source>
            <translation>%1 lleva a cifras demasiado grandes o finas para manejarlas; use menos cifras.</translation>
        </message>
        <message>
            <source>%1 is out of range; type %2 %3.</source>
            <translation>%1 está fuera del intervalo; escriba %2 %3.</translation>
        </message>
        <message>
            <source>%1 does not come to a whole number; type a whole number.</source>
            <translation>%1 no da un número entero; escriba un número entero.</translation>
        </message>
        <message>
            <source>a length</source>
            <translation>una longitud</translation>
        </message>
        <message>
            <source>an amount</source>
            <translation>un importe</translation>
        </message>
        <message>
            <source>a rate</source>
            <translation>un porcentaje</translation>
        </message>
        <message>
            <source>a count</source>
            <translation>una cantidad</translation>
        </message>
        <message>
            <source>a time</source>
            <translation>un tiempo</translation>
        </message>
        <message>
            <source>a temperature</source>
            <translation>una temperatura</translation>
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
            <translation>24 o 10 gross</translation>
        </message>
        <message>
            <source>1 min 30 s</source>
            <translation>1 min 30 s</translation>
        </message>
        <message>
            <source>320 F or 160 C</source>
            <translation>320 F o 160 C</translation>
        </message>
        <message>
            <source>use in, ft, yd, mm, cm or m</source>
            <translation>use in, ft, yd, mm, cm o m</translation>
        </message>
        <message>
            <source>type the amount in %1</source>
            <translation>escriba el importe en %1</translation>
        </message>
        <message>
            <source>type a number of percent</source>
            <translation>escriba un tanto por ciento</translation>
        </message>
        <message>
            <source>use dozen, gross or great gross</source>
            <translation>use dozen, gross o great gross</translation>
        </message>
        <message>
            <source>use s, min or h</source>
            <translation>use s, min o h</translation>
        </message>
        <message>
            <source>write F or C once, at the end</source>
            <translation>escriba F o C una vez, al final</translation>
        </message>
        <message>
            <source>from 0 to 1 km</source>
            <translation>de 0 a 1 km</translation>
        </message>
        <message>
            <source>of at most 1,000,000,000 either way</source>
            <translation>de 1 000 000 000 a lo sumo, con o sin menos</translation>
        </message>
        <message>
            <source>of at most 10,000 % either way</source>
            <translation>de 10 000 % a lo sumo, con o sin menos</translation>
        </message>
        <message>
            <source>from 0 to 1,000,000,000</source>
            <translation>de 0 a 1 000 000 000</translation>
        </message>
        <message>
            <source>from 0 to 10,000 hours</source>
            <translation>de 0 a 10 000 horas</translation>
        </message>
        <message>
            <source>from -50 to 500 °C</source>
            <translation>de -50 a 500 °C</translation>
        </message>
        <message>
            <source>from -58 to 932 °F</source>
            <translation>de -58 a 932 °F</translation>
        </message>
    </context>
    <context>
        <name>UsualSupplies</name>
        <message>
            <source>%1 sheets</source>
            <translation>%1 hojas</translation>
        </message>
        <message>
            <source>Hot-fix tape</source>
            <translation>Cinta hot-fix</translation>
        </message>
        <message>
            <source>Template sheet</source>
            <translation>Plantilla</translation>
        </message>
        <message>
            <source>Clear decal backing</source>
            <translation>Respaldo claro</translation>
        </message>
        <message>
            <source>Clear bag</source>
            <translation>Bolsa clara</translation>
        </message>
        <message>
            <source>%1 bags</source>
            <translation>%1 bolsas</translation>
        </message>
        <message>
            <source>Care card</source>
            <translation>Tarjeta</translation>
        </message>
        <message>
            <source>%1 cards</source>
            <translation>%1 tarjetas</translation>
        </message>
        <message>
            <source>%1 gross</source>
            <translation>%1 gruesas</translation>
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
            <translation>Más pequeño (−)</translation>
        </message>
        <message>
            <source>Larger (+)</source>
            <translation>Más grande (+)</translation>
        </message>
        <message>
            <source>Fit</source>
            <translation>Ajustar</translation>
        </message>
        <message>
            <source>All of it (0)</source>
            <translation>Todo (0)</translation>
        </message>
    </context>
    <context>
        <name>customers</name>
        <message>
            <source>certificate on file</source>
            <translation>certificado presentado</translation>
        </message>
    </context>
    <context>
        <name>places</name>
        <message>
            <source>Counter</source>
            <translation>Mostrador</translation>
        </message>
        <message>
            <source>Designs</source>
            <translation>Diseños</translation>
        </message>
        <message>
            <source>Supplies</source>
            <translation>Insumos</translation>
        </message>
        <message>
            <source>Buying</source>
            <translation>Compras</translation>
        </message>
        <message>
            <source>Jobs</source>
            <translation>Trabajos</translation>
        </message>
        <message>
            <source>Bench</source>
            <translation>Taller</translation>
        </message>
        <message>
            <source>Customers</source>
            <translation>Clientes</translation>
        </message>
        <message>
            <source>Figures</source>
            <translation>Cifras</translation>
        </message>
        <message>
            <source>Shop</source>
            <translation>Negocio</translation>
        </message>
        <message>
            <source>Set up</source>
            <translation>Arranque</translation>
        </message>
    </context>
    <context>
        <name>sp::artwork::ArtworkPage</name>
        <message>
            <source>Stones a piece</source>
            <translation>Piedras por pieza</translation>
        </message>
        <message>
            <source>&amp;Holes are larger than their stones by</source>
            <translation>Los a&amp;gujeros superan a sus piedras en</translation>
        </message>
        <message>
            <source>empty: drawn at the size of the stone</source>
            <translation>vacío: dibujados al tamaño de la piedra</translation>
        </message>
        <message>
            <source>How long is one unit of this file?</source>
            <translation>¿Cuánto mide una unidad de este archivo?</translation>
        </message>
        <message>
            <source>The file does not say. The likeliest is first and shown; choose the one whose size is right.</source>
            <translation>El archivo no lo dice. Lo más probable va primero y se muestra; elija la que dé el tamaño correcto.</translation>
        </message>
        <message>
            <source>This one stone is</source>
            <translation>Esta piedra es</translation>
        </message>
        <message>
            <source>which stone?</source>
            <translation>¿qué piedra?</translation>
        </message>
        <message>
            <source>Picked stone</source>
            <translation>Piedra elegida</translation>
        </message>
        <message>
            <source>Give the design a name.</source>
            <translation>Dé un nombre al diseño.</translation>
        </message>
        <message>
            <source>Design &amp;name</source>
            <translation>&amp;Nombre del diseño</translation>
        </message>
        <message>
            <source>&amp;Use for a new design</source>
            <translation>&amp;Usar para un diseño nuevo</translation>
        </message>
        <message>
            <source>&amp;Close</source>
            <translation>&amp;Cerrar</translation>
        </message>
        <message>
            <source>Drawn twice, counted once.</source>
            <translation>Dibujado dos veces, contado una.</translation>
        </message>
        <message>
            <source>No stone: %1.</source>
            <translation>Sin piedra: %1.</translation>
        </message>
        <message>
            <source>Estimate from its shape</source>
            <translation>Estimar a partir de su forma</translation>
        </message>
        <message>
            <source>no stone fits</source>
            <translation>ninguna piedra encaja</translation>
        </message>
        <message>
            <source>%1: nothing could be a stone</source>
            <translation>%1: nada podría ser una piedra</translation>
        </message>
        <message>
            <source>%1 of them with no stone chosen yet</source>
            <translation>%1 de ellas aún sin piedra elegida</translation>
        </message>
        <message>
            <source>Use for “%1”</source>
            <translation>Usar para «%1»</translation>
        </message>
        <message>
            <source>None. Click one, or Page Down in the picture.</source>
            <translation>Ninguna. Haga clic en una, o AvPág en la imagen.</translation>
        </message>
        <message>
            <source>Drag or the arrows move it, Ctrl and the wheel or + and − zoom; click a stone to see its size.</source>
            <translation>Arrastrar o las flechas la mueven, Ctrl y la rueda o + y − la amplían; haga clic en una piedra para ver su tamaño.</translation>
        </message>
        <message>
            <source>no size fits</source>
            <translation>ningún tamaño encaja</translation>
        </message>
        <message>
            <source>%1 mm across</source>
            <translation>%1 mm de diámetro</translation>
        </message>
        <message>
            <source>no colour</source>
            <translation>sin color</translation>
        </message>
        <message>
            <source>layer %1</source>
            <translation>capa %1</translation>
        </message>
        <message>
            <source>overlaps its neighbour</source>
            <translation>se superpone a su vecina</translation>
        </message>
        <message>
            <source>left out</source>
            <translation>omitida</translation>
        </message>
        <message>
            <source>no stone chosen yet</source>
            <translation>aún sin piedra elegida</translation>
        </message>
        <message>
            <source>Stone %1 of %2: %3</source>
            <translation>Piedra %1 de %2: %3</translation>
        </message>
        <message>
            <source>it is counted and no longer estimated</source>
            <translation>está contado y ya no estimado</translation>
        </message>
        <message>
            <source>%1 becomes %2</source>
            <translation>%1 pasa a %2</translation>
        </message>
        <message>
            <source>%1 from %2 to %3</source>
            <translation>%1 de %2 a %3</translation>
        </message>
        <message>
            <source>templates are to be cut anew</source>
            <translation>hay que cortar las plantillas de nuevo</translation>
        </message>
        <message numerus="yes">
            <source>%1 pieces: %2 becomes %3 each</source>
            <translation>
                <numerusform>%1 pieza: %2 pasa a %3</numerusform>
                <numerusform>%1 piezas: %2 pasa a %3 c/u</numerusform>
            </translation>
        </message>
        <message>
            <source>“%1” is so already.</source>
            <translation>«%1» ya está así.</translation>
        </message>
        <message>
            <source>“%1” would change: %2.</source>
            <translation>«%1» cambiaría: %2.</translation>
        </message>
    </context>
    <context>
        <name>sp::artwork::ArtworkPresenter</name>
        <message>
            <source>like %1</source>
            <translation>como %1</translation>
        </message>
        <message>
            <source>%1 for %2</source>
            <translation>%1 para %2</translation>
        </message>
        <message>
            <source>%1 and %2 more</source>
            <translation>%1 y %2 más</translation>
        </message>
        <message>
            <source>Check these: no stone of the size looks like the colour drawn: %1.</source>
            <translation>Revise estas: ninguna piedra de ese tamaño se parece al color dibujado: %1.</translation>
        </message>
        <message>
            <source>No file has been counted.</source>
            <translation>No se ha contado ningún archivo.</translation>
        </message>
        <message>
            <source>Choose how the file is to be read first: it does not say how long its unit is.</source>
            <translation>Elija antes cómo se lee el archivo: no dice cuánto mide su unidad.</translation>
        </message>
        <message>
            <source>Some holes fit no stone size; choose a stone for them or leave them out.</source>
            <translation>Algunos agujeros no encajan con ningún tamaño de piedra; elija una piedra para ellos u omítalos.</translation>
        </message>
        <message>
            <source>There is no %1 stone among the supplies; choose another or leave them out.</source>
            <translation>No hay ninguna piedra %1 entre los insumos; elija otra u omítalas.</translation>
        </message>
        <message>
            <source>Everything is left out; choose a stone for at least one colour.</source>
            <translation>Está todo omitido; elija una piedra para al menos un color.</translation>
        </message>
        <message>
            <source>New design</source>
            <translation>Diseño nuevo</translation>
        </message>
    </context>
    <context>
        <name>sp::artwork::ArtworkView</name>
        <message>
            <source>Picture of the artwork</source>
            <translation>Imagen del dibujo</translation>
        </message>
    </context>
    <context>
        <name>sp::artwork::ColourRows</name>
        <message>
            <source>no size</source>
            <translation>sin tamaño</translation>
        </message>
        <message>
            <source>no colour</source>
            <translation>sin color</translation>
        </message>
        <message>
            <source>Leave out</source>
            <translation>Omitir</translation>
        </message>
        <message>
            <source>no stone</source>
            <translation>sin piedra</translation>
        </message>
        <message>
            <source>%1 %2</source>
            <translation>%1 %2</translation>
        </message>
        <message>
            <source>%1 left out</source>
            <translation>%1 omitido</translation>
        </message>
        <message>
            <source>Set one by one: %1</source>
            <translation>Puestas una por una: %1</translation>
        </message>
        <message>
            <source>Further colours: %1, stones: %2. They go to the stone whose colour is nearest.</source>
            <translation>Otros colores: %1, piedras: %2. Van a la piedra de color más cercano.</translation>
        </message>
        <message>
            <source>Stone for %1 %2</source>
            <translation>Piedra para %1 %2</translation>
        </message>
        <message>
            <source>which stone?</source>
            <translation>¿qué piedra?</translation>
        </message>
        <message>
            <source>looks different; the nearest there is</source>
            <translation>se ve distinta; la más cercana que hay</translation>
        </message>
        <message>
            <source>Stones</source>
            <translation>Piedras</translation>
        </message>
    </context>
    <context>
        <name>sp::artwork::DesignView</name>
        <message>
            <source>Picture of %1</source>
            <translation>Imagen de %1</translation>
        </message>
        <message>
            <source>No picture of %1</source>
            <translation>Sin imagen de %1</translation>
        </message>
        <message>
            <source>%1, %2 wide, %3 high</source>
            <comment>522 stones, 5 in wide, 7 in high</comment>
            <translation>%1, %2 de ancho, %3 de alto</translation>
        </message>
        <message>
            <source>No drawing is kept with this design.</source>
            <translation>Con este diseño no se guarda ningún dibujo.</translation>
        </message>
    </context>
    <context>
        <name>sp::artwork::EstimateColours</name>
        <message>
            <source>Each colour in a stone of its o&amp;wn</source>
            <translation>Cada color con &amp;su propia piedra</translation>
        </message>
        <message>
            <source>It has %1 colours, too many for a stone each; all are set as one.</source>
            <translation>Tiene %1 colores, demasiados para una piedra cada uno; todos van como uno.</translation>
        </message>
        <message>
            <source>Stone for %1</source>
            <translation>Piedra para %1</translation>
        </message>
        <message>
            <source>which stone?</source>
            <translation>¿qué piedra?</translation>
        </message>
        <message>
            <source>no stone fits, or nothing of it is to be seen</source>
            <translation>ninguna piedra encaja, o no se ve nada de él</translation>
        </message>
        <message>
            <source>%1, by hand %2 to %3</source>
            <translation>%1, a mano de %2 a %3</translation>
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
            <translation>&amp;Letras</translation>
        </message>
        <message>
            <source>S&amp;hape in a file</source>
            <translation>Figura en un archi&amp;vo</translation>
        </message>
        <message>
            <source>&amp;Text, on one or several lines</source>
            <translation>&amp;Texto, en una o varias líneas</translation>
        </message>
        <message>
            <source>No font is called “%1” here; choose from the list.</source>
            <translation>Aquí no hay ninguna fuente «%1»; elija de la lista.</translation>
        </message>
        <message>
            <source>F&amp;ont</source>
            <translation>F&amp;uente</translation>
        </message>
        <message>
            <source>Height of c&amp;apitals</source>
            <translation>Altura de &amp;mayúsculas</translation>
        </message>
        <message>
            <source>&amp;Choose a file…</source>
            <translation>Ele&amp;gir un archivo…</translation>
        </message>
        <message>
            <source>An SVG, DXF or PLT file with closed or filled outlines</source>
            <translation>Un archivo SVG, DXF o PLT con contornos cerrados o rellenos</translation>
        </message>
        <message>
            <source>He&amp;ight of all of it</source>
            <translation>&amp;Altura total</translation>
        </message>
        <message>
            <source>&amp;Stone</source>
            <translation>&amp;Piedra</translation>
        </message>
        <message>
            <source>Pitch, cent&amp;re to centre</source>
            <translation>Distancia entre cent&amp;ros</translation>
        </message>
        <message>
            <source>&amp;Free at the edge</source>
            <translation>Libre en el &amp;borde</translation>
        </message>
        <message>
            <source>empty: stones touch the edge</source>
            <translation>vacío: las piedras tocan el borde</translation>
        </message>
        <message>
            <source>Stones stand</source>
            <translation>Las piedras van</translation>
        </message>
        <message>
            <source>along the o&amp;utline</source>
            <translation>por el &amp;contorno</translation>
        </message>
        <message>
            <source>in ro&amp;ws</source>
            <translation>en h&amp;ileras</translation>
        </message>
        <message>
            <source>&amp;both</source>
            <translation>amb&amp;os</translation>
        </message>
        <message>
            <source>How the stones stand in the shape</source>
            <translation>Cómo van las piedras en la figura</translation>
        </message>
        <message>
            <source>Stone of the outline</source>
            <translation>Piedra del contorno</translation>
        </message>
        <message>
            <source>empty: the same stone</source>
            <translation>vacío: la misma piedra</translation>
        </message>
        <message>
            <source>empty: %1</source>
            <translation>vacío: %1</translation>
        </message>
        <message>
            <source>empty: as drawn, %1</source>
            <translation>vacío: como está dibujado, %1</translation>
        </message>
        <message>
            <source>No file is chosen yet.</source>
            <translation>Aún no hay ningún archivo elegido.</translation>
        </message>
        <message>
            <source>the font</source>
            <translation>la fuente</translation>
        </message>
        <message>
            <source>the height</source>
            <translation>la altura</translation>
        </message>
        <message>
            <source>what is free at the edge</source>
            <translation>lo libre en el borde</translation>
        </message>
        <message>
            <source>the stone of each colour</source>
            <translation>la piedra de cada color</translation>
        </message>
        <message>
            <source>the stone</source>
            <translation>la piedra</translation>
        </message>
        <message>
            <source>the stone of the outline</source>
            <translation>la piedra del contorno</translation>
        </message>
        <message>
            <source>the pitch</source>
            <translation>la distancia entre centros</translation>
        </message>
        <message>
            <source>There is no estimate until %1 is right.</source>
            <translation>No hay estimación hasta que %1 esté bien.</translation>
        </message>
        <message>
            <source>This stone is %1 mm across; give at least that.</source>
            <translation>Esta piedra mide %1 mm de diámetro; dé al menos eso.</translation>
        </message>
    </context>
    <context>
        <name>sp::artwork::EstimatePage</name>
        <message>
            <source>Picture of where the stones would sit</source>
            <translation>Imagen de dónde irían las piedras</translation>
        </message>
        <message>
            <source>Give the design a name.</source>
            <translation>Dé un nombre al diseño.</translation>
        </message>
        <message>
            <source>Design &amp;name</source>
            <translation>Nombre del &amp;diseño</translation>
        </message>
        <message>
            <source>&amp;Price it</source>
            <translation>Po&amp;ner precio</translation>
        </message>
        <message>
            <source>Makes a design of it and puts it on the order</source>
            <translation>Hace un diseño con ello y lo pone en el pedido</translation>
        </message>
        <message>
            <source>Make a &amp;design of it</source>
            <translation>&amp;Hacer un diseño</translation>
        </message>
        <message>
            <source>Clos&amp;e</source>
            <translation>C&amp;errar</translation>
        </message>
        <message>
            <source>Estimate stones</source>
            <translation>Estimar piedras</translation>
        </message>
        <message>
            <source>Setting stones…</source>
            <translation>Colocando piedras…</translation>
        </message>
        <message>
            <source>An estimate, for a price before there is artwork. A cut file is counted, not estimated.</source>
            <translation>Una estimación, para un precio antes de que haya dibujo. Un archivo de corte se cuenta, no se estima.</translation>
        </message>
        <message>
            <source>About %1</source>
            <translation>Unas %1</translation>
        </message>
        <message>
            <source>An estimate: laid out by hand it takes %1 to %2. %3 over all.</source>
            <translation>Una estimación: puesto a mano lleva de %1 a %2. %3 en total.</translation>
        </message>
        <message>
            <source>Drag or the arrows move it, Ctrl and the wheel or + and − zoom.</source>
            <translation>Arrastrar o las flechas la mueven, Ctrl y la rueda o + y − la amplían.</translation>
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
            <translation>Aún no hay ninguna piedra entre los insumos; añada antes una en Insumos.</translation>
        </message>
        <message>
            <source>Choose a file with the shape to set with stones.</source>
            <translation>Elija un archivo con la figura que lleva piedras.</translation>
        </message>
        <message>
            <source>Type what is to be spelled in stones.</source>
            <translation>Escriba lo que irá en piedras.</translation>
        </message>
        <message>
            <source>Choose a font.</source>
            <translation>Elija una fuente.</translation>
        </message>
        <message>
            <source>%1 does not say how large it is; type how high it shall be.</source>
            <translation>%1 no dice su tamaño; escriba qué altura ha de tener.</translation>
        </message>
        <message>
            <source>Choose a stone.</source>
            <translation>Elija una piedra.</translation>
        </message>
        <message>
            <source>Choose a stone for each colour, or leave it out.</source>
            <translation>Elija una piedra para cada color, u omítalo.</translation>
        </message>
        <message>
            <source>%1 takes more than is estimated at once; estimate a part of it.</source>
            <translation>%1 lleva más de lo que se estima a la vez; estime una parte.</translation>
        </message>
        <message>
            <source>lettering in %1.svg</source>
            <translation>letras en %1.svg</translation>
        </message>
        <message>
            <source>The stones are still being set; try again in a moment.</source>
            <translation>Aún se colocan las piedras; inténtelo de nuevo en un momento.</translation>
        </message>
        <message>
            <source>Estimated, not counted</source>
            <translation>Estimado, no contado</translation>
        </message>
        <message>
            <source>%1: %2 to %3 stones laid out by hand.</source>
            <translation>%1: de %2 a %3 piedras puestas a mano.</translation>
        </message>
    </context>
    <context>
        <name>sp::artwork::LeftOutList</name>
        <message>
            <source>To look at</source>
            <translation>Para mirar</translation>
        </message>
        <message>
            <source>drawn twice, counted once</source>
            <translation>dibujados dos veces, contados una</translation>
        </message>
        <message>
            <source>pairs of holes that overlap and would tear</source>
            <translation>pares de agujeros que se superponen y se rasgarían</translation>
        </message>
        <message>
            <source>Left out</source>
            <translation>Omitido</translation>
        </message>
        <message>
            <source>Nothing: every outline is a stone.</source>
            <translation>Nada: cada contorno es una piedra.</translation>
        </message>
        <message>
            <source>show</source>
            <translation>mostrar</translation>
        </message>
        <message>
            <source>Show in the picture: %1</source>
            <translation>Mostrar en la imagen: %1</translation>
        </message>
    </context>
    <context>
        <name>sp::backups::BackupKeeper</name>
        <message>
            <source>No backup was made: the folder %1 cannot be written. See who may use it, or make room.</source>
            <translation>No se hizo copia de seguridad: no se puede escribir en la carpeta %1. Vea quién puede usarla o haga espacio.</translation>
        </message>
        <message>
            <source>No backup was made, because this book is damaged; the earlier backups are kept. %1</source>
            <translation>No se hizo copia de seguridad porque este libro está dañado; se conservan las anteriores. %1</translation>
        </message>
        <message>
            <source>No backup was made; the earlier ones are kept. %1</source>
            <translation>No se hizo copia de seguridad; se conservan las anteriores. %1</translation>
        </message>
        <message>
            <source>The backup was made here, but not in the second place. %1</source>
            <translation>La copia de seguridad se hizo aquí, pero no en el segundo lugar. %1</translation>
        </message>
    </context>
    <context>
        <name>sp::backups::BackupsDialog</name>
        <message>
            <source>Backups</source>
            <translation>Copias de seguridad</translation>
        </message>
        <message>
            <source>One is made when the book is closed and every 30 minutes, if something was changed, and is gone through before it counts. Kept are the last ten, one a day for two weeks and one a week for two months, in %1.</source>
            <translation>Se hace una al cerrar el libro y cada 30 minutos, si algo cambió, y se revisa entera antes de que valga. Se conservan las diez últimas, una al día por dos semanas y una a la semana por dos meses, en %1.</translation>
        </message>
        <message>
            <source>Made</source>
            <translation>Hecha</translation>
        </message>
        <message>
            <source>Jobs</source>
            <translation>Trabajos</translation>
        </message>
        <message>
            <source>Last job</source>
            <translation>Último trabajo</translation>
        </message>
        <message>
            <source>Gone through</source>
            <translation>Revisada</translation>
        </message>
        <message>
            <source>&amp;Make one now</source>
            <translation>&amp;Hacer una ahora</translation>
        </message>
        <message>
            <source>&amp;Second place…</source>
            <translation>&amp;Segundo lugar…</translation>
        </message>
        <message>
            <source>&amp;Restore this one</source>
            <translation>&amp;Restaurar esta</translation>
        </message>
        <message>
            <source>&amp;Close</source>
            <translation>&amp;Cerrar</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>being read…</source>
            <translation>leyendo…</translation>
        </message>
        <message>
            <source>There is no backup yet.</source>
            <translation>Aún no hay ninguna copia de seguridad.</translation>
        </message>
        <message>
            <source>sound</source>
            <translation>en orden</translation>
        </message>
        <message>
            <source>damaged</source>
            <translation>dañada</translation>
        </message>
        <message>
            <source>What was done since then cannot be read. %1</source>
            <translation>No se puede leer lo que se hizo desde entonces. %1</translation>
        </message>
        <message>
            <source>Nothing was changed since then.</source>
            <translation>Nada cambió desde entonces.</translation>
        </message>
        <message>
            <source>Since then: %1, no quote among them.</source>
            <translation>Desde entonces: %1, ningún presupuesto entre ellos.</translation>
        </message>
        <message>
            <source>Lost would be %1 since then: %2 and others; with them %3.</source>
            <translation>Desde entonces se perdería esto: %1 (%2 y otros); y con ello, %3.</translation>
        </message>
        <message>
            <source>Lost would be %1 since then: %2; with them %3.</source>
            <translation>Desde entonces se perdería esto: %1 (%2); y con ello, %3.</translation>
        </message>
        <message>
            <source>It is restored into a file of its own, %1; the book that is there stays as it is.</source>
            <translation>Se restaura en un archivo propio, %1; el libro que hay se queda como está.</translation>
        </message>
        <message>
            <source>%1 %2</source>
            <translation>%1 %2</translation>
        </message>
        <message>
            <source>It is being restored…</source>
            <translation>Se está restaurando…</translation>
        </message>
        <message>
            <source>It is being restored: %1 %</source>
            <translation>Se está restaurando: %1 %</translation>
        </message>
        <message>
            <source>A second place for backups, on another disk or stick</source>
            <translation>Un segundo lugar para las copias de seguridad, en otro disco o memoria USB</translation>
        </message>
        <message>
            <source>If this disk fails, the backups on it go with the book: choose a second place on another disk or a stick.</source>
            <translation>Si este disco falla, las copias de seguridad se van con el libro: elija un segundo lugar en otro disco o una memoria USB.</translation>
        </message>
        <message>
            <source>Each backup is put in %1 as well.</source>
            <translation>Cada copia de seguridad se pone también en %1.</translation>
        </message>
        <message>
            <source>The second place %1 is not there now; plug it in for the next backup.</source>
            <translation>El segundo lugar %1 no está ahora; conéctelo para la próxima copia.</translation>
        </message>
    </context>
    <context>
        <name>sp::bench::BenchPage</name>
        <message>
            <source>Bench</source>
            <translation>Taller</translation>
        </message>
        <message>
            <source>What a new job of an hour at the bench would be told</source>
            <translation>Lo que se le diría a un trabajo nuevo de una hora de taller</translation>
        </message>
        <message>
            <source>Nothing is agreed to and waits to be made.</source>
            <translation>No hay nada acordado en espera de hacerse.</translation>
        </message>
        <message>
            <source>To the jobs</source>
            <translation>A los trabajos</translation>
        </message>
        <message>
            <source>When a job is ready is known once Shop has the hours of the bench.</source>
            <translation>Se sabe cuándo está listo un trabajo cuando Negocio tiene las horas de taller.</translation>
        </message>
        <message>
            <source>Type the bench hours</source>
            <translation>Escribir las horas de taller</translation>
        </message>
        <message>
            <source>The coming days</source>
            <translation>Los próximos días</translation>
        </message>
        <message>
            <source>minutes, numbered as below</source>
            <translation>minutos, numerados como abajo</translation>
        </message>
        <message>
            <source>To make, in this order</source>
            <translation>Por hacer, en este orden</translation>
        </message>
        <message>
            <source>No.</source>
            <translation>Núm.</translation>
        </message>
        <message>
            <source>What</source>
            <translation>Concepto</translation>
        </message>
        <message>
            <source>For</source>
            <translation>Para</translation>
        </message>
        <message>
            <source>Minutes</source>
            <translation>Minutos</translation>
        </message>
        <message>
            <source>Ready</source>
            <translation>Listo</translation>
        </message>
        <message>
            <source>Wanted by</source>
            <translation>Fecha pedida</translation>
        </message>
        <message>
            <source>Holds</source>
            <translation>Se cumple</translation>
        </message>
        <message>
            <source>&amp;Open at the Counter</source>
            <translation>&amp;Abrir en el Mostrador</translation>
        </message>
        <message>
            <source>Bench &amp;sheet</source>
            <translation>&amp;Hoja de taller</translation>
        </message>
        <message>
            <source>What it is made by: colours in brushing order, what to fetch and cut, press and steps</source>
            <translation>Con qué se hace: colores en orden de cepillado, qué traer y cortar, prensa y pasos</translation>
        </message>
        <message>
            <source>Moves it on to the next stage; undo takes it back</source>
            <translation>Lo pasa a la etapa siguiente; deshacer lo devuelve</translation>
        </message>
        <message>
            <source>not known, see No. %1</source>
            <translation>no se sabe, vea el núm. %1</translation>
        </message>
        <message>
            <source>not within %1 years</source>
            <translation>no en menos de %1 años</translation>
        </message>
        <message numerus="yes">
            <source>late, by %n days</source>
            <translation>
                <numerusform>tarde, por %n día</numerusform>
                <numerusform>tarde, por %n días</numerusform>
            </translation>
        </message>
        <message>
            <source>holds</source>
            <translation>se cumple</translation>
        </message>
        <message>
            <source>deposit missing</source>
            <translation>falta anticipo</translation>
        </message>
        <message>
            <source>waits for supplies, %1</source>
            <translation>espera insumos, %1</translation>
        </message>
        <message>
            <source>supplies missing</source>
            <translation>faltan insumos</translation>
        </message>
        <message numerus="yes">
            <source>%n jobs to make</source>
            <translation>
                <numerusform>%n trabajo por hacer</numerusform>
                <numerusform>%n trabajos por hacer</numerusform>
            </translation>
        </message>
        <message>
            <source>%1, %2 late</source>
            <translation>%1, %2 tarde</translation>
        </message>
        <message>
            <source>An hour more: ready %1</source>
            <translation>Una hora más: listo el %1</translation>
        </message>
        <message>
            <source>&amp;Next: %1</source>
            <translation>&amp;Siguiente: %1</translation>
        </message>
    </context>
    <context>
        <name>sp::bench::LoadPicture</name>
        <message>
            <source>The coming days</source>
            <translation>Los próximos días</translation>
        </message>
        <message>
            <source>closed</source>
            <translation>cerrado</translation>
        </message>
        <message>
            <source>no hours</source>
            <translation>sin horas</translation>
        </message>
        <message>
            <source>full</source>
            <translation>lleno</translation>
        </message>
        <message>
            <source>%1 free</source>
            <translation>%1 libres</translation>
        </message>
        <message>
            <source>job %1: %2 min</source>
            <translation>trabajo %1: %2 min</translation>
        </message>
    </context>
    <context>
        <name>sp::buying::BuyingPage</name>
        <message>
            <source>Here stands the cheapest way to buy for a design or an order, once there is a design.</source>
            <translation>Aquí estará el modo más barato de comprar para un diseño o un pedido, cuando haya un diseño.</translation>
        </message>
        <message>
            <source>Go to Designs</source>
            <translation>Ir a Diseños</translation>
        </message>
        <message>
            <source>Buying</source>
            <translation>Compras</translation>
        </message>
        <message>
            <source>List as &amp;CSV…</source>
            <translation>Lista como &amp;CSV…</translation>
        </message>
        <message>
            <source>Shopping &amp;list…</source>
            <translation>&amp;Lista de compras…</translation>
        </message>
        <message>
            <source>The packs of the cheapest way, supplier by supplier, as a PDF to print</source>
            <translation>Los paquetes del modo más barato, por proveedor, como PDF para imprimir</translation>
        </message>
        <message>
            <source>&amp;Design</source>
            <translation>&amp;Diseño</translation>
        </message>
        <message>
            <source>&amp;Pieces</source>
            <translation>&amp;Piezas</translation>
        </message>
        <message>
            <source>The &amp;order at the Counter instead</source>
            <translation>El p&amp;edido del Mostrador en su lugar</translation>
        </message>
        <message>
            <source>Use &amp;up what is on the shelf</source>
            <translation>&amp;Usar lo que hay en el estante</translation>
        </message>
        <message>
            <source>This shop cuts its own te&amp;mplates</source>
            <translation>Este &amp;negocio corta sus plantillas</translation>
        </message>
        <message>
            <source>Otherwise templates come ready cut with a kit</source>
            <translation>Si no, las plantillas vienen cortadas con un surtido</translation>
        </message>
        <message>
            <source>Working…</source>
            <translation>Calculando…</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <comment>a pack, and of what</comment>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>Left out, because no price is given: %1</source>
            <translation>Omitido, pues no se da precio: %1</translation>
        </message>
        <message>
            <source>Saved as %1.</source>
            <translation>Guardado como %1.</translation>
        </message>
        <message>
            <source>What was bought for %1 is on the shelf, at what it cost.</source>
            <translation>Lo comprado para %1 está en el estante, a lo que costó.</translation>
        </message>
        <message>
            <source>Shopping list</source>
            <translation>Lista de compras</translation>
        </message>
        <message>
            <source>Staircase</source>
            <translation>Escalera</translation>
        </message>
        <message>
            <source>Save the shopping list</source>
            <translation>Guardar la lista de compras</translation>
        </message>
        <message>
            <source>Tables (*.csv)</source>
            <translation>Tablas (*.csv)</translation>
        </message>
    </context>
    <context>
        <name>sp::buying::BuyingPresenter</name>
        <message>
            <source>There is no order at the Counter: put a design on it there.</source>
            <translation>No hay pedido en el Mostrador: ponga allí un diseño.</translation>
        </message>
        <message>
            <source>Choose a design to buy for.</source>
            <translation>Elija un diseño para el que comprar.</translation>
        </message>
        <message>
            <source>Say how many pieces are to be made.</source>
            <translation>Diga cuántas piezas se harán.</translation>
        </message>
        <message>
            <source>There is no plan to put on the shelf yet.</source>
            <translation>Aún no hay ningún plan que poner en el estante.</translation>
        </message>
        <message>
            <source>The order at the Counter</source>
            <translation>El pedido del Mostrador</translation>
        </message>
    </context>
    <context>
        <name>sp::buying::CostCurvePanel</name>
        <message>
            <source>Cost of one piece by quantity</source>
            <translation>Costo de una pieza por cantidad</translation>
        </message>
        <message>
            <source>&amp;Table</source>
            <translation>&amp;Tabla</translation>
        </message>
        <message>
            <source>Shows the figures behind the picture (T)</source>
            <translation>Muestra las cifras tras la imagen (T)</translation>
        </message>
        <message>
            <source>Print the st&amp;aircase…</source>
            <translation>Imprimir la e&amp;scalera…</translation>
        </message>
        <message>
            <source>Pieces</source>
            <translation>Piezas</translation>
        </message>
        <message>
            <source>Kits, each</source>
            <translation>Surtidos, c/u</translation>
        </message>
        <message>
            <source>Bulk, each</source>
            <translation>A granel, c/u</translation>
        </message>
        <message>
            <source>Mix, each</source>
            <translation>Mixto, c/u</translation>
        </message>
        <message>
            <source>Cheapest</source>
            <translation>Más barato</translation>
        </message>
        <message>
            <source>Proven</source>
            <translation>Demostrado</translation>
        </message>
        <message>
            <source>Working…</source>
            <translation>Calculando…</translation>
        </message>
        <message>
            <source>working on more…</source>
            <translation>calculando más…</translation>
        </message>
        <message>
            <source>Nothing to buy</source>
            <translation>Nada que comprar</translation>
        </message>
        <message>
            <source>No way</source>
            <translation>Sin manera</translation>
        </message>
        <message>
            <source>yes</source>
            <translation>sí</translation>
        </message>
        <message>
            <source>no</source>
            <translation>no</translation>
        </message>
    </context>
    <context>
        <name>sp::buying::CostCurvePicture</name>
        <message>
            <source>Staircase: cost of one piece by quantity</source>
            <translation>Escalera: costo de una pieza por cantidad</translation>
        </message>
        <message>
            <source>Left and Right move along the quantities; T shows the table</source>
            <translation>Izquierda y Derecha recorren las cantidades; T muestra la tabla</translation>
        </message>
        <message>
            <source>Working out the staircase…</source>
            <translation>Calculando la escalera…</translation>
        </message>
    </context>
    <context>
        <name>sp::buying::KitPanel</name>
        <message>
            <source>Nothing is taken from the shelf here.</source>
            <translation>Aquí no se toma nada del estante.</translation>
        </message>
        <message>
            <source>What one %1 makes</source>
            <translation>Lo que rinde un %1</translation>
        </message>
        <message>
            <source>A piece, shipping in</source>
            <translation>Por pieza, con envío</translation>
        </message>
        <message>
            <source>from kits</source>
            <translation>en surtidos</translation>
        </message>
        <message>
            <source>from bulk</source>
            <translation>a granel</translation>
        </message>
        <message>
            <source>if you make %1</source>
            <translation>si hace %1</translation>
        </message>
    </context>
    <context>
        <name>sp::buying::StrategyColumn</name>
        <message>
            <source>Opens to what it is made of</source>
            <translation>Se abre para ver de qué se compone</translation>
        </message>
        <message>
            <source>%1, figure by figure</source>
            <translation>%1, cifra por cifra</translation>
        </message>
        <message>
            <source>Bought: put it on the shelf</source>
            <translation>Comprado: ponerlo en el estante</translation>
        </message>
        <message>
            <source>%1 bought: put it on the shelf</source>
            <translation>%1 comprado: ponerlo en el estante</translation>
        </message>
        <message>
            <source>Counts these packs in at what they cost, with their share of the shipping</source>
            <translation>Anota la entrada de estos paquetes a lo que cuestan, con su parte del envío</translation>
        </message>
        <message>
            <source>✓ cheapest</source>
            <translation>✓ lo más barato</translation>
        </message>
        <message>
            <source>%1 a piece</source>
            <translation>%1 por pieza</translation>
        </message>
        <message>
            <source>Proven: it cannot be bought for less this way.</source>
            <translation>Demostrado: así no se puede comprar por menos.</translation>
        </message>
        <message>
            <source>At most %1 above the cheapest possible.</source>
            <translation>A lo sumo %1 más que lo más barato posible.</translation>
        </message>
        <message>
            <source>Proving… at most %1 above the cheapest possible.</source>
            <translation>Demostrando… a lo sumo %1 más que lo más barato posible.</translation>
        </message>
        <message>
            <source>Nothing has to be bought: the shelf is enough.</source>
            <translation>No hay que comprar nada: el estante basta.</translation>
        </message>
        <message>
            <source>No mix is cheaper than %1.</source>
            <translation>Ninguna mezcla es más barata que %1.</translation>
        </message>
    </context>
    <context>
        <name>sp::counter::ChoiceBar</name>
        <message>
            <source>Name of this c&amp;hoice</source>
            <translation>Nombre de esta &amp;opción</translation>
        </message>
        <message>
            <source>The same order once more, to change and to choose from (Ctrl+D); at most four</source>
            <translation>El mismo pedido otra vez, para cambiarlo y elegir (Ctrl+D); a lo sumo cuatro</translation>
        </message>
        <message>
            <source>Offer another choice</source>
            <translation>Ofrecer otra opción</translation>
        </message>
        <message>
            <source>+ choice</source>
            <translation>+ opción</translation>
        </message>
        <message>
            <source>Take this choice out</source>
            <translation>Quitar esta opción</translation>
        </message>
    </context>
    <context>
        <name>sp::counter::ChoiceCard</name>
        <message>
            <source>%1 each</source>
            <translation>%1 c/u</translation>
        </message>
    </context>
    <context>
        <name>sp::counter::CostTreeModel</name>
        <message numerus="yes">
            <source> = %1 for %2 pieces</source>
            <translation>
                <numerusform> = %1 por %2 pieza</numerusform>
                <numerusform> = %1 por %2 piezas</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>sp::counter::CounterPage</name>
        <message>
            <source>Order</source>
            <translation>Pedido</translation>
        </message>
        <message>
            <source>Line</source>
            <translation>Línea</translation>
        </message>
        <message>
            <source>Slip</source>
            <translation>Ticket</translation>
        </message>
        <message>
            <source>To pay</source>
            <translation>A pagar</translation>
        </message>
        <message>
            <source>This revises quote %1, which is kept as it was given.</source>
            <translation>Esto modifica el presupuesto %1, que se conserva como se dio.</translation>
        </message>
        <message>
            <source>What is different</source>
            <translation>Qué es distinto</translation>
        </message>
        <message>
            <source>Quote %1 was given on %2 and stays as it is.</source>
            <translation>El presupuesto %1 se dio el %2 y se queda como está.</translation>
        </message>
        <message>
            <source>Reckoned by today’s rules from the prices of that day it would be %1; what was given is shown.</source>
            <translation>Calculado con las reglas de hoy y los precios de ese día sería %1; se muestra lo dado.</translation>
        </message>
        <message>
            <source>New order</source>
            <translation>Pedido nuevo</translation>
        </message>
        <message>
            <source>This quote cannot be given yet: %1</source>
            <translation>Este presupuesto aún no se puede dar: %1</translation>
        </message>
        <message>
            <source>There is no sheet to print yet: %1</source>
            <translation>Aún no hay hoja que imprimir: %1</translation>
        </message>
        <message>
            <source>Draft</source>
            <translation>Borrador</translation>
        </message>
        <message>
            <source>Quote %1</source>
            <translation>Presupuesto %1</translation>
        </message>
    </context>
    <context>
        <name>sp::counter::CounterPresenter</name>
        <message>
            <source>Line %1, %2: %3</source>
            <translation>Línea %1, %2: %3</translation>
        </message>
        <message>
            <source>Choice %1: %2</source>
            <translation>Opción %1: %2</translation>
        </message>
    </context>
    <context>
        <name>sp::counter::LinePanel</name>
        <message>
            <source>Take this line out of the order</source>
            <translation>Quitar esta línea del pedido</translation>
        </message>
        <message>
            <source>Give the line a name; the customer reads it on the sheet.</source>
            <translation>Dé un nombre a la línea; el cliente lo lee en la hoja.</translation>
        </message>
        <message>
            <source>&amp;Pieces</source>
            <translation>&amp;Piezas</translation>
        </message>
        <message>
            <source>&amp;On</source>
            <translation>&amp;Sobre</translation>
        </message>
        <message>
            <source>&amp;Name on the sheet</source>
            <translation>&amp;Nombre en la hoja</translation>
        </message>
        <message>
            <source>Pr&amp;ice each</source>
            <translation>Precio c/&amp;u</translation>
        </message>
        <message>
            <source>Front</source>
            <comment>where on the piece</comment>
            <translation>Frente</translation>
        </message>
        <message>
            <source>&amp;Templates on the wall</source>
            <translation>Plantillas en pare&amp;d</translation>
        </message>
        <message>
            <source>Taxab&amp;le</source>
            <translation>Su&amp;jeto a impuesto</translation>
        </message>
        <message>
            <source>&amp;Where on it</source>
            <translation>Lu&amp;gar</translation>
        </message>
        <message>
            <source>Wi&amp;dth</source>
            <translation>Anc&amp;ho</translation>
        </message>
        <message>
            <source>&amp;Height</source>
            <translation>Al&amp;to</translation>
        </message>
        <message>
            <source>Tax rate</source>
            <translation>Tasa de impuesto</translation>
        </message>
        <message>
            <source>At no charge</source>
            <translation>Sin cobro</translation>
        </message>
        <message>
            <source>Done again, a sample, a gift: no price, its cost counts in the figures</source>
            <translation>Hecho de nuevo, una muestra, un regalo: sin precio, su costo cuenta en las cifras</translation>
        </message>
        <message>
            <source>Type part of a design’s name</source>
            <translation>Parte del nombre</translation>
        </message>
        <message>
            <source>Add a design els&amp;ewhere on it</source>
            <translation>Añad&amp;ir diseño en otra parte</translation>
        </message>
        <message>
            <source>Bench</source>
            <translation>Taller</translation>
        </message>
        <message>
            <source>Nothing is ordered yet.</source>
            <translation>Aún no se ha pedido nada.</translation>
        </message>
        <message>
            <source>Type a design</source>
            <translation>Escribir un diseño</translation>
        </message>
        <message>
            <source>The picture is of other counts than this line has.</source>
            <translation>La imagen es de otras cuentas que las de esta línea.</translation>
        </message>
        <message>
            <source>The customer’s own garment</source>
            <translation>La prenda del propio cliente</translation>
        </message>
        <message>
            <source>%1 %2 %</source>
            <translation>%1 %2 %</translation>
        </message>
        <message>
            <source>line %1 of %2</source>
            <translation>línea %1 de %2</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <comment>a place and its design</comment>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>Take this place off the piece</source>
            <translation>Quitar este lugar de la pieza</translation>
        </message>
        <message>
            <source>%1 for %2</source>
            <translation>%1 para %2</translation>
        </message>
        <message>
            <source>Its stones are estimated, not counted.</source>
            <translation>Sus piedras están estimadas, no contadas.</translation>
        </message>
        <message>
            <source>Made with the set of line %1.</source>
            <translation>Hecho con el juego de la línea %1.</translation>
        </message>
        <message>
            <source>A set of its own: its size, stones or plan are not those of line %1.</source>
            <translation>Un juego propio: su tamaño, piedras o plan no son los de la línea %1.</translation>
        </message>
        <message>
            <source>Templates on the wall: no set-up charged.</source>
            <translation>Plantillas en la pared: no se cobra preparación.</translation>
        </message>
        <message>
            <source>Templates on the wall: each piece bears its share of the set.</source>
            <translation>Plantillas en la pared: cada pieza lleva su parte del juego.</translation>
        </message>
        <message>
            <source>A second press of %1 in %2 of the pieces.</source>
            <translation>Un segundo prensado de %1 en %2 de las piezas.</translation>
        </message>
        <message numerus="yes">
            <source>%1 is short by %2 stones.</source>
            <translation>
                <numerusform>A %1 le falta %2 piedra.</numerusform>
                <numerusform>A %1 le faltan %2 piedras.</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>sp::counter::OrderList</name>
        <message>
            <source>Lines of the order</source>
            <translation>Líneas del pedido</translation>
        </message>
    </context>
    <context>
        <name>sp::counter::OrderListDelegate</name>
        <message>
            <source>each</source>
            <translation>c/u</translation>
        </message>
    </context>
    <context>
        <name>sp::counter::OrderListModel</name>
        <message>
            <source>an entry cannot be read</source>
            <translation>un dato no se puede leer</translation>
        </message>
        <message>
            <source>the customer’s garment</source>
            <translation>la prenda del cliente</translation>
        </message>
        <message numerus="yes">
            <source>%1 places</source>
            <translation>
                <numerusform>%1 lugar</numerusform>
                <numerusform>%1 lugares</numerusform>
            </translation>
        </message>
        <message>
            <source>%1, %2, %3 each</source>
            <translation>%1, %2, %3 c/u</translation>
        </message>
    </context>
    <context>
        <name>sp::counter::OrderPanel</name>
        <message>
            <source>Add “%1” as a customer</source>
            <translation>Añadir «%1» como cliente</translation>
        </message>
        <message>
            <source>“%1” is nobody yet; choose somebody, or press Enter to add the name.</source>
            <translation>«%1» aún no es nadie; elija a alguien o pulse Enter para añadir el nombre.</translation>
        </message>
        <message>
            <source>Ta&amp;x exempt</source>
            <translation>E&amp;xento</translation>
        </message>
        <message>
            <source>All at no charge</source>
            <translation>Todo sin cobro</translation>
        </message>
        <message>
            <source>Done again, a sample, a gift: no price, its cost counts in the figures</source>
            <translation>Hecho de nuevo, una muestra, un regalo: sin precio, su costo cuenta en las cifras</translation>
        </message>
        <message>
            <source>Custo&amp;mer</source>
            <translation>&amp;Cliente</translation>
        </message>
        <message>
            <source>Phone or mail</source>
            <translation>Teléfono o correo</translation>
        </message>
        <message>
            <source>Wanted &amp;by</source>
            <translation>&amp;Fecha pedida</translation>
        </message>
        <message>
            <source>Dis&amp;count</source>
            <translation>D&amp;escuento</translation>
        </message>
        <message>
            <source>Order</source>
            <translation>Pedido</translation>
        </message>
        <message>
            <source>Type part of a design’s name</source>
            <translation>Parte del nombre</translation>
        </message>
        <message>
            <source>“%1” as a one-off</source>
            <translation>«%1» como trabajo único</translation>
        </message>
        <message>
            <source>&amp;Add to the order</source>
            <translation>&amp;Añadir al pedido</translation>
        </message>
        <message>
            <source>Charge</source>
            <translation>Cargo</translation>
        </message>
        <message>
            <source>Add a charge without stones</source>
            <translation>Añadir un cargo sin piedras</translation>
        </message>
        <message>
            <source>Postage, art, a repair, a plain tee: a line without stones</source>
            <translation>Envío, arte, un arreglo, una camiseta lisa: una línea sin piedras</translation>
        </message>
        <message>
            <source>Charge</source>
            <comment>the name of a line until it has another</comment>
            <translation>Cargo</translation>
        </message>
        <message>
            <source>New, kept from now on. Or &lt;a href="0"&gt;%1&lt;/a&gt;?</source>
            <translation>Nuevo, guardado desde ahora. ¿O &lt;a href="0"&gt;%1&lt;/a&gt;?</translation>
        </message>
        <message>
            <source>New, kept from now on.</source>
            <translation>Nuevo, guardado desde ahora.</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>Reckoned from tomorrow on.</source>
            <translation>Calculado desde mañana.</translation>
        </message>
        <message>
            <source>What is missing for it can be here by %1, bought today.</source>
            <translation>Lo que le falta puede estar aquí para el %1 si se compra hoy.</translation>
        </message>
        <message>
            <source>Reckoned as if its deposit came today.</source>
            <translation>Calculado como si su anticipo llegara hoy.</translation>
        </message>
        <message>
            <source>No day is promised until Shop knows the &lt;a href="0"&gt;bench hours&lt;/a&gt;.</source>
            <translation>No se promete ningún día hasta que Negocio tenga las &lt;a href="0"&gt;horas de taller&lt;/a&gt;.</translation>
        </message>
        <message>
            <source>rush, %1</source>
            <translation>urgencia, %1</translation>
        </message>
    </context>
    <context>
        <name>sp::counter::SheetRow</name>
        <message>
            <source>on the wall</source>
            <translation>en la pared</translation>
        </message>
        <message>
            <source>%1 off the roll</source>
            <translation>%1 del rollo</translation>
        </message>
        <message>
            <source>%1 a sheet</source>
            <translation>%1 por lámina</translation>
        </message>
        <message>
            <source>lifts once</source>
            <translation>levanta una vez</translation>
        </message>
        <message numerus="yes">
            <source>lifts %1 times</source>
            <translation>
                <numerusform>levanta %1 vez</numerusform>
                <numerusform>levanta %1 veces</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>sp::counter::SlipBack</name>
        <message>
            <source>Cost each</source>
            <translation>Costo c/u</translation>
        </message>
        <message>
            <source>Mark-up</source>
            <translation>Recargo</translation>
        </message>
        <message>
            <source>Margin</source>
            <translation>Margen</translation>
        </message>
        <message>
            <source>Owner’s side</source>
            <translation>Lado del dueño</translation>
        </message>
        <message>
            <source>Earned per bench hour</source>
            <translation>Ganado por hora de taller</translation>
        </message>
        <message>
            <source>What one piece costs, part by part</source>
            <translation>Lo que cuesta una pieza, parte por parte</translation>
        </message>
        <message>
            <source>As&amp;k for instead</source>
            <translation>Pedir en cam&amp;bio</translation>
        </message>
        <message>
            <source>&amp;Sheet plan</source>
            <translation>P&amp;lan de láminas</translation>
        </message>
        <message>
            <source>How everything this order needs cut lies on its sheets</source>
            <translation>Cómo va en sus láminas todo lo que hay que cortar para este pedido</translation>
        </message>
        <message>
            <source>The cheapest packs for the whole order; opens Buying</source>
            <translation>Los paquetes más baratos para todo el pedido; abre Compras</translation>
        </message>
        <message>
            <source>Buy…</source>
            <translation>Comprar…</translation>
        </message>
        <message>
            <source>this order</source>
            <translation>este pedido</translation>
        </message>
        <message>
            <source>quote %1</source>
            <translation>presupuesto %1</translation>
        </message>
        <message>
            <source>leaves %1 a piece, %2 on the line; the ladder asks %3 (%4)</source>
            <translation>deja %1 por pieza, %2 en la línea; los tramos piden %3 (%4)</translation>
        </message>
        <message>
            <source>leaves %1 a piece, %2 on the line, %5 of discount, rush and minimum counted in; the ladder asks %3 (%4)</source>
            <translation>deja %1 por pieza, %2 en la línea, contados %5 de descuento, urgencia y mínimo; los tramos piden %3 (%4)</translation>
        </message>
        <message>
            <source>%1 without tax</source>
            <translation>%1 sin impuesto</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>More or fewer, each — %1</source>
            <translation>Otras cantidades, c/u — %1</translation>
        </message>
        <message>
            <source>Whole order: costs %1, leaves %2, margin %3, %4 a bench hour.</source>
            <translation>Todo el pedido: cuesta %1, deja %2, margen %3, %4 por hora de taller.</translation>
        </message>
        <message>
            <source>Whole order: costs %1, leaves %2, margin %3.</source>
            <translation>Todo el pedido: cuesta %1, deja %2, margen %3.</translation>
        </message>
        <message>
            <source>Not in the price: %1</source>
            <translation>No está en el precio: %1</translation>
        </message>
    </context>
    <context>
        <name>sp::counter::SlipLines</name>
        <message>
            <source>The slip, as the customer gets it</source>
            <translation>El ticket, como lo recibe el cliente</translation>
        </message>
    </context>
    <context>
        <name>sp::counter::SlipPanel</name>
        <message>
            <source>R&amp;evise this quote</source>
            <translation>Modifica&amp;r este presupuesto</translation>
        </message>
        <message>
            <source>P&amp;rint</source>
            <translation>I&amp;mprimir</translation>
        </message>
        <message>
            <source>Turn o&amp;ver</source>
            <translation>&amp;Voltear</translation>
        </message>
        <message>
            <source>Shows the owner’s side, or the customer’s again (F9)</source>
            <translation>Muestra el lado del dueño, o de nuevo el del cliente (F9)</translation>
        </message>
        <message>
            <source>%1 each, to pay %2</source>
            <translation>%1 c/u, a pagar %2</translation>
        </message>
        <message>
            <source>To pay %1</source>
            <translation>A pagar %1</translation>
        </message>
        <message>
            <source>More or fewer of %1, each</source>
            <translation>Otras cantidades de %1, c/u</translation>
        </message>
        <message>
            <source>Order a&amp;gain</source>
            <translation>Pedir otra ve&amp;z</translation>
        </message>
        <message>
            <source>&amp;Give the revision</source>
            <translation>Da&amp;r la modificación</translation>
        </message>
        <message>
            <source>&amp;Give this quote</source>
            <translation>Da&amp;r este presupuesto</translation>
        </message>
        <message>
            <source>Changes what was ordered, at today’s prices; this quote is kept as it is</source>
            <translation>Cambia lo que se pidió, a precios de hoy; este presupuesto se conserva como está</translation>
        </message>
        <message>
            <source>Shows the quote sheet to print or save (Ctrl+P)</source>
            <translation>Muestra la hoja del presupuesto para imprimir o guardar (Ctrl+P)</translation>
        </message>
        <message>
            <source>Starts a new order with what this quote holds, at today’s prices</source>
            <translation>Empieza un pedido nuevo con lo que contiene este presupuesto, a precios de hoy</translation>
        </message>
        <message>
            <source>Numbers the quote and keeps it as it is (Ctrl+Enter)</source>
            <translation>Numera el presupuesto y lo conserva como está (Ctrl+Enter)</translation>
        </message>
    </context>
    <context>
        <name>sp::counter::SlipTotals</name>
        <message>
            <source>%1 at %2 each</source>
            <translation>%1 a %2 c/u</translation>
        </message>
    </context>
    <context>
        <name>sp::counter::StoneRows</name>
        <message>
            <source>Type part of its name</source>
            <translation>Escriba parte de su nombre</translation>
        </message>
        <message>
            <source>Add a colo&amp;ur</source>
            <translation>Añadir un c&amp;olor</translation>
        </message>
        <message>
            <source>Stones</source>
            <translation>Piedras</translation>
        </message>
        <message>
            <source>per piece</source>
            <translation>por pieza</translation>
        </message>
        <message>
            <source>to brush</source>
            <translation>a cepillar</translation>
        </message>
        <message>
            <source>on the shelf</source>
            <translation>estante</translation>
        </message>
        <message>
            <source>a stone that is gone</source>
            <translation>una piedra que ya no está</translation>
        </message>
        <message>
            <source>%1 per piece</source>
            <translation>%1 por pieza</translation>
        </message>
        <message>
            <source>%1 to brush</source>
            <translation>%1 a cepillar</translation>
        </message>
        <message>
            <source>%1 on the shelf</source>
            <translation>%1 en el estante</translation>
        </message>
        <message>
            <source>Take %1 out</source>
            <translation>Quitar %1</translation>
        </message>
    </context>
    <context>
        <name>sp::customers::CertificateRows</name>
        <message>
            <source>+ further certificate</source>
            <translation>+ otro certificado</translation>
        </message>
        <message>
            <source>number</source>
            <translation>número</translation>
        </message>
        <message>
            <source>good for</source>
            <translation>válido en</translation>
        </message>
        <message>
            <source>issued on</source>
            <translation>emitido el</translation>
        </message>
        <message>
            <source>expires on</source>
            <translation>vence el</translation>
        </message>
        <message>
            <source>number of further certificate %1</source>
            <translation>número del otro certificado %1</translation>
        </message>
        <message>
            <source>what further certificate %1 is good for</source>
            <translation>para dónde vale el otro certificado %1</translation>
        </message>
        <message>
            <source>day of issue of further certificate %1</source>
            <translation>fecha de emisión del otro certificado %1</translation>
        </message>
        <message>
            <source>day of expiry of further certificate %1</source>
            <translation>fecha de vencimiento del otro certificado %1</translation>
        </message>
        <message>
            <source>Take further certificate %1 out</source>
            <translation>Quitar el otro certificado %1</translation>
        </message>
    </context>
    <context>
        <name>sp::customers::ContactsDialog</name>
        <message>
            <source>there already; what was lacking is filled in, with a certificate of exemption</source>
            <translation>ya estaba; se completó lo que faltaba, con un certificado de exención</translation>
        </message>
        <message>
            <source>new</source>
            <translation>nuevo</translation>
        </message>
        <message>
            <source>there already; what was lacking is filled in</source>
            <translation>ya estaba; se completó lo que faltaba</translation>
        </message>
        <message>
            <source>there already</source>
            <translation>ya estaba</translation>
        </message>
        <message>
            <source>left out: somebody else has the name, telephone or mail</source>
            <translation>omitido: otra persona tiene ese nombre, teléfono o correo</translation>
        </message>
        <message>
            <source>Customers out of a file</source>
            <translation>Clientes de un archivo</translation>
        </message>
        <message>
            <source>Name</source>
            <translation>Nombre</translation>
        </message>
        <message>
            <source>What becomes of it</source>
            <translation>Qué pasa con él</translation>
        </message>
        <message>
            <source>left out: %1</source>
            <translation>omitido: %1</translation>
        </message>
        <message>
            <source>&amp;Take them into the book</source>
            <translation>&amp;Pasarlos al libro</translation>
        </message>
        <message>
            <source>&amp;Back</source>
            <translation>&amp;Atrás</translation>
        </message>
    </context>
    <context>
        <name>sp::customers::CustomerFields</name>
        <message>
            <source>Give the customer a name.</source>
            <translation>Dé un nombre al cliente.</translation>
        </message>
        <message>
            <source>as the shop</source>
            <translation>como el negocio</translation>
        </message>
        <message>
            <source>Name</source>
            <translation>Nombre</translation>
        </message>
        <message>
            <source>Telephone</source>
            <translation>Teléfono</translation>
        </message>
        <message>
            <source>Mail</source>
            <translation>Correo</translation>
        </message>
        <message>
            <source>Address</source>
            <translation>Dirección</translation>
        </message>
        <message>
            <source>Note, for the shop alone</source>
            <translation>Nota, solo para el negocio</translation>
        </message>
        <message>
            <source>Exemption certificate, number</source>
            <translation>Certificado de exención, número</translation>
        </message>
        <message>
            <source>Good for (state or country)</source>
            <translation>Válido en (estado o país)</translation>
        </message>
        <message>
            <source>Issued on</source>
            <translation>Emitido el</translation>
        </message>
        <message>
            <source>Expires on, if it does</source>
            <translation>Vence el, si vence</translation>
        </message>
        <message>
            <source>Language</source>
            <translation>Idioma</translation>
        </message>
        <message>
            <source>The same person as</source>
            <translation>La misma persona que</translation>
        </message>
        <message>
            <source>makes the two one; quotes given stay as they are</source>
            <translation>hace de los dos uno; los presupuestos dados se quedan como están</translation>
        </message>
        <message>
            <source>of quotes and bills for them</source>
            <translation>de sus presupuestos y facturas</translation>
        </message>
    </context>
    <context>
        <name>sp::customers::CustomerPictures</name>
        <message>
            <source>Designs of their jobs</source>
            <translation>Diseños de sus trabajos</translation>
        </message>
        <message>
            <source>Picture of %1</source>
            <translation>Imagen de %1</translation>
        </message>
    </context>
    <context>
        <name>sp::customers::CustomersPage</name>
        <message>
            <source>Customers</source>
            <translation>Clientes</translation>
        </message>
        <message>
            <source>&amp;Find by name, telephone or mail</source>
            <translation>&amp;Buscar por nombre, teléfono o correo</translation>
        </message>
        <message>
            <source>No customer is called so.</source>
            <translation>Ningún cliente se llama así.</translation>
        </message>
        <message>
            <source>&amp;New customer</source>
            <translation>Cliente &amp;nuevo</translation>
        </message>
        <message>
            <source>&amp;Read from a file…</source>
            <translation>&amp;Leer de un archivo…</translation>
        </message>
        <message>
            <source>&amp;Write to a file…</source>
            <translation>&amp;Escribir en un archivo…</translation>
        </message>
        <message>
            <source>No customer is here yet.</source>
            <translation>Aún no hay ningún cliente aquí.</translation>
        </message>
        <message>
            <source>New customer</source>
            <translation>Cliente nuevo</translation>
        </message>
        <message>
            <source>E&amp;xport…</source>
            <translation>E&amp;xportar…</translation>
        </message>
        <message>
            <source>Writes all that the book has of this customer, and their papers as PDF</source>
            <translation>Escribe todo lo que el libro tiene de este cliente, y sus documentos como PDF</translation>
        </message>
        <message>
            <source>&amp;Erase…</source>
            <translation>B&amp;orrar…</translation>
        </message>
        <message>
            <source>Takes the person out of the book for good; jobs and sums stay</source>
            <translation>Quita a la persona del libro para siempre; los trabajos y los importes se quedan</translation>
        </message>
        <message>
            <source>Whether a certificate holds is for you to confirm with your tax authority. Without one in force on file tax is charged.</source>
            <translation>Si un certificado vale, a usted le toca confirmarlo con su autoridad fiscal. Sin uno vigente presentado se cobra el impuesto.</translation>
        </message>
        <message>
            <source>Jobs</source>
            <translation>Trabajos</translation>
        </message>
        <message>
            <source>Number</source>
            <translation>Número</translation>
        </message>
        <message>
            <source>Day</source>
            <translation>Día</translation>
        </message>
        <message>
            <source>What</source>
            <translation>Concepto</translation>
        </message>
        <message>
            <source>Stage</source>
            <translation>Etapa</translation>
        </message>
        <message>
            <source>Total</source>
            <translation>Total</translation>
        </message>
        <message>
            <source>Paid</source>
            <translation>Pagado</translation>
        </message>
        <message>
            <source>The certificate of exemption for %1 ended on %2; ask for a new one.</source>
            <translation>El certificado de exención de %1 venció el %2; pida uno nuevo.</translation>
        </message>
        <message>
            <source>The certificate of exemption for %1 ends on %2; ask for a new one.</source>
            <translation>El certificado de exención de %1 vence el %2; pida uno nuevo.</translation>
        </message>
        <message>
            <source>Nothing was ordered yet.</source>
            <translation>Aún no se ha pedido nada.</translation>
        </message>
        <message>
            <source>Owes nothing.</source>
            <translation>No debe nada.</translation>
        </message>
        <message>
            <source>Owes %1.</source>
            <translation>Debe %1.</translation>
        </message>
        <message>
            <source>Owes %1, has a credit of %2.</source>
            <translation>Debe %1, tiene un saldo a favor de %2.</translation>
        </message>
        <message>
            <source>Where the customer’s folder is to be</source>
            <translation>Dónde irá la carpeta del cliente</translation>
        </message>
        <message>
            <source>All of the customer is in “%1”; keep it as you keep the book.</source>
            <translation>Todo lo del cliente está en «%1»; guárdelo igual que el libro.</translation>
        </message>
        <message>
            <source>Read customers</source>
            <translation>Leer clientes</translation>
        </message>
        <message>
            <source>Contacts (*.vcf *.csv)</source>
            <translation>Contactos (*.vcf *.csv)</translation>
        </message>
        <message>
            <source>“%1” cannot be read; look whether it is there and yours to read.</source>
            <translation>No se puede leer «%1»; vea si está ahí y si usted puede leerlo.</translation>
        </message>
        <message>
            <source>Write customers</source>
            <translation>Escribir clientes</translation>
        </message>
        <message>
            <source>Cards (*.vcf);;Table (*.csv)</source>
            <translation>Tarjetas (*.vcf);;Tabla (*.csv)</translation>
        </message>
        <message>
            <source>“%1” is written; it names customers, keep it as you keep the book.</source>
            <translation>«%1» está escrito; nombra a clientes, guárdelo igual que el libro.</translation>
        </message>
    </context>
    <context>
        <name>sp::customers::CustomersPresenter</name>
        <message>
            <source>Customer</source>
            <translation>Cliente</translation>
        </message>
        <message>
            <source>New customer</source>
            <translation>Cliente nuevo</translation>
        </message>
    </context>
    <context>
        <name>sp::customers::EraseDialog</name>
        <message>
            <source>Erase %1?</source>
            <translation>¿Borrar a %1?</translation>
        </message>
        <message>
            <source>These copies of the book hold the person still. The days hold if the book is used every day; a copy that you delete yourself is gone at once.</source>
            <translation>Estas copias del libro aún contienen a la persona. Los días valen si el libro se usa a diario; una copia que usted mismo borre desaparece al instante.</translation>
        </message>
        <message>
            <source>Copy</source>
            <translation>Copia</translation>
        </message>
        <message>
            <source>Goes on</source>
            <translation>Desaparece el</translation>
        </message>
        <message>
            <source>%1, in the second place</source>
            <translation>%1, en el segundo lugar</translation>
        </message>
        <message>
            <source>when you delete it</source>
            <translation>cuando usted la borre</translation>
        </message>
        <message>
            <source>&amp;Erase for good</source>
            <translation>&amp;Borrar para siempre</translation>
        </message>
        <message>
            <source>&amp;Keep</source>
            <translation>&amp;Conservar</translation>
        </message>
        <message>
            <source>&amp;Close</source>
            <translation>C&amp;errar</translation>
        </message>
    </context>
    <context>
        <name>sp::designs::DesignStones</name>
        <message>
            <source>Stones a piece</source>
            <translation>Piedras por pieza</translation>
        </message>
        <message>
            <source>Add a colour</source>
            <translation>Añadir un color</translation>
        </message>
        <message>
            <source>+ colour: type part of its name</source>
            <translation>+ color: escriba parte de su nombre</translation>
        </message>
        <message>
            <source>a stone that is gone</source>
            <translation>una piedra que ya no está</translation>
        </message>
        <message>
            <source>%1 a piece</source>
            <translation>%1 por pieza</translation>
        </message>
        <message>
            <source>Take %1 out</source>
            <translation>Quitar %1</translation>
        </message>
    </context>
    <context>
        <name>sp::designs::DesignsPage</name>
        <message>
            <source>Designs</source>
            <translation>Diseños</translation>
        </message>
        <message>
            <source>&amp;Find by name</source>
            <translation>&amp;Buscar por nombre</translation>
        </message>
        <message>
            <source>No design is called that.</source>
            <translation>Ningún diseño se llama así.</translation>
        </message>
        <message>
            <source>&amp;New design</source>
            <translation>Diseño &amp;nuevo</translation>
        </message>
        <message>
            <source>&amp;Count a cut file…</source>
            <translation>&amp;Contar un archivo de corte…</translation>
        </message>
        <message>
            <source>Esti&amp;mate stones…</source>
            <translation>&amp;Estimar piedras…</translation>
        </message>
        <message>
            <source>No design is here yet.</source>
            <translation>Aún no hay ningún diseño aquí.</translation>
        </message>
        <message>
            <source>New design</source>
            <translation>Diseño nuevo</translation>
        </message>
        <message>
            <source>&amp;Duplicate</source>
            <translation>D&amp;uplicar</translation>
        </message>
        <message>
            <source>&amp;Remove</source>
            <translation>&amp;Quitar</translation>
        </message>
        <message>
            <source>Give the design a name.</source>
            <translation>Dé un nombre al diseño.</translation>
        </message>
        <message>
            <source>&amp;Templates on the wall</source>
            <translation>Plantillas en la pare&amp;d</translation>
        </message>
        <message>
            <source>N&amp;ame</source>
            <translation>No&amp;mbre</translation>
        </message>
        <message>
            <source>&amp;Width</source>
            <translation>&amp;Ancho</translation>
        </message>
        <message>
            <source>&amp;Height</source>
            <translation>A&amp;lto</translation>
        </message>
        <message>
            <source>Goes &amp;on, as a rule</source>
            <translation>Va s&amp;obre, por lo común</translation>
        </message>
        <message>
            <source>Art t&amp;ime</source>
            <translation>T&amp;iempo de arte</translation>
        </message>
        <message>
            <source>empty: the bench standard</source>
            <translation>vacío: lo estándar del taller</translation>
        </message>
        <message>
            <source>&amp;Planned pieces</source>
            <translation>&amp;Piezas previstas</translation>
        </message>
        <message>
            <source>the set of templates is paid off over them</source>
            <translation>entre ellas se amortiza el juego de plantillas</translation>
        </message>
        <message>
            <source>Not&amp;e</source>
            <translation>No&amp;ta</translation>
        </message>
        <message>
            <source>The picture is of other counts than this design has.</source>
            <translation>La imagen es de otras cuentas que las de este diseño.</translation>
        </message>
        <message>
            <source>&amp;Sheet plan…</source>
            <translation>Plan de lámina&amp;s…</translation>
        </message>
        <message>
            <source>How templates, tape and backing of this design lie on their sheets</source>
            <translation>Cómo van en sus láminas las plantillas, la cinta y el respaldo de este diseño</translation>
        </message>
        <message>
            <source>Its own pac&amp;king, instead of the shop’s</source>
            <translation>Su p&amp;ropio empaque, en vez del habitual</translation>
        </message>
        <message>
            <source>Where stones would sit in %1</source>
            <translation>Dónde irían las piedras en %1</translation>
        </message>
        <message>
            <source>What was counted in %1</source>
            <translation>Lo que se contó en %1</translation>
        </message>
        <message>
            <source>Estimated from %1, kept with the design.</source>
            <translation>Estimado de %1, guardado con el diseño.</translation>
        </message>
        <message>
            <source>Counted from %1, kept with the design.</source>
            <translation>Contado de %1, guardado con el diseño.</translation>
        </message>
        <message>
            <source> · on the wall</source>
            <translation> · en la pared</translation>
        </message>
        <message>
            <source> · estimated</source>
            <translation> · estimado</translation>
        </message>
        <message numerus="yes">
            <source>%1 stones a piece, as many holes to cut; one template for each colour.</source>
            <translation>
                <numerusform>%1 piedra por pieza, un agujero que cortar; una plantilla para cada color.</numerusform>
                <numerusform>%1 piedras por pieza, otros tantos agujeros que cortar; una plantilla para cada color.</numerusform>
            </translation>
        </message>
        <message>
            <source>%1 of %2 pieces sold</source>
            <translation>%1 de %2 piezas vendidas</translation>
        </message>
        <message>
            <source>%1; %2 of %3 paid for the set of templates.</source>
            <translation>%1; %2 de %3 pagados por el juego de plantillas.</translation>
        </message>
        <message>
            <source>%1; what the set of templates costs is kept once a job of it is agreed.</source>
            <translation>%1; lo que cuesta el juego de plantillas se guarda cuando se acuerda un trabajo.</translation>
        </message>
        <message>
            <source>%1 a sheet</source>
            <translation>%1 por lámina</translation>
        </message>
        <message>
            <source>“%1” is removed.</source>
            <translation>«%1» se quitó.</translation>
        </message>
        <message>
            <source>Undo</source>
            <translation>Deshacer</translation>
        </message>
    </context>
    <context>
        <name>sp::designs::DesignsPresenter</name>
        <message>
            <source>New design</source>
            <translation>Diseño nuevo</translation>
        </message>
        <message>
            <source>%1 copy</source>
            <translation>%1 copia</translation>
        </message>
    </context>
    <context>
        <name>sp::desk::ChoiceField</name>
        <message>
            <source>Nothing is called “%1”; choose from the list.</source>
            <translation>Nada se llama «%1»; elija de la lista.</translation>
        </message>
        <message>
            <source>Choose one; type part of its name.</source>
            <translation>Elija uno; escriba parte de su nombre.</translation>
        </message>
    </context>
    <context>
        <name>sp::desk::ChoicePopup</name>
        <message>
            <source>Choices</source>
            <translation>Opciones</translation>
        </message>
    </context>
    <context>
        <name>sp::desk::ListPage</name>
        <message>
            <source>Nothing yet</source>
            <translation>Aún nada</translation>
        </message>
    </context>
    <context>
        <name>sp::desk::MessageBar</name>
        <message>
            <source>Close message</source>
            <translation>Cerrar mensaje</translation>
        </message>
    </context>
    <context>
        <name>sp::desk::PackingRows</name>
        <message>
            <source>+ packing</source>
            <translation>+ empaque</translation>
        </message>
        <message>
            <source>There is no packing yet; add some in Supplies.</source>
            <translation>Aún no hay empaque; añada algo en Insumos.</translation>
        </message>
        <message>
            <source>All the packing there is goes along; add more in Supplies.</source>
            <translation>Ya va todo el empaque que hay; añada más en Insumos.</translation>
        </message>
        <message>
            <source>packing</source>
            <translation>empaque</translation>
        </message>
        <message>
            <source>so many</source>
            <translation>cuántos</translation>
        </message>
        <message>
            <source>go with</source>
            <translation>van con</translation>
        </message>
        <message>
            <source>packing %1</source>
            <translation>empaque %1</translation>
        </message>
        <message>
            <source>how many of packing %1</source>
            <translation>cuántos del empaque %1</translation>
        </message>
        <message>
            <source>what packing %1 goes with</source>
            <translation>con qué va el empaque %1</translation>
        </message>
        <message>
            <source>each piece</source>
            <translation>cada pieza</translation>
        </message>
        <message>
            <source>each order</source>
            <translation>cada pedido</translation>
        </message>
        <message>
            <source>Take packing %1 out</source>
            <translation>Quitar el empaque %1</translation>
        </message>
    </context>
    <context>
        <name>sp::desk::Rail</name>
        <message>
            <source>Places</source>
            <translation>Lugares</translation>
        </message>
    </context>
    <context>
        <name>sp::desk::TypedField</name>
        <message>
            <source>This is still empty.</source>
            <translation>Esto aún está vacío.</translation>
        </message>
        <message>
            <source>This must be from %1 to %2.</source>
            <translation>Esto debe ser de %1 a %2.</translation>
        </message>
        <message>
            <source>This must be at least %1.</source>
            <translation>Esto debe ser al menos %1.</translation>
        </message>
        <message>
            <source>This can be at most %1.</source>
            <translation>Esto puede ser a lo sumo %1.</translation>
        </message>
    </context>
    <context>
        <name>sp::figures::FiguresPage</name>
        <message>
            <source>Figures</source>
            <translation>Cifras</translation>
        </message>
        <message>
            <source>Handed over in these days, without tax</source>
            <translation>Entregado en estos días, sin impuesto</translation>
        </message>
        <message>
            <source>Nothing was handed over in these days.</source>
            <translation>No se entregó nada en estos días.</translation>
        </message>
        <message>
            <source>To the time before</source>
            <translation>Al período anterior</translation>
        </message>
        <message>
            <source>What the shop earned is told once a job is collected.</source>
            <translation>Lo que ganó el negocio se dice cuando se recoge un trabajo.</translation>
        </message>
        <message>
            <source>To the jobs</source>
            <translation>A los trabajos</translation>
        </message>
        <message>
            <source>‹ The time before</source>
            <translation>‹ Período anterior</translation>
        </message>
        <message>
            <source>› The time after</source>
            <translation>› Período siguiente</translation>
        </message>
        <message>
            <source>How long</source>
            <translation>Período</translation>
        </message>
        <message>
            <source>How long a time is shown</source>
            <translation>Qué período se muestra</translation>
        </message>
        <message>
            <source>Month</source>
            <translation>Mes</translation>
        </message>
        <message>
            <source>Quarter</source>
            <translation>Trimestre</translation>
        </message>
        <message>
            <source>Year</source>
            <translation>Año</translation>
        </message>
        <message>
            <source>Earned per bench hour</source>
            <translation>Ganado por hora de taller</translation>
        </message>
        <message>
            <source>Income</source>
            <translation>Ingreso</translation>
        </message>
        <message>
            <source>Cost</source>
            <translation>Costo</translation>
        </message>
        <message>
            <source>Left</source>
            <translation>Queda</translation>
        </message>
        <message>
            <source>Margin</source>
            <translation>Margen</translation>
        </message>
        <message>
            <source>Bench time</source>
            <translation>Tiempo de taller</translation>
        </message>
        <message>
            <source>Where it came from</source>
            <translation>De dónde vino</translation>
        </message>
        <message>
            <source>By design</source>
            <translation>Por diseño</translation>
        </message>
        <message>
            <source>By week</source>
            <translation>Por semana</translation>
        </message>
        <message>
            <source>By month</source>
            <translation>Por mes</translation>
        </message>
        <message>
            <source>By customer</source>
            <translation>Por cliente</translation>
        </message>
        <message>
            <source>By quantity</source>
            <translation>Por cantidad</translation>
        </message>
        <message>
            <source>By blank</source>
            <translation>Por prenda base</translation>
        </message>
        <message>
            <source>outlined: cost, filled: left</source>
            <translation>contorno: costo, relleno: queda</translation>
        </message>
        <message>
            <source>What</source>
            <translation>Concepto</translation>
        </message>
        <message>
            <source>Pieces</source>
            <translation>Piezas</translation>
        </message>
        <message>
            <source>Cost and what is left</source>
            <translation>Costo y lo que queda</translation>
        </message>
        <message>
            <source>An hour</source>
            <translation>Por hora</translation>
        </message>
        <message>
            <source>Its jobs</source>
            <translation>Sus trabajos</translation>
        </message>
        <message>
            <source>Job</source>
            <translation>Trabajo</translation>
        </message>
        <message>
            <source>Handed over</source>
            <translation>Entregado</translation>
        </message>
        <message>
            <source>For</source>
            <translation>Para</translation>
        </message>
        <message>
            <source>Enter opens the job</source>
            <translation>Enter abre el trabajo</translation>
        </message>
        <message>
            <source>What the month costs anyway</source>
            <translation>Lo que el mes cuesta de todos modos</translation>
        </message>
        <message>
            <source>What became of the offers of these days</source>
            <translation>Qué pasó con las ofertas de estos días</translation>
        </message>
        <message>
            <source>Pieces of a line</source>
            <translation>Piezas de una línea</translation>
        </message>
        <message>
            <source>Won</source>
            <translation>Ganadas</translation>
        </message>
        <message>
            <source>Lost</source>
            <translation>Perdidas</translation>
        </message>
        <message>
            <source>Open</source>
            <translation>Abiertas</translation>
        </message>
        <message>
            <source>Share won</source>
            <translation>Parte ganada</translation>
        </message>
        <message>
            <source>Middle price won</source>
            <translation>Precio medio ganado</translation>
        </message>
        <message>
            <source>Middle price lost</source>
            <translation>Precio medio perdido</translation>
        </message>
        <message>
            <source>Tax of the invoices of these days</source>
            <translation>Impuesto de las facturas de estos días</translation>
        </message>
        <message>
            <source>Rate</source>
            <translation>Tasa</translation>
        </message>
        <message>
            <source>Without tax</source>
            <translation>Sin impuesto</translation>
        </message>
        <message>
            <source>Tax</source>
            <translation>Impuesto</translation>
        </message>
        <message>
            <source>Credit notes are taken off. What is owed of it, to whom and when, your tax authority or an accountant says.</source>
            <translation>Las notas de crédito están descontadas. Qué se debe de ello, a quién y cuándo, lo dice su autoridad fiscal o un contador.</translation>
        </message>
        <message>
            <source>Quarter %1 of %2</source>
            <translation>Trimestre %1 de %2</translation>
        </message>
        <message>
            <source>charges</source>
            <translation>cargos</translation>
        </message>
        <message>
            <source>%1 and more</source>
            <translation>%1 y más</translation>
        </message>
        <message>
            <source>%1 to %2</source>
            <translation>%1 a %2</translation>
        </message>
        <message>
            <source>week of %1</source>
            <translation>semana del %1</translation>
        </message>
        <message>
            <source>nobody named</source>
            <translation>sin nombre</translation>
        </message>
        <message>
            <source>without any</source>
            <translation>sin ninguna</translation>
        </message>
        <message>
            <source>not known</source>
            <translation>no se sabe</translation>
        </message>
        <message>
            <source>Hours of some jobs are not known any more.</source>
            <translation>De algunos trabajos ya no se conocen las horas.</translation>
        </message>
        <message>
            <source>(%1 left + %2 own work) ÷ %3</source>
            <translation>(%1 queda + %2 trabajo propio) ÷ %3</translation>
        </message>
        <message>
            <source>without time at the bench</source>
            <translation>sin tiempo de taller</translation>
        </message>
        <message>
            <source>as planned</source>
            <translation>según lo previsto</translation>
        </message>
        <message>
            <source>income less cost</source>
            <translation>ingreso menos costo</translation>
        </message>
        <message>
            <source>of income</source>
            <translation>del ingreso</translation>
        </message>
        <message>
            <source>cost %1, left %2</source>
            <translation>costo %1, queda %2</translation>
        </message>
        <message>
            <source>Left out, since their cost is not known any more: %1</source>
            <translation>Omitidos, pues ya no se conoce su costo: %1</translation>
        </message>
        <message>
            <source>, </source>
            <translation>, </translation>
        </message>
        <message>
            <source>The month costs %1 anyway; %2 is there for it, so all of it is carried.</source>
            <translation>El mes cuesta %1 de todos modos; para ello hay %2, así que todo está cubierto.</translation>
        </message>
        <message>
            <source>Of %1 that the month costs anyway, %2 is carried; %3 is to go.</source>
            <translation>De los %1 que el mes cuesta de todos modos, %2 están cubiertos; faltan %3.</translation>
        </message>
        <message>
            <source>That is %1 more like these.</source>
            <translation>Son %1 más como estas.</translation>
        </message>
        <message>
            <source>Or %1 more at the bench like these.</source>
            <translation>O %1 más de taller como estas.</translation>
        </message>
        <message>
            <source>customers exempt</source>
            <translation>clientes exentos</translation>
        </message>
        <message>
            <source>not taxed</source>
            <translation>sin gravar</translation>
        </message>
        <message>
            <source>together</source>
            <translation>en total</translation>
        </message>
        <message numerus="yes">
            <source>and %n more jobs</source>
            <translation>
                <numerusform>y %n trabajo más</numerusform>
                <numerusform>y %n trabajos más</numerusform>
            </translation>
        </message>
        <message>
            <source>Together %1 cost + %2 left = %3</source>
            <translation>En total %1 costo + %2 queda = %3</translation>
        </message>
    </context>
    <context>
        <name>sp::first_hour::FirstDesign</name>
        <message>
            <source>Give the design a name.</source>
            <translation>Dé un nombre al diseño.</translation>
        </message>
        <message>
            <source>Na&amp;me</source>
            <translation>No&amp;mbre</translation>
        </message>
        <message>
            <source>&amp;Width</source>
            <translation>&amp;Ancho</translation>
        </message>
        <message>
            <source>Hei&amp;ght</source>
            <translation>A&amp;lto</translation>
        </message>
        <message>
            <source>stone</source>
            <translation>piedra</translation>
        </message>
        <message>
            <source>on one piece</source>
            <translation>en una pieza</translation>
        </message>
        <message>
            <source>No stone has a price yet: give one first, or count a cut file.</source>
            <translation>Ninguna piedra tiene precio aún: dé uno antes, o cuente un archivo de corte.</translation>
        </message>
        <message>
            <source>%1 on one piece</source>
            <translation>%1 en una pieza</translation>
        </message>
        <message>
            <source>Give the width and the height of the design.</source>
            <translation>Dé el ancho y el alto del diseño.</translation>
        </message>
        <message>
            <source>Give how many stones are on one piece.</source>
            <translation>Dé cuántas piedras hay en una pieza.</translation>
        </message>
    </context>
    <context>
        <name>sp::first_hour::FirstHourPage</name>
        <message>
            <source>Ste&amp;ps</source>
            <translation>&amp;Pasos</translation>
        </message>
        <message>
            <source>This step</source>
            <translation>Este paso</translation>
        </message>
        <message>
            <source>A price today</source>
            <translation>Un precio hoy</translation>
        </message>
        <message>
            <source>Setting up</source>
            <translation>Arranque</translation>
        </message>
        <message>
            <source>Put t&amp;his place away</source>
            <translation>Retirar este lu&amp;gar</translation>
        </message>
        <message>
            <source>Shop brings it back, under Letterhead</source>
            <translation>Negocio lo trae de vuelta, en Membrete</translation>
        </message>
        <message>
            <source>Enter goes to the next field, Ctrl+Enter to the next step. What you leave open can be done later.</source>
            <translation>Enter pasa al campo siguiente, Ctrl+Enter al paso siguiente. Lo que deje abierto se puede hacer después.</translation>
        </message>
        <message>
            <source>It stands at the head of every quote sheet. More of it is at Shop.</source>
            <translation>Encabeza cada hoja de presupuesto. Hay más en Negocio.</translation>
        </message>
        <message>
            <source>Name of the &amp;shop</source>
            <translation>Nombre del &amp;negocio</translation>
        </message>
        <message>
            <source>&amp;Address, and how to reach the shop</source>
            <translation>&amp;Dirección y cómo localizar el negocio</translation>
        </message>
        <message>
            <source>Rates and rules are yours to confirm with your tax authority or an accountant. Where prices are told with the tax in them, tick it.</source>
            <translation>A usted le toca confirmar tasas y reglas con su autoridad fiscal o un contador. Si los precios se dicen con el impuesto incluido, márquelo.</translation>
        </message>
        <message>
            <source>&amp;Tax is called</source>
            <translation>El &amp;impuesto se llama</translation>
        </message>
        <message>
            <source>Tax &amp;rate</source>
            <translation>&amp;Tasa de impuesto</translation>
        </message>
        <message>
            <source>Prices hold the tax</source>
            <translation>Precios con impuesto</translation>
        </message>
        <message>
            <source>No tax is meant</source>
            <translation>Sin impuesto, adrede</translation>
        </message>
        <message>
            <source>What an hour at the bench is to earn for whoever works there, and what a month costs before a single piece is made: rent, power, insurance.</source>
            <translation>Lo que debe ganar una hora de taller para quien trabaja allí, y lo que cuesta un mes antes de hacer una sola pieza: renta, luz, seguro.</translation>
        </message>
        <message>
            <source>Lab&amp;our per hour</source>
            <translation>Mano de ob&amp;ra por hora</translation>
        </message>
        <message>
            <source>O&amp;verhead per month</source>
            <translation>Gastos g&amp;enerales al mes</translation>
        </message>
        <message>
            <source>Bench &amp;time per month</source>
            <translation>&amp;Tiempo de taller al mes</translation>
        </message>
        <message>
            <source>hours that carry it</source>
            <translation>horas que los cargan</translation>
        </message>
        <message>
            <source>No labour is meant</source>
            <translation>Sin mano de obra, adrede</translation>
        </message>
        <message>
            <source>No overhead is meant</source>
            <translation>Sin gastos, adrede</translation>
        </message>
        <message>
            <source>Type what a pack costs you; leave empty what you do not buy. What has a price goes into every line from then on.</source>
            <translation>Escriba lo que le cuesta un paquete; deje vacío lo que no compra. Lo que tiene precio entra desde entonces en cada línea.</translation>
        </message>
        <message>
            <source>No tape is meant</source>
            <translation>Sin cinta, adrede</translation>
        </message>
        <message>
            <source>No template is meant</source>
            <translation>Sin plantilla, adrede</translation>
        </message>
        <message>
            <source>Type what a pack costs you; leave empty what you do not buy. Two of a hundred are reckoned as spilled or flawed: Supplies has the rest.</source>
            <translation>Escriba lo que le cuesta un paquete; deje vacío lo que no compra. Dos de cada cien se calculan como derramadas o defectuosas: lo demás está en Insumos.</translation>
        </message>
        <message>
            <source>Take them from a supplier’s list…</source>
            <translation>Tomarlas de la lista de un proveedor…</translation>
        </message>
        <message>
            <source>Drop a cut file on the window to have its stones counted, or type one in.</source>
            <translation>Suelte un archivo de corte en la ventana para que se cuenten sus piedras, o escriba un diseño.</translation>
        </message>
        <message>
            <source>Count a cut file…</source>
            <translation>Contar un archivo de corte…</translation>
        </message>
        <message>
            <source>At the Counter the first design lies ready: type how many, and whom it is for. Ctrl+Enter there gives the quote and saves its sheet. This place leaves once all is done.</source>
            <translation>En el Mostrador está listo el primer diseño: escriba cuántos y para quién. Ctrl+Enter allí da el presupuesto y guarda su hoja. Este lugar se va cuando todo está hecho.</translation>
        </message>
        <message>
            <source>&amp;Next: %1</source>
            <translation>&amp;Siguiente: %1</translation>
        </message>
        <message>
            <source>To the Cou&amp;nter</source>
            <translation>Al M&amp;ostrador</translation>
        </message>
        <message>
            <source>A piece, so far</source>
            <translation>Una pieza, hasta ahora</translation>
        </message>
        <message>
            <source>All is done; this place leaves when the window is opened the next time.</source>
            <translation>Todo está hecho; este lugar se va la próxima vez que se abra la ventana.</translation>
        </message>
        <message>
            <source>%1 of %2 done. You can price at any time.</source>
            <translation>%1 de %2 hechos. Puede poner precios en cualquier momento.</translation>
        </message>
        <message>
            <source>The sheet does not say whose it is</source>
            <translation>La hoja no dice de quién es</translation>
        </message>
        <message>
            <source>%1, no tax is charged</source>
            <translation>%1, no se cobra impuesto</translation>
        </message>
        <message>
            <source>%1, no tax</source>
            <translation>%1, sin impuesto</translation>
        </message>
        <message>
            <source>%1, %2 %3 %</source>
            <translation>%1, %2 %3 %</translation>
        </message>
        <message>
            <source>%1 an hour, %2 a month</source>
            <translation>%1 por hora, %2 al mes</translation>
        </message>
        <message>
            <source>Your time counts %1</source>
            <translation>Su tiempo cuenta %1</translation>
        </message>
        <message>
            <source>A month counts %1</source>
            <translation>Un mes cuenta %1</translation>
        </message>
        <message>
            <source>Tape and template</source>
            <translation>Cinta y plantilla</translation>
        </message>
        <message>
            <source>Tape or template is in no price</source>
            <translation>La cinta o la plantilla no está en ningún precio</translation>
        </message>
        <message>
            <source>%1 with a price</source>
            <translation>%1 con precio</translation>
        </message>
        <message>
            <source>None has a price</source>
            <translation>Ninguna tiene precio</translation>
        </message>
        <message>
            <source>Drop a cut file, or type one</source>
            <translation>Suelte un archivo de corte o escriba un diseño</translation>
        </message>
        <message>
            <source>Given</source>
            <translation>Dado</translation>
        </message>
        <message>
            <source>For the next one through the door</source>
            <translation>Para el próximo que entre por la puerta</translation>
        </message>
    </context>
    <context>
        <name>sp::first_hour::FirstHourPresenter</name>
        <message>
            <source>Sheet supplier</source>
            <translation>Proveedor de láminas</translation>
        </message>
        <message>
            <source>Stone supplier</source>
            <translation>Proveedor de piedras</translation>
        </message>
    </context>
    <context>
        <name>sp::first_hour::PriceToday</name>
        <message>
            <source>What is not in it</source>
            <translation>Lo que no incluye</translation>
        </message>
        <message>
            <source>A price today</source>
            <translation>Un precio hoy</translation>
        </message>
        <message>
            <source>The first stone with a price starts it: then some pieces are priced here as a customer would pay for them.</source>
            <translation>Lo inicia la primera piedra con precio: entonces se calcula aquí lo que un cliente pagaría por algunas piezas.</translation>
        </message>
        <message>
            <source>Tried on %1 decals of %2 with stones of yours.</source>
            <translation>Probado con %1 calcomanías de %2 con piedras suyas.</translation>
        </message>
        <message>
            <source>Tried on %1 of %2.</source>
            <translation>Probado con %1 de %2.</translation>
        </message>
        <message>
            <source>No backing has a price yet: a garment is reckoned that the customer brings.</source>
            <translation>Ningún respaldo tiene precio aún: se calcula una prenda que trae el cliente.</translation>
        </message>
        <message>
            <source>Rounding</source>
            <translation>Redondeo</translation>
        </message>
        <message>
            <source>Mark-up, rounded</source>
            <translation>Recargo, redondeado</translation>
        </message>
        <message>
            <source>A piece, so far</source>
            <translation>Una pieza, hasta ahora</translation>
        </message>
        <message>
            <source>Each %1 an hour adds %2 to a piece.</source>
            <translation>Cada %1 por hora suma %2 a una pieza.</translation>
        </message>
        <message>
            <source>Too low to live on yet: nothing in it pays for your hours.</source>
            <translation>Aún muy bajo para vivir de ello: nada en él paga sus horas.</translation>
        </message>
    </context>
    <context>
        <name>sp::first_hour::StepList</name>
        <message>
            <source>Steps</source>
            <translation>Pasos</translation>
        </message>
        <message>
            <source>Letterhead</source>
            <translation>Membrete</translation>
        </message>
        <message>
            <source>Currency and tax</source>
            <translation>Moneda e impuesto</translation>
        </message>
        <message>
            <source>An hour’s worth</source>
            <translation>Lo que vale una hora</translation>
        </message>
        <message>
            <source>What every line takes</source>
            <translation>Lo que lleva cada línea</translation>
        </message>
        <message>
            <source>First stones</source>
            <translation>Primeras piedras</translation>
        </message>
        <message>
            <source>First design</source>
            <translation>Primer diseño</translation>
        </message>
        <message>
            <source>First quote</source>
            <translation>Primer presupuesto</translation>
        </message>
    </context>
    <context>
        <name>sp::first_hour::SupplyRows</name>
        <message>
            <source>supply</source>
            <translation>insumo</translation>
        </message>
        <message>
            <source>size</source>
            <translation>tamaño</translation>
        </message>
        <message>
            <source>pack</source>
            <translation>paquete</translation>
        </message>
        <message>
            <source>price of a pack</source>
            <translation>precio</translation>
        </message>
        <message>
            <source>which is</source>
            <translation>que es</translation>
        </message>
        <message>
            <source>Call them “%1”</source>
            <translation>Llamarlo «%1»</translation>
        </message>
        <message>
            <source>Bought &amp;from</source>
            <translation>&amp;Comprado a</translation>
        </message>
        <message>
            <source>Price of %1, %2</source>
            <translation>Precio de %1, %2</translation>
        </message>
        <message>
            <source>%1 a gross</source>
            <translation>%1/gruesa</translation>
        </message>
        <message>
            <source>%1 a piece</source>
            <translation>%1/pieza</translation>
        </message>
        <message>
            <source>%1 a sheet</source>
            <translation>%1/hoja</translation>
        </message>
    </context>
    <context>
        <name>sp::jobs::ChangesDialog</name>
        <message>
            <source>What has changed since quote %1</source>
            <translation>Qué ha cambiado desde el presupuesto %1</translation>
        </message>
        <message>
            <source>Quote %1, ordered again</source>
            <translation>Presupuesto %1, pedido otra vez</translation>
        </message>
        <message>
            <source>It cannot be priced with today’s prices. %1</source>
            <translation>No se puede calcular con los precios de hoy. %1</translation>
        </message>
        <message>
            <source>Close</source>
            <translation>Cerrar</translation>
        </message>
        <message>
            <source>As given</source>
            <translation>Como se dio</translation>
        </message>
        <message>
            <source>Today</source>
            <translation>Hoy</translation>
        </message>
        <message>
            <source>Difference</source>
            <translation>Diferencia</translation>
        </message>
        <message>
            <source>Nothing that this order uses has changed.</source>
            <translation>Nada de lo que usa este pedido ha cambiado.</translation>
        </message>
        <message>
            <source>The quote stays as it was given; this only says what it would come to.</source>
            <translation>El presupuesto se queda como se dio; esto solo dice lo que sumaría.</translation>
        </message>
        <message>
            <source>At today’s prices. What was for that once does not come along.</source>
            <translation>A precios de hoy. Lo que valía solo para esa vez no se incluye.</translation>
        </message>
        <message>
            <source>Why</source>
            <translation>Por qué</translation>
        </message>
        <message>
            <source>What</source>
            <translation>Concepto</translation>
        </message>
        <message>
            <source>was</source>
            <translation>antes</translation>
        </message>
        <message>
            <source>is</source>
            <translation>ahora</translation>
        </message>
        <message>
            <source>on the total</source>
            <translation>en el total</translation>
        </message>
        <message>
            <source>changed</source>
            <translation>cambió</translation>
        </message>
        <message>
            <source>By line</source>
            <translation>Por línea</translation>
        </message>
        <message>
            <source>Line</source>
            <translation>Línea</translation>
        </message>
        <message>
            <source>each, given</source>
            <translation>c/u, dado</translation>
        </message>
        <message>
            <source>each, today</source>
            <translation>c/u, hoy</translation>
        </message>
        <message>
            <source>on the line</source>
            <translation>en la línea</translation>
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
            <translation>Modificación del presupuesto %1</translation>
        </message>
        <message>
            <source>Quote %1 beside %2</source>
            <translation>Presupuesto %1 junto a %2</translation>
        </message>
        <message>
            <source>It was</source>
            <translation>Era</translation>
        </message>
        <message>
            <source>Revised</source>
            <translation>Modificado</translation>
        </message>
        <message>
            <source>Difference</source>
            <translation>Diferencia</translation>
        </message>
        <message>
            <source>Nothing is ordered otherwise, and it comes to the same.</source>
            <translation>No se pide nada distinto y suma lo mismo.</translation>
        </message>
        <message>
            <source>At today’s prices what was given would come to %1 less.</source>
            <translation>A precios de hoy, lo dado sumaría %1 menos.</translation>
        </message>
        <message>
            <source>At today’s prices what was given would come to %1 more.</source>
            <translation>A precios de hoy, lo dado sumaría %1 más.</translation>
        </message>
        <message>
            <source>Quote %1 is kept as it was given; what was paid stays with the job, and the customer agrees anew.</source>
            <translation>El presupuesto %1 se conserva como se dio; lo pagado queda con el trabajo, y el cliente lo acuerda de nuevo.</translation>
        </message>
        <message>
            <source>By line</source>
            <translation>Por línea</translation>
        </message>
        <message>
            <source>Line</source>
            <translation>Línea</translation>
        </message>
        <message>
            <source>each, was</source>
            <translation>c/u, antes</translation>
        </message>
        <message>
            <source>each, is</source>
            <translation>c/u, ahora</translation>
        </message>
        <message>
            <source>amount, was</source>
            <translation>importe, antes</translation>
        </message>
        <message>
            <source>amount, is</source>
            <translation>importe, ahora</translation>
        </message>
        <message>
            <source>difference</source>
            <translation>diferencia</translation>
        </message>
        <message>
            <source>The whole order</source>
            <translation>Todo el pedido</translation>
        </message>
        <message>
            <source>What</source>
            <translation>Concepto</translation>
        </message>
        <message>
            <source>was</source>
            <translation>antes</translation>
        </message>
        <message>
            <source>is</source>
            <translation>ahora</translation>
        </message>
        <message>
            <source>Not yet</source>
            <translation>Aún no</translation>
        </message>
        <message>
            <source>Close</source>
            <translation>Cerrar</translation>
        </message>
        <message>
            <source>&amp;Give the revision</source>
            <translation>Da&amp;r la modificación</translation>
        </message>
    </context>
    <context>
        <name>sp::jobs::JobFilters</name>
        <message>
            <source>Of any stage</source>
            <translation>De cualquier etapa</translation>
        </message>
        <message>
            <source>Lapsed</source>
            <translation>Vencidos</translation>
        </message>
        <message>
            <source>Of any day</source>
            <translation>De cualquier día</translation>
        </message>
        <message>
            <source>The last 7 days</source>
            <translation>Los últimos 7 días</translation>
        </message>
        <message>
            <source>The last 30 days</source>
            <translation>Los últimos 30 días</translation>
        </message>
        <message>
            <source>This year</source>
            <translation>Este año</translation>
        </message>
        <message>
            <source>Last year</source>
            <translation>El año pasado</translation>
        </message>
        <message>
            <source>Not paid</source>
            <translation>Sin pagar</translation>
        </message>
        <message>
            <source>Order and col&amp;umns</source>
            <translation>Orden y colum&amp;nas</translation>
        </message>
        <message>
            <source>The newest first</source>
            <translation>Primero los más nuevos</translation>
        </message>
        <message>
            <source>By: %1</source>
            <translation>Por: %1</translation>
        </message>
        <message>
            <source>The other way round</source>
            <translation>Al revés</translation>
        </message>
        <message>
            <source>Show: %1</source>
            <translation>Mostrar: %1</translation>
        </message>
        <message>
            <source>A&amp;ll jobs</source>
            <translation>&amp;Todos</translation>
        </message>
        <message>
            <source>On&amp;ly: %1</source>
            <translation>So&amp;lo: %1</translation>
        </message>
    </context>
    <context>
        <name>sp::jobs::JobStrip</name>
        <message>
            <source>To pay</source>
            <translation>A pagar</translation>
        </message>
        <message>
            <source>There is no choice “%1”; choose from the list.</source>
            <translation>No hay ninguna opción «%1»; elija de la lista.</translation>
        </message>
        <message>
            <source>Choice ta&amp;ken</source>
            <translation>Opción to&amp;mada</translation>
        </message>
        <message>
            <source>There is no stage “%1”; choose from the list.</source>
            <translation>No hay ninguna etapa «%1»; elija de la lista.</translation>
        </message>
        <message>
            <source>&amp;Stage</source>
            <translation>&amp;Etapa</translation>
        </message>
        <message>
            <source>Moves it on to the next stage; undo takes it back</source>
            <translation>Lo pasa a la etapa siguiente; deshacer lo devuelve</translation>
        </message>
        <message>
            <source>&amp;Money</source>
            <translation>&amp;Dinero</translation>
        </message>
        <message>
            <source>What was paid for it, and the next payment</source>
            <translation>Lo pagado por él, y el próximo pago</translation>
        </message>
        <message>
            <source>Pape&amp;rs</source>
            <translation>Doc&amp;umentos</translation>
        </message>
        <message>
            <source>Its quote, invoice, receipts and credit notes</source>
            <translation>Su presupuesto, factura, recibos y notas de crédito</translation>
        </message>
        <message>
            <source>How everything the chosen quotes need cut lies on its sheets; choose several with Shift or Ctrl</source>
            <translation>Cómo va en sus láminas todo lo que hay que cortar para los presupuestos elegidos; elija varios con Mayús o Ctrl</translation>
        </message>
        <message>
            <source>Bench sheet</source>
            <translation>Hoja de taller</translation>
        </message>
        <message>
            <source>What it is made by: colours in brushing order, what to fetch and cut, press and steps</source>
            <translation>Con qué se hace: colores en orden de cepillado, qué traer y cortar, prensa y pasos</translation>
        </message>
        <message>
            <source>&amp;What has changed since</source>
            <translation>&amp;Qué ha cambiado desde entonces</translation>
        </message>
        <message>
            <source>What the same order would come to today, and why</source>
            <translation>Lo que sumaría hoy el mismo pedido, y por qué</translation>
        </message>
        <message>
            <source>Order a&amp;gain</source>
            <translation>Pedir otra ve&amp;z</translation>
        </message>
        <message>
            <source>The same at the Counter once more, at today’s prices, and what it comes to now</source>
            <translation>Lo mismo otra vez en el Mostrador, a precios de hoy, y lo que suma ahora</translation>
        </message>
        <message>
            <source>R&amp;evise</source>
            <translation>Modi&amp;ficar</translation>
        </message>
        <message>
            <source>Changes what was ordered, at the Counter and at today’s prices; this quote is kept as it is</source>
            <translation>Cambia lo que se pidió, en el Mostrador y a precios de hoy; este presupuesto se conserva como está</translation>
        </message>
        <message>
            <source>&amp;Open at the Counter</source>
            <translation>&amp;Abrir en el Mostrador</translation>
        </message>
        <message>
            <source>Sheet &amp;plan of %1</source>
            <translation>&amp;Plan de láminas de %1</translation>
        </message>
        <message>
            <source>Sheet &amp;plan</source>
            <translation>&amp;Plan de láminas</translation>
        </message>
        <message>
            <source>Draft</source>
            <translation>Borrador</translation>
        </message>
        <message>
            <source>Revision of %1</source>
            <translation>Modificación de %1</translation>
        </message>
        <message>
            <source>Nothing ordered yet</source>
            <translation>Aún no se ha pedido nada</translation>
        </message>
        <message>
            <source>no customer</source>
            <translation>sin cliente</translation>
        </message>
        <message>
            <source>&amp;Next: %1</source>
            <translation>&amp;Siguiente: %1</translation>
        </message>
        <message>
            <source>First say which choice the customer takes</source>
            <translation>Diga antes qué opción toma el cliente</translation>
        </message>
    </context>
    <context>
        <name>sp::jobs::JobsPage</name>
        <message>
            <source>Jobs</source>
            <translation>Trabajos</translation>
        </message>
        <message>
            <source>&amp;Find a number, a customer, a word or a sum</source>
            <translation>&amp;Buscar un número, un cliente, una palabra o un importe</translation>
        </message>
        <message>
            <source>Today</source>
            <translation>Hoy</translation>
        </message>
        <message>
            <source>No quote is in the book yet.</source>
            <translation>Aún no hay ningún presupuesto en el libro.</translation>
        </message>
        <message>
            <source>Start one at the Counter</source>
            <translation>Empezar uno en el Mostrador</translation>
        </message>
        <message>
            <source>No quote is what you typed and chose.</source>
            <translation>Ningún presupuesto es lo que escribió y eligió.</translation>
        </message>
        <message>
            <source>Show all</source>
            <translation>Mostrar todos</translation>
        </message>
        <message>
            <source>none of the newest; the older ones are being read</source>
            <translation>ninguno de los más nuevos; se están leyendo los anteriores</translation>
        </message>
        <message>
            <source>%1 found so far; the older ones are being read</source>
            <translation>%1 hallados hasta ahora; se están leyendo los anteriores</translation>
        </message>
        <message>
            <source>the newest %1 so far</source>
            <translation>los %1 más nuevos hasta ahora</translation>
        </message>
        <message>
            <source>the first %1</source>
            <translation>los primeros %1</translation>
        </message>
        <message>
            <source>%1 in the book</source>
            <translation>%1 en el libro</translation>
        </message>
        <message>
            <source>%1 found</source>
            <translation>%1 hallados</translation>
        </message>
        <message numerus="yes">
            <source>%1 jobs</source>
            <translation>
                <numerusform>%1 trabajo</numerusform>
                <numerusform>%1 trabajos</numerusform>
            </translation>
        </message>
        <message>
            <source>this draft</source>
            <translation>este borrador</translation>
        </message>
        <message>
            <source>quote %1</source>
            <translation>presupuesto %1</translation>
        </message>
        <message>
            <source>No longer in Supplies, so laid as the quote has it: %1.</source>
            <translation>Ya no está en Insumos, por eso va como lo tiene el presupuesto: %1.</translation>
        </message>
    </context>
    <context>
        <name>sp::jobs::JobsPresenter</name>
        <message>
            <source>Draft</source>
            <translation>Borrador</translation>
        </message>
        <message>
            <source>Draft for %1</source>
            <translation>Borrador para %1</translation>
        </message>
    </context>
    <context>
        <name>sp::jobs::JobsTable</name>
        <message>
            <source>Quotes, newest first</source>
            <translation>Presupuestos, primero los más nuevos</translation>
        </message>
    </context>
    <context>
        <name>sp::jobs::JobsTableModel</name>
        <message>
            <source>%1 to %2</source>
            <translation>%1 a %2</translation>
        </message>
        <message>
            <source>%1 paid</source>
            <translation>%1 pagado</translation>
        </message>
        <message>
            <source>paid</source>
            <translation>pagado</translation>
        </message>
        <message>
            <source>%1 credit</source>
            <translation>%1 a favor</translation>
        </message>
        <message>
            <source>%1 left</source>
            <translation>quedan %1</translation>
        </message>
        <message>
            <source>draft</source>
            <translation>borrador</translation>
        </message>
        <message>
            <source>Lapsed</source>
            <translation>Vencido</translation>
        </message>
        <message>
            <source>no total yet</source>
            <translation>aún sin total</translation>
        </message>
        <message>
            <source>In order of this, drafts stand together: what they come to today is not kept</source>
            <translation>En este orden los borradores van juntos: lo que suman hoy no se guarda</translation>
        </message>
        <message>
            <source>Number</source>
            <translation>Número</translation>
        </message>
        <message>
            <source>Day</source>
            <translation>Día</translation>
        </message>
        <message>
            <source>Customer</source>
            <translation>Cliente</translation>
        </message>
        <message>
            <source>What</source>
            <translation>Concepto</translation>
        </message>
        <message>
            <source>Stage</source>
            <translation>Etapa</translation>
        </message>
        <message>
            <source>To pay</source>
            <translation>A pagar</translation>
        </message>
        <message>
            <source>Left to pay</source>
            <translation>Queda por pagar</translation>
        </message>
    </context>
    <context>
        <name>sp::jobs::PapersDialog</name>
        <message>
            <source>Papers of %1</source>
            <translation>Documentos de %1</translation>
        </message>
        <message>
            <source>Day</source>
            <translation>Día</translation>
        </message>
        <message>
            <source>Paper</source>
            <translation>Documento</translation>
        </message>
        <message>
            <source>Number</source>
            <translation>Número</translation>
        </message>
        <message>
            <source>Amount</source>
            <translation>Importe</translation>
        </message>
        <message>
            <source>How much a credit note takes back; empty: all that is left of the invoice</source>
            <translation>Cuánto anula una nota de crédito; vacío: todo lo que queda de la factura</translation>
        </message>
        <message>
            <source>&amp;Take back</source>
            <translation>&amp;Anular</translation>
        </message>
        <message>
            <source>&amp;Show</source>
            <translation>&amp;Mostrar</translation>
        </message>
        <message>
            <source>&amp;Difference</source>
            <translation>&amp;Diferencia</translation>
        </message>
        <message>
            <source>&amp;Invoice</source>
            <translation>&amp;Factura</translation>
        </message>
        <message>
            <source>&amp;Receipt</source>
            <translation>&amp;Recibo</translation>
        </message>
        <message>
            <source>&amp;Credit note</source>
            <translation>&amp;Nota de crédito</translation>
        </message>
        <message>
            <source>Close</source>
            <translation>Cerrar</translation>
        </message>
        <message>
            <source>Quote, replaced</source>
            <translation>Presupuesto, reemplazado</translation>
        </message>
        <message>
            <source>&amp;Invoice of %1</source>
            <translation>&amp;Factura de %1</translation>
        </message>
        <message>
            <source>It stays once it is issued; a mistake is credited</source>
            <translation>Una vez emitida se queda; un error se acredita</translation>
        </message>
        <message>
            <source>&amp;Receipt for %1</source>
            <translation>&amp;Recibo de %1</translation>
        </message>
        <message>
            <source>Every payment that stands has its receipt</source>
            <translation>Cada pago vigente tiene su recibo</translation>
        </message>
        <message>
            <source>For the payment of %1</source>
            <translation>Por el pago de %1</translation>
        </message>
        <message>
            <source>&amp;Credit note for %1</source>
            <translation>&amp;Nota de crédito para %1</translation>
        </message>
        <message>
            <source>%1 are left of it</source>
            <translation>Quedan %1 de ella</translation>
        </message>
        <message>
            <source>There is no invoice of which anything is left</source>
            <translation>No hay ninguna factura de la que quede algo</translation>
        </message>
    </context>
    <context>
        <name>sp::jobs::PaymentDialog</name>
        <message>
            <source>Payments for %1</source>
            <translation>Pagos de %1</translation>
        </message>
        <message>
            <source>Payments</source>
            <translation>Pagos</translation>
        </message>
        <message>
            <source>Day</source>
            <translation>Día</translation>
        </message>
        <message>
            <source>How</source>
            <translation>Cómo</translation>
        </message>
        <message>
            <source>Note</source>
            <translation>Nota</translation>
        </message>
        <message>
            <source>Amount</source>
            <translation>Importe</translation>
        </message>
        <message>
            <source>To pay</source>
            <translation>A pagar</translation>
        </message>
        <message>
            <source>Paid</source>
            <translation>Pagado</translation>
        </message>
        <message>
            <source>Left</source>
            <translation>Queda</translation>
        </message>
        <message>
            <source>&amp;Amount</source>
            <translation>&amp;Importe</translation>
        </message>
        <message>
            <source>“%1”</source>
            <translation>«%1»</translation>
        </message>
        <message>
            <source>&amp;How</source>
            <translation>&amp;Cómo</translation>
        </message>
        <message>
            <source>&amp;Day</source>
            <translation>&amp;Día</translation>
        </message>
        <message>
            <source>&amp;Note</source>
            <translation>&amp;Nota</translation>
        </message>
        <message>
            <source>&amp;Take payment</source>
            <translation>&amp;Tomar pago</translation>
        </message>
        <message>
            <source>&amp;Give back</source>
            <translation>De&amp;volver</translation>
        </message>
        <message>
            <source>Take this &amp;one back</source>
            <translation>&amp;Anular este</translation>
        </message>
        <message>
            <source>Books the chosen payment back: one that was a mistake</source>
            <translation>Anula el pago elegido: uno que fue un error</translation>
        </message>
        <message>
            <source>Close</source>
            <translation>Cerrar</translation>
        </message>
        <message>
            <source>Credit</source>
            <translation>Saldo a favor</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>&amp;Take %1, change %2</source>
            <translation>&amp;Tomar %1, cambio %2</translation>
        </message>
        <message>
            <source>&amp;Take %1, rounded from %2</source>
            <translation>&amp;Tomar %1, redondeado de %2</translation>
        </message>
        <message>
            <source>&amp;Keep %1 as credit</source>
            <translation>&amp;Guardar %1 como saldo a favor</translation>
        </message>
        <message>
            <source>No payment is chosen; choose the one to take back in the list.</source>
            <translation>No hay ningún pago elegido; elija en la lista el que se anula.</translation>
        </message>
    </context>
    <context>
        <name>sp::jobs::TodayCard</name>
        <message>
            <source>To be ready</source>
            <translation>Por estar listos</translation>
        </message>
        <message>
            <source>Deposits missing</source>
            <translation>Anticipos que faltan</translation>
        </message>
        <message>
            <source>Quotes about to lapse</source>
            <translation>Presupuestos por vencer</translation>
        </message>
        <message>
            <source>Ready, not collected</source>
            <translation>Listos, sin recoger</translation>
        </message>
        <message>
            <source>Money owed</source>
            <translation>Dinero que se debe</translation>
        </message>
        <message>
            <source>Nothing asks for anything today.</source>
            <translation>Hoy nada pide atención.</translation>
        </message>
        <message>
            <source>What today asks</source>
            <translation>Lo que pide el día</translation>
        </message>
        <message numerus="yes">
            <source>%n things</source>
            <translation>
                <numerusform>%n cosa</numerusform>
                <numerusform>%n cosas</numerusform>
            </translation>
        </message>
        <message>
            <source>Certificates that end</source>
            <translation>Certificados que vencen</translation>
        </message>
        <message>
            <source>%1, ended on %2</source>
            <translation>%1, venció el %2</translation>
        </message>
        <message>
            <source>%1, ends on %2</source>
            <translation>%1, vence el %2</translation>
        </message>
        <message>
            <source>%1, late: wanted %2</source>
            <translation>%1, tarde: pedido para el %2</translation>
        </message>
        <message>
            <source>%1, wanted today</source>
            <translation>%1, pedido para hoy</translation>
        </message>
        <message>
            <source>%1, agreed %2</source>
            <translation>%1, acordado el %2</translation>
        </message>
        <message>
            <source>%1, until %2</source>
            <translation>%1, hasta el %2</translation>
        </message>
        <message>
            <source>%1, ready since %2</source>
            <translation>%1, listo desde el %2</translation>
        </message>
        <message>
            <source>%1, collected %2</source>
            <translation>%1, recogido el %2</translation>
        </message>
    </context>
    <context>
        <name>sp::paper::PreviewDialog</name>
        <message>
            <source>Preview of %1</source>
            <translation>Vista previa de %1</translation>
        </message>
        <message>
            <source>Page &amp;back</source>
            <translation>Pág. an&amp;terior</translation>
        </message>
        <message>
            <source>Page &amp;on</source>
            <translation>Pág. &amp;siguiente</translation>
        </message>
        <message>
            <source>&amp;Print…</source>
            <translation>&amp;Imprimir…</translation>
        </message>
        <message>
            <source>&amp;Save as PDF…</source>
            <translation>&amp;Guardar como PDF…</translation>
        </message>
        <message>
            <source>&amp;Close</source>
            <translation>&amp;Cerrar</translation>
        </message>
        <message>
            <source>Page %1 of %2</source>
            <translation>Página %1 de %2</translation>
        </message>
        <message>
            <source>No printer is set up on this computer; save the sheet as a PDF instead.</source>
            <translation>No hay ninguna impresora en este equipo; guarde la hoja como PDF.</translation>
        </message>
        <message>
            <source>Sent to the printer %1.</source>
            <translation>Enviado a la impresora %1.</translation>
        </message>
        <message>
            <source>Save as PDF</source>
            <translation>Guardar como PDF</translation>
        </message>
        <message>
            <source>PDF (*.pdf)</source>
            <translation>PDF (*.pdf)</translation>
        </message>
        <message>
            <source>Saved as %1.</source>
            <translation>Guardado como %1.</translation>
        </message>
    </context>
    <context>
        <name>sp::plans::MeasureTable</name>
        <message>
            <source>Measures on %1</source>
            <translation>Medidas en %1</translation>
        </message>
        <message>
            <source>Sheet</source>
            <translation>Lámina</translation>
        </message>
        <message>
            <source>Piece</source>
            <translation>Pieza</translation>
        </message>
        <message>
            <source>Size</source>
            <translation>Tamaño</translation>
        </message>
        <message>
            <source>From the left</source>
            <translation>Desde la izquierda</translation>
        </message>
        <message>
            <source>From the top</source>
            <translation>Desde arriba</translation>
        </message>
        <message>
            <source>Across</source>
            <translation>A lo ancho</translation>
        </message>
        <message>
            <source>Down</source>
            <translation>A lo alto</translation>
        </message>
    </context>
    <context>
        <name>sp::plans::PlanDialog</name>
        <message>
            <source>Sheet plan of %1</source>
            <translation>Plan de láminas de %1</translation>
        </message>
        <message>
            <source>Pi&amp;eces to make</source>
            <translation>Pi&amp;ezas por hacer</translation>
        </message>
        <message>
            <source>Sheets</source>
            <translation>Láminas</translation>
        </message>
        <message>
            <source>&amp;Measures from the edges</source>
            <translation>&amp;Medidas desde los bordes</translation>
        </message>
        <message>
            <source>&amp;Print or save…</source>
            <translation>&amp;Imprimir o guardar…</translation>
        </message>
        <message>
            <source>&amp;Close</source>
            <translation>&amp;Cerrar</translation>
        </message>
        <message>
            <source>Say how many pieces are made.</source>
            <translation>Diga cuántas piezas se hacen.</translation>
        </message>
        <message>
            <source>Nothing here is cut from a sheet or a roll.</source>
            <translation>Aquí no se corta nada de una lámina o un rollo.</translation>
        </message>
        <message>
            <source>Laying the pieces…</source>
            <translation>Acomodando las piezas…</translation>
        </message>
        <message>
            <source>Every piece to scale, with its border; a folded corner is a piece turned a quarter.</source>
            <translation>Cada pieza a escala, con su borde; una esquina doblada es una pieza girada un cuarto de vuelta.</translation>
        </message>
        <message>
            <source>The first %1 different sheets; all of them are on the printed plan.</source>
            <translation>Las primeras %1 láminas distintas; todas están en el plan impreso.</translation>
        </message>
        <message>
            <source>The measures of the other sheets are on the printed plan.</source>
            <translation>Las medidas de las demás láminas están en el plan impreso.</translation>
        </message>
        <message>
            <source>Cutting plan %1</source>
            <translation>Plan de corte %1</translation>
        </message>
    </context>
    <context>
        <name>sp::plans::PlanPicture</name>
        <message>
            <source>%1 of %2, %3</source>
            <translation>%1 de %2, %3</translation>
        </message>
        <message>
            <source>%1 left</source>
            <translation>sobra %1</translation>
        </message>
    </context>
    <context>
        <name>sp::program::ArtworkPages</name>
        <message>
            <source>Estimate from a shape</source>
            <translation>Estimar a partir de una figura</translation>
        </message>
        <message>
            <source>Drawings (*.svg *.svgz *.dxf *.plt);;All files (*)</source>
            <translation>Dibujos (*.svg *.svgz *.dxf *.plt);;Todos los archivos (*)</translation>
        </message>
    </context>
    <context>
        <name>sp::program::BookCare</name>
        <message>
            <source>Backups…</source>
            <translation>Copias de seguridad…</translation>
        </message>
        <message>
            <source>Not kept yet was what stood in “%1”: %2</source>
            <translation>Aún no se había guardado lo que había en «%1»: %2</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>Closed unexpectedly. Everything that was kept, the last of it at %1, is here.</source>
            <translation>Se cerró de forma inesperada. Todo lo que se guardó (lo último: %1) está aquí.</translation>
        </message>
        <message>
            <source>Check this book</source>
            <translation>Examinar este libro</translation>
        </message>
        <message>
            <source>The disk is getting full: %1 MB more should be free for this book and its backups.</source>
            <translation>El disco se está llenando: debería haber %1 MB libres más para este libro y sus copias de seguridad.</translation>
        </message>
        <message>
            <source>The second place for backups, %1, has not been there since %2; plug it in when you can.</source>
            <translation>El segundo lugar de las copias de seguridad, %1, no está desde el %2; conéctelo cuando pueda.</translation>
        </message>
        <message>
            <source>Stop</source>
            <translation>Detener</translation>
        </message>
        <message>
            <source>%1 %</source>
            <translation>%1 %</translation>
        </message>
        <message>
            <source>This book is being checked; work on meanwhile.</source>
            <translation>Se está examinando este libro; siga trabajando mientras tanto.</translation>
        </message>
        <message>
            <source>This book is sound. Quotes: %1; given and unchanged: %2.</source>
            <translation>Este libro está en orden. Presupuestos: %1; dados y sin cambios: %2.</translation>
        </message>
        <message>
            <source>Save a copy</source>
            <translation>Guardar una copia</translation>
        </message>
        <message>
            <source>Save a copy of this book</source>
            <translation>Guardar una copia de este libro</translation>
        </message>
        <message>
            <source>%1 copy</source>
            <translation>%1 copia</translation>
        </message>
        <message>
            <source>Job books (*.jobbook)</source>
            <translation>Libros de trabajos (*.jobbook)</translation>
        </message>
        <message>
            <source>A copy of this book is being made; work on meanwhile.</source>
            <translation>Se está haciendo una copia de este libro; siga trabajando mientras tanto.</translation>
        </message>
        <message>
            <source>The book is being copied to this computer.</source>
            <translation>Se está copiando el libro a este equipo.</translation>
        </message>
        <message>
            <source>A copy of this book is in %1.</source>
            <translation>Una copia de este libro está en %1.</translation>
        </message>
        <message>
            <source>A copy is in %1, but as damaged as this book. %2</source>
            <translation>Una copia está en %1, pero tan dañada como este libro. %2</translation>
        </message>
    </context>
    <context>
        <name>sp::program::BookTrouble</name>
        <message>
            <source>&amp;Try again</source>
            <translation>&amp;Intentar de nuevo</translation>
        </message>
        <message>
            <source>Look at the &amp;demo book</source>
            <translation>Ver el libro de &amp;demostración</translation>
        </message>
        <message>
            <source>Start a &amp;job book…</source>
            <translation>Crear un libro de &amp;trabajos…</translation>
        </message>
        <message>
            <source>Stonepenny</source>
            <translation>Stonepenny</translation>
        </message>
        <message>
            <source>&amp;Locate it…</source>
            <translation>&amp;Localizarlo…</translation>
        </message>
        <message>
            <source>Open a &amp;backup…</source>
            <translation>&amp;Abrir una copia de seguridad…</translation>
        </message>
        <message>
            <source>The demo book is not open</source>
            <translation>El libro de demostración no está abierto</translation>
        </message>
        <message>
            <source>Your job book “%1” is not open</source>
            <translation>Su libro de trabajos «%1» no está abierto</translation>
        </message>
        <message>
            <source>It is kept in %1. Nothing in it is yours.</source>
            <translation>Está guardado en %1. Nada de lo que contiene es suyo.</translation>
        </message>
        <message>
            <source>It was last at %1. If it is on a stick or another disk, plug that in and try again.</source>
            <translation>Estaba por última vez en %1. Si está en una memoria USB u otro disco, conéctelo e inténtelo de nuevo.</translation>
        </message>
    </context>
    <context>
        <name>sp::program::KeysDialog</name>
        <message>
            <source>Keys and help</source>
            <translation>Atajos y ayuda</translation>
        </message>
        <message>
            <source>Counter</source>
            <translation>Mostrador</translation>
        </message>
        <message>
            <source>One order while the customer waits: who, what, how many; the price moves as you type.</source>
            <translation>Un pedido mientras el cliente espera: quién, qué, cuántos; el precio se mueve al escribir.</translation>
        </message>
        <message>
            <source>Designs</source>
            <translation>Diseños</translation>
        </message>
        <message>
            <source>What you set: its size, its stones by colour, and whether its templates are on the wall.</source>
            <translation>Lo que usted coloca: su tamaño, sus piedras por color, y si sus plantillas están en la pared.</translation>
        </message>
        <message>
            <source>Supplies</source>
            <translation>Insumos</translation>
        </message>
        <message>
            <source>What you buy, in which packs and at what price, and what lies on the shelf.</source>
            <translation>Lo que usted compra, en qué paquetes y a qué precio, y lo que hay en el estante.</translation>
        </message>
        <message>
            <source>Buying</source>
            <translation>Compras</translation>
        </message>
        <message>
            <source>The cheapest way to buy what a design or the order takes: kits, bulk packs, or both.</source>
            <translation>El modo más barato de comprar lo que lleva un diseño o el pedido: surtidos, paquetes a granel, o ambos.</translation>
        </message>
        <message>
            <source>Jobs</source>
            <translation>Trabajos</translation>
        </message>
        <message>
            <source>Every order by its stage, what was paid for it, and what has changed since it was given.</source>
            <translation>Cada pedido por su etapa, lo pagado por él, y lo que ha cambiado desde que se dio.</translation>
        </message>
        <message>
            <source>Bench</source>
            <translation>Taller</translation>
        </message>
        <message>
            <source>What is to be made, in its order: when each job is ready, which is late, and its bench sheet.</source>
            <translation>Lo que hay que hacer, en su orden: cuándo está listo cada trabajo, cuál va tarde, y su hoja de taller.</translation>
        </message>
        <message>
            <source>Customers</source>
            <translation>Clientes</translation>
        </message>
        <message>
            <source>Who orders: how one reaches them, their certificate, what they ordered and what they owe.</source>
            <translation>Quién pide: cómo se le localiza, su certificado, lo que pidió y lo que debe.</translation>
        </message>
        <message>
            <source>Figures</source>
            <translation>Cifras</translation>
        </message>
        <message>
            <source>What a month earned: income, cost and what an hour at the bench brought; where it came from.</source>
            <translation>Lo que ganó un mes: ingreso, costo y lo que rindió una hora de taller; de dónde vino.</translation>
        </message>
        <message>
            <source>Shop</source>
            <translation>Negocio</translation>
        </message>
        <message>
            <source>What you decide once: letterhead, rates, mark-up, tax, the bench.</source>
            <translation>Lo que usted decide una vez: membrete, tarifas, recargo, impuesto, el taller.</translation>
        </message>
        <message>
            <source>Set up</source>
            <translation>Arranque</translation>
        </message>
        <message>
            <source>The first steps of a new shop, and what a price still lacks; Ctrl+Enter goes on to the next step.</source>
            <translation>Los primeros pasos de un negocio nuevo, y lo que aún le falta a un precio; Ctrl+Enter pasa al paso siguiente.</translation>
        </message>
        <message>
            <source>Enter</source>
            <translation>Enter</translation>
        </message>
        <message>
            <source>takes what is typed or marked, and goes on to the next field</source>
            <translation>toma lo escrito o marcado, y pasa al campo siguiente</translation>
        </message>
        <message>
            <source>Tab</source>
            <translation>Tab</translation>
        </message>
        <message>
            <source>goes on, and takes what is marked in a list, or a new customer’s name</source>
            <translation>avanza, y toma lo marcado en una lista, o el nombre de un cliente nuevo</translation>
        </message>
        <message>
            <source>Down</source>
            <translation>Abajo</translation>
        </message>
        <message>
            <source>opens the list of a field, and goes on in it</source>
            <translation>abre la lista de un campo, y avanza en ella</translation>
        </message>
        <message>
            <source>Esc</source>
            <translation>Esc</translation>
        </message>
        <message>
            <source>closes a list or a window</source>
            <translation>cierra una lista o una ventana</translation>
        </message>
        <message>
            <source>Alt and a letter</source>
            <translation>Alt y una letra</translation>
        </message>
        <message>
            <source>goes to the field or button whose word has that letter underlined</source>
            <translation>va al campo o botón cuya palabra tiene esa letra subrayada</translation>
        </message>
        <message>
            <source>Ctrl and a number</source>
            <translation>Ctrl y un número</translation>
        </message>
        <message>
            <source>goes to a place: 1 is the Counter</source>
            <translation>va a un lugar: 1 es el Mostrador</translation>
        </message>
        <message>
            <source>The places</source>
            <translation>Los lugares</translation>
        </message>
        <message>
            <source>Keys of the Book menu</source>
            <translation>Teclas del menú Libro</translation>
        </message>
        <message>
            <source>Keys in every place</source>
            <translation>Teclas en cada lugar</translation>
        </message>
        <message>
            <source>How a price is made</source>
            <translation>Cómo se forma un precio</translation>
        </message>
        <message>
            <source>How a figure of the cost sheet is made stands at the figure: turn the slip over and open its row.</source>
            <translation>Cómo se forma una cifra de la hoja de costos está junto a la cifra: voltee el ticket y abra su fila.</translation>
        </message>
        <message>
            <source>For 24 pieces, with the prices of this book, each figure of the job is made so. The same stands at the figure: turn the slip over and open its row.</source>
            <translation>Para 24 piezas, con los precios de este libro, cada cifra del trabajo se forma así. Lo mismo está junto a la cifra: voltee el ticket y abra su fila.</translation>
        </message>
    </context>
    <context>
        <name>sp::program::Launcher</name>
        <message>
            <source>Locate your job book</source>
            <translation>Localice su libro de trabajos</translation>
        </message>
        <message>
            <source>Open a backup of your job book</source>
            <translation>Abrir una copia de seguridad de su libro de trabajos</translation>
        </message>
        <message>
            <source>Start a job book</source>
            <translation>Crear un libro de trabajos</translation>
        </message>
        <message>
            <source>My shop</source>
            <translation>Mi negocio</translation>
        </message>
        <message>
            <source>Open a job book</source>
            <translation>Abrir un libro de trabajos</translation>
        </message>
    </context>
    <context>
        <name>sp::program::MainWindow</name>
        <message>
            <source>%1 (demo) – Stonepenny</source>
            <translation>%1 (demostración) – Stonepenny</translation>
        </message>
        <message>
            <source>%1 – Stonepenny</source>
            <translation>%1 – Stonepenny</translation>
        </message>
        <message numerus="yes">
            <source>%n things asked today</source>
            <translation>
                <numerusform>%n cosa pide atención hoy</numerusform>
                <numerusform>%n cosas piden atención hoy</numerusform>
            </translation>
        </message>
        <message>
            <source>“%1” is counted and in no design yet.</source>
            <translation>«%1» está contado y aún en ningún diseño.</translation>
        </message>
        <message>
            <source>Back to it</source>
            <translation>Volver a él</translation>
        </message>
        <message>
            <source>%1, %2: what is typed there cannot be used; prices go by what was there before.</source>
            <translation>%1, %2: lo escrito ahí no se puede usar; los precios siguen con lo que había antes.</translation>
        </message>
        <message>
            <source>Mend it</source>
            <translation>Corregirlo</translation>
        </message>
        <message>
            <source>Copy it to this computer</source>
            <translation>Copiarlo a este equipo</translation>
        </message>
        <message>
            <source>Save a copy</source>
            <translation>Guardar una copia</translation>
        </message>
        <message>
            <source>A demo book: look around, nothing here is yours.</source>
            <translation>Un libro de demostración: mire a su gusto, nada aquí es suyo.</translation>
        </message>
        <message>
            <source>Start my own book</source>
            <translation>Empezar mi propio libro</translation>
        </message>
        <message>
            <source>Not saved: %1</source>
            <translation>Sin guardar: %1</translation>
        </message>
        <message>
            <source>Saved %1</source>
            <translation>Guardado a las %1</translation>
        </message>
        <message>
            <source>Un&amp;do</source>
            <translation>Des&amp;hacer</translation>
        </message>
        <message>
            <source>Un&amp;do: %1</source>
            <translation>Des&amp;hacer: %1</translation>
        </message>
        <message>
            <source>&amp;Redo</source>
            <translation>&amp;Rehacer</translation>
        </message>
        <message>
            <source>&amp;Redo: %1</source>
            <translation>&amp;Rehacer: %1</translation>
        </message>
        <message>
            <source>Undone: %1.</source>
            <translation>Deshecho: %1.</translation>
        </message>
        <message>
            <source>Nothing of a given quote is undone. Elsewhere in the book the last was: %1.</source>
            <translation>De un presupuesto dado no se deshace nada. En otra parte del libro lo último fue: %1.</translation>
        </message>
        <message>
            <source>Undo that</source>
            <translation>Deshacer eso</translation>
        </message>
        <message>
            <source>Done again: %1.</source>
            <translation>Rehecho: %1.</translation>
        </message>
        <message>
            <source>Nothing of a given quote is done again. Elsewhere in the book it would be: %1.</source>
            <translation>De un presupuesto dado no se rehace nada. En otra parte del libro sería: %1.</translation>
        </message>
        <message>
            <source>Do that again</source>
            <translation>Rehacer eso</translation>
        </message>
        <message>
            <source>Count a cut file</source>
            <translation>Contar un archivo de corte</translation>
        </message>
        <message>
            <source>Cut files (*.svg *.svgz *.dxf *.plt);;All files (*)</source>
            <translation>Archivos de corte (*.svg *.svgz *.dxf *.plt);;Todos los archivos (*)</translation>
        </message>
        <message>
            <source>&amp;New order</source>
            <translation>Pedido &amp;nuevo</translation>
        </message>
        <message>
            <source>&amp;Find in this place</source>
            <translation>&amp;Buscar en este lugar</translation>
        </message>
        <message>
            <source>F&amp;ind a quote…</source>
            <translation>Buscar un presu&amp;puesto…</translation>
        </message>
        <message>
            <source>&amp;Count a cut file…</source>
            <translation>&amp;Contar un archivo de corte…</translation>
        </message>
        <message>
            <source>&amp;Estimate stones…</source>
            <translation>&amp;Estimar piedras…</translation>
        </message>
        <message>
            <source>Offer &amp;another choice</source>
            <translation>&amp;Ofrecer otra opción</translation>
        </message>
        <message>
            <source>&amp;Give this quote</source>
            <translation>D&amp;ar este presupuesto</translation>
        </message>
        <message>
            <source>&amp;Print or save the sheet…</source>
            <translation>&amp;Imprimir o guardar la hoja…</translation>
        </message>
        <message>
            <source>&amp;Turn the slip over</source>
            <translation>&amp;Voltear el ticket</translation>
        </message>
        <message>
            <source>Start a &amp;job book…</source>
            <translation>Crear un libro &amp;de trabajos…</translation>
        </message>
        <message>
            <source>&amp;Open a job book…</source>
            <translation>Abrir &amp;un libro de trabajos…</translation>
        </message>
        <message>
            <source>Last &amp;books</source>
            <translation>Últi&amp;mos libros</translation>
        </message>
        <message>
            <source>&amp;Save a copy of this book…</source>
            <translation>&amp;Guardar una copia de este libro…</translation>
        </message>
        <message>
            <source>Back&amp;ups…</source>
            <translation>Copia&amp;s de seguridad…</translation>
        </message>
        <message>
            <source>C&amp;heck this book</source>
            <translation>E&amp;xaminar este libro</translation>
        </message>
        <message>
            <source>&amp;Look</source>
            <translation>Aspec&amp;to</translation>
        </message>
        <message>
            <source>O&amp;wner’s side turns back</source>
            <translation>Volver al &amp;frente</translation>
        </message>
        <message>
            <source>&amp;Keys and help</source>
            <translation>Ata&amp;jos y ayuda</translation>
        </message>
        <message>
            <source>About Stonepenn&amp;y</source>
            <translation>Acerca de Stonepenn&amp;y</translation>
        </message>
        <message>
            <source>&amp;Quit</source>
            <translation>Sa&amp;lir</translation>
        </message>
        <message>
            <source>Book</source>
            <translation>Libro</translation>
        </message>
        <message>
            <source>Everything that can be done with this job book (F10)</source>
            <translation>Todo lo que se puede hacer con este libro de trabajos (F10)</translation>
        </message>
        <message>
            <source>Book menu</source>
            <translation>Menú Libro</translation>
        </message>
        <message>
            <source>As the &amp;system</source>
            <translation>Como el &amp;sistema</translation>
        </message>
        <message>
            <source>&amp;Light</source>
            <translation>&amp;Claro</translation>
        </message>
        <message>
            <source>&amp;Dark</source>
            <translation>&amp;Oscuro</translation>
        </message>
        <message>
            <source>Light, high &amp;contrast</source>
            <translation>Claro, a&amp;lto contraste</translation>
        </message>
        <message>
            <source>Dark, &amp;high contrast</source>
            <translation>Oscuro, alto co&amp;ntraste</translation>
        </message>
        <message>
            <source>L&amp;arger text</source>
            <translation>Texto más &amp;grande</translation>
        </message>
        <message>
            <source>S&amp;maller text</source>
            <translation>Texto más &amp;pequeño</translation>
        </message>
        <message>
            <source>&amp;Usual text size</source>
            <translation>&amp;Tamaño habitual del texto</translation>
        </message>
        <message>
            <source>The window speaks this language from the next start on.</source>
            <translation>La ventana hablará este idioma desde el próximo inicio.</translation>
        </message>
        <message>
            <source>After &amp;half a minute without a key</source>
            <translation>Tras &amp;medio minuto sin teclas</translation>
        </message>
        <message>
            <source>After &amp;two minutes without a key</source>
            <translation>Tras &amp;dos minutos sin teclas</translation>
        </message>
        <message>
            <source>After te&amp;n minutes without a key</source>
            <translation>Tras die&amp;z minutos sin teclas</translation>
        </message>
        <message>
            <source>Only &amp;when I turn it</source>
            <translation>Solo &amp;cuando yo lo voltee</translation>
        </message>
        <message>
            <source>The &amp;demo book</source>
            <translation>El libro de &amp;demostración</translation>
        </message>
        <message>
            <source>About Stonepenny</source>
            <translation>Acerca de Stonepenny</translation>
        </message>
        <message>
            <source>Stonepenny %1, for shops that set hot-fix stones.

Under the MIT licence. It stands on Qt %2 (LGPL 3), SQLite, fmt, pugixml and JSON for Modern C++.

What it says about tax, safety and law are reminders: local rules, the makers’ data and licensed practice come first.</source>
            <translation>Stonepenny %1, para negocios que colocan piedras termoadhesivas.

Bajo la licencia MIT. Se apoya en Qt %2 (LGPL 3), SQLite, fmt, pugixml y JSON for Modern C++.

Lo que dice de impuestos, seguridad y leyes son recordatorios: las normas locales, los datos de los fabricantes y la práctica autorizada van antes.</translation>
        </message>
        <message>
            <source>What quote %1 ordered cannot be priced today. %2</source>
            <translation>Lo que pidió el presupuesto %1 no se puede calcular hoy. %2</translation>
        </message>
        <message>
            <source>As in quote %1, and it comes to the same today.</source>
            <translation>Como en el presupuesto %1, y hoy suma lo mismo.</translation>
        </message>
        <message>
            <source>As in quote %1; today it comes to %2 less.</source>
            <translation>Como en el presupuesto %1; hoy suma %2 menos.</translation>
        </message>
        <message>
            <source>As in quote %1; today it comes to %2 more.</source>
            <translation>Como en el presupuesto %1; hoy suma %2 más.</translation>
        </message>
        <message>
            <source>Why</source>
            <translation>Por qué</translation>
        </message>
        <message>
            <source>Language of window and &amp;menus</source>
            <translation>Idioma de la &amp;ventana</translation>
        </message>
    </context>
    <context>
        <name>sp::shop::BenchGrid</name>
        <message>
            <source>a job</source>
            <translation>por trabajo</translation>
        </message>
        <message>
            <source>a colour</source>
            <translation>por color</translation>
        </message>
        <message>
            <source>a piece</source>
            <translation>por pieza</translation>
        </message>
        <message>
            <source>100 stones</source>
            <translation>100 piedras</translation>
        </message>
        <message>
            <source>a press cycle</source>
            <translation>por ciclo</translation>
        </message>
        <message>
            <source>learning</source>
            <translation>aprendizaje</translation>
        </message>
        <message>
            <source>%1, learning</source>
            <translation>%1, aprendizaje</translation>
        </message>
    </context>
    <context>
        <name>sp::shop::CardIndex</name>
        <message>
            <source>Cards of this page</source>
            <translation>Fichas de esta página</translation>
        </message>
    </context>
    <context>
        <name>sp::shop::ClosedRows</name>
        <message>
            <source>+ closed days</source>
            <translation>+ días cerrados</translation>
        </message>
        <message>
            <source>closed from</source>
            <translation>cerrado desde</translation>
        </message>
        <message>
            <source>to</source>
            <translation>hasta</translation>
        </message>
        <message>
            <source>why</source>
            <translation>por qué</translation>
        </message>
        <message>
            <source>first of the closed days %1</source>
            <translation>primero de los días cerrados %1</translation>
        </message>
        <message>
            <source>last of the closed days %1</source>
            <translation>último de los días cerrados %1</translation>
        </message>
        <message>
            <source>why closed, days %1</source>
            <translation>por qué está cerrado, días %1</translation>
        </message>
        <message>
            <source>Take the closed days %1 out</source>
            <translation>Quitar los días cerrados %1</translation>
        </message>
    </context>
    <context>
        <name>sp::shop::LadderPanel</name>
        <message>
            <source>What it makes of the design</source>
            <translation>Lo que hace con el diseño</translation>
        </message>
        <message>
            <source>Once there is a design, its prices by quantity stand here.</source>
            <translation>Cuando haya un diseño, aquí estarán sus precios por cantidad.</translation>
        </message>
    </context>
    <context>
        <name>sp::shop::LadderPicture</name>
        <message>
            <source>Price of a piece and total by quantity</source>
            <translation>Precio de una pieza y total por cantidad</translation>
        </message>
        <message>
            <source>Left and Right move along the quantities</source>
            <translation>Izquierda y Derecha recorren las cantidades</translation>
        </message>
        <message>
            <source>A piece</source>
            <translation>Por pieza</translation>
        </message>
        <message>
            <source>In all</source>
            <translation>En total</translation>
        </message>
    </context>
    <context>
        <name>sp::shop::PayRows</name>
        <message>
            <source>+ way to pay</source>
            <translation>+ forma de pago</translation>
        </message>
        <message>
            <source>Another way</source>
            <translation>Otra forma</translation>
        </message>
        <message>
            <source>Another way %1</source>
            <translation>Otra forma %1</translation>
        </message>
        <message>
            <source>way to pay, as it is called here</source>
            <translation>forma de pago, como se llama aquí</translation>
        </message>
        <message>
            <source>Give the way to pay a name.</source>
            <translation>Dé un nombre a la forma de pago.</translation>
        </message>
        <message>
            <source>cash</source>
            <translation>efectivo</translation>
        </message>
        <message>
            <source>name of way to pay %1</source>
            <translation>nombre de la forma de pago %1</translation>
        </message>
        <message>
            <source>way to pay %1 is cash</source>
            <translation>la forma de pago %1 es efectivo</translation>
        </message>
        <message>
            <source>It is rounded to the smallest coin, and change is given of it</source>
            <translation>Se redondea a la moneda más pequeña, y de ella se da cambio</translation>
        </message>
        <message>
            <source>Take way to pay %1 out</source>
            <translation>Quitar la forma de pago %1</translation>
        </message>
    </context>
    <context>
        <name>sp::shop::ShopPage</name>
        <message>
            <source>Shop</source>
            <translation>Negocio</translation>
        </message>
        <message>
            <source>&amp;Go to</source>
            <translation>&amp;Ir a</translation>
        </message>
        <message>
            <source>Then nobody is told any more that it is not in the price</source>
            <translation>Así ya no se avisa de que no está en el precio</translation>
        </message>
        <message>
            <source>Letterhead</source>
            <translation>Membrete</translation>
        </message>
        <message>
            <source>&amp;Name of the shop</source>
            <translation>&amp;Nombre del negocio</translation>
        </message>
        <message>
            <source>&amp;Address, and how to reach the shop</source>
            <translation>&amp;Dirección y cómo localizar el negocio</translation>
        </message>
        <message>
            <source>&amp;Terms, under the totals</source>
            <translation>&amp;Condiciones, bajo los totales</translation>
        </message>
        <message>
            <source>&amp;Care and safety notes</source>
            <translation>Notas de cuidado y &amp;seguridad</translation>
        </message>
        <message>
            <source>Care car&amp;ds</source>
            <translation>Tar&amp;jetas de cuidados</translation>
        </message>
        <message>
            <source>A page of cards to cut, for what is handed over: care, how a decal is applied, cautions</source>
            <translation>Una página de tarjetas para recortar, para lo que se entrega: cuidados, cómo se aplica una calcomanía, precauciones</translation>
        </message>
        <message>
            <source>Show the first steps of a new shop</source>
            <translation>Mostrar los primeros pasos de un negocio nuevo</translation>
        </message>
        <message>
            <source>Money, paper and units</source>
            <translation>Dinero, papel y unidades</translation>
        </message>
        <message>
            <source>&amp;Paper</source>
            <translation>&amp;Papel</translation>
        </message>
        <message>
            <source>Letter</source>
            <translation>Carta</translation>
        </message>
        <message>
            <source>A4</source>
            <translation>A4</translation>
        </message>
        <message>
            <source>&amp;Lengths in</source>
            <translation>&amp;Longitudes en</translation>
        </message>
        <message>
            <source>inches</source>
            <translation>pulgadas</translation>
        </message>
        <message>
            <source>millimetres</source>
            <translation>milímetros</translation>
        </message>
        <message>
            <source>centimetres</source>
            <translation>centímetros</translation>
        </message>
        <message>
            <source>T&amp;emperatures in</source>
            <translation>&amp;Temperaturas en</translation>
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
            <translation>como esta ventana</translation>
        </message>
        <message>
            <source>Papers &amp;in</source>
            <translation>Doc&amp;umentos en</translation>
        </message>
        <message>
            <source>for customers with no language of their own</source>
            <translation>para clientes sin idioma propio</translation>
        </message>
        <message>
            <source>What an hour and a month cost</source>
            <translation>Lo que cuestan una hora y un mes</translation>
        </message>
        <message>
            <source>Lab&amp;our per hour</source>
            <translation>Mano de ob&amp;ra por hora</translation>
        </message>
        <message>
            <source>No labour is meant</source>
            <translation>Sin mano de obra, adrede</translation>
        </message>
        <message>
            <source>Overhead per month</source>
            <translation>Gastos generales al mes</translation>
        </message>
        <message>
            <source>No overhead is meant</source>
            <translation>Sin gastos, adrede</translation>
        </message>
        <message>
            <source>Productive time per month</source>
            <translation>Tiempo productivo al mes</translation>
        </message>
        <message>
            <source>bench hours that carry the overhead</source>
            <translation>horas de taller que cargan los gastos generales</translation>
        </message>
        <message>
            <source>Spoilage</source>
            <translation>Merma</translation>
        </message>
        <message>
            <source>percent of the pieces made</source>
            <translation>por ciento de las piezas hechas</translation>
        </message>
        <message>
            <source>Spares are planned</source>
            <translation>Reserva prevista</translation>
        </message>
        <message>
            <source>where half a piece may spoil</source>
            <translation>donde se pueda estropear media pieza</translation>
        </message>
        <message>
            <source>always, one at least</source>
            <translation>siempre, al menos una</translation>
        </message>
        <message>
            <source>never</source>
            <translation>nunca</translation>
        </message>
        <message>
            <source>Supplies leave the shelf</source>
            <translation>Los insumos salen del estante</translation>
        </message>
        <message>
            <source>when a job is ready</source>
            <translation>cuando un trabajo está listo</translation>
        </message>
        <message>
            <source>when it is begun</source>
            <translation>cuando se empieza</translation>
        </message>
        <message>
            <source>when I book it</source>
            <translation>cuando yo lo anoto</translation>
        </message>
        <message>
            <source>Replacing a garment</source>
            <translation>Reponer una prenda</translation>
        </message>
        <message>
            <source>a customer’s own, spoiled</source>
            <translation>del propio cliente, estropeada</translation>
        </message>
        <message>
            <source>Mark-up ladder</source>
            <translation>Tramos de recargo</translation>
        </message>
        <message>
            <source>From so many pieces of a line on, so much on top of the cost.</source>
            <translation>Desde tantas piezas de una línea, tanto por encima del costo.</translation>
        </message>
        <message>
            <source>from pieces</source>
            <translation>desde piezas</translation>
        </message>
        <message>
            <source>mark-up</source>
            <translation>recargo</translation>
        </message>
        <message>
            <source>margin</source>
            <translation>margen</translation>
        </message>
        <message>
            <source>Rush</source>
            <translation>Urgencia</translation>
        </message>
        <message>
            <source>Wanted within so many days of the quote: so much on top of the goods.</source>
            <translation>Pedido dentro de tantos días desde el presupuesto: tanto por encima de la mercancía.</translation>
        </message>
        <message>
            <source>within days</source>
            <translation>en días</translation>
        </message>
        <message>
            <source>surcharge</source>
            <translation>suplemento</translation>
        </message>
        <message>
            <source>Surcharges by place</source>
            <translation>Suplementos por lugar</translation>
        </message>
        <message>
            <source>With a design at one of these places the customer pays so much more for each piece, under its name on the sheet.</source>
            <translation>Con un diseño en uno de estos lugares el cliente paga tanto más por cada pieza, con su nombre en la hoja.</translation>
        </message>
        <message>
            <source>+ place</source>
            <translation>+ lugar</translation>
        </message>
        <message>
            <source>place on the piece</source>
            <translation>lugar en la pieza</translation>
        </message>
        <message>
            <source>for each piece</source>
            <translation>por cada pieza</translation>
        </message>
        <message>
            <source>Sleeve</source>
            <translation>Manga</translation>
        </message>
        <message>
            <source>Sleeve %1</source>
            <translation>Manga %1</translation>
        </message>
        <message>
            <source>Give the place a name, as a line of an order has it.</source>
            <translation>Dé un nombre al lugar, como lo tiene una línea del pedido.</translation>
        </message>
        <message>
            <source>name of place %1</source>
            <translation>nombre del lugar %1</translation>
        </message>
        <message>
            <source>surcharge of place %1</source>
            <translation>suplemento del lugar %1</translation>
        </message>
        <message>
            <source>Take place %1 out</source>
            <translation>Quitar el lugar %1</translation>
        </message>
        <message>
            <source>Step</source>
            <translation>Paso</translation>
        </message>
        <message>
            <source>such as %1 or %2</source>
            <translation>como %1 o %2</translation>
        </message>
        <message>
            <source>A step is made of whole coins, such as %1; type another.</source>
            <translation>Un paso se compone de monedas enteras, como %1; escriba otro.</translation>
        </message>
        <message>
            <source>Rounding, set-up, deposit</source>
            <translation>Redondeo, preparación, anticipo</translation>
        </message>
        <message>
            <source>Piece prices are rounded</source>
            <translation>Los precios por pieza se redondean</translation>
        </message>
        <message>
            <source>to the nearest step</source>
            <translation>al paso más cercano</translation>
        </message>
        <message>
            <source>up to the next step</source>
            <translation>al paso siguiente</translation>
        </message>
        <message>
            <source>up to an ending</source>
            <translation>hasta una terminación</translation>
        </message>
        <message>
            <source>Ending</source>
            <translation>Terminación</translation>
        </message>
        <message>
            <source>95 for prices like 6.95</source>
            <translation>95 para precios como 6.95</translation>
        </message>
        <message>
            <source>Art and set-up</source>
            <translation>Arte y preparación</translation>
        </message>
        <message>
            <source>spread over the pieces</source>
            <translation>repartidos entre las piezas</translation>
        </message>
        <message>
            <source>a line of its own</source>
            <translation>una línea propia</translation>
        </message>
        <message>
            <source>Smallest order</source>
            <translation>Mínimo del pedido</translation>
        </message>
        <message>
            <source>Deposit</source>
            <translation>Anticipo</translation>
        </message>
        <message>
            <source>share of the total, before work starts</source>
            <translation>parte del total, antes de empezar el trabajo</translation>
        </message>
        <message>
            <source>Deposit rounded up to</source>
            <translation>Anticipo redondeado a</translation>
        </message>
        <message>
            <source>A quote holds for</source>
            <translation>Un presupuesto vale</translation>
        </message>
        <message>
            <source>days</source>
            <translation>días</translation>
        </message>
        <message>
            <source>An invoice is due after</source>
            <translation>Una factura vence a los</translation>
        </message>
        <message>
            <source>How you are paid</source>
            <translation>Cómo le pagan</translation>
        </message>
        <message>
            <source>Without ways of your own: cash, card, transfer and other. Cash is rounded to the smallest coin that is in use, and change is given of it.</source>
            <translation>Sin formas propias: efectivo, tarjeta, transferencia y otro. El efectivo se redondea a la moneda más pequeña en uso, y de él se da cambio.</translation>
        </message>
        <message>
            <source>Smallest coin</source>
            <translation>Moneda más pequeña</translation>
        </message>
        <message>
            <source>What is left to pay is rounded to it in cash; 0: to the last part of the currency</source>
            <translation>Lo que queda por pagar se redondea a ella en efectivo; 0: hasta la última fracción de la moneda</translation>
        </message>
        <message>
            <source>Of %1 that are left to pay, %2 are paid in cash.</source>
            <translation>De %1 que quedan por pagar, en efectivo se pagan %2.</translation>
        </message>
        <message>
            <source>Tax and card fee</source>
            <translation>Impuesto y comisión de tarjeta</translation>
        </message>
        <message>
            <source>Rates and rules are yours to confirm with your tax authority or an accountant; tax on what is given away differs by place. A card fee comes off the price, a share of all that is paid, tax included; whether it may be passed on differs by place and card.</source>
            <translation>A usted le toca confirmar tasas y reglas con su autoridad fiscal o un contador; el impuesto sobre lo regalado varía según el lugar. Una comisión de tarjeta se descuenta del precio, una parte de todo lo pagado, impuesto incluido; si se puede trasladar al cliente depende del lugar y de la tarjeta.</translation>
        </message>
        <message>
            <source>Tax is called</source>
            <translation>El impuesto se llama</translation>
        </message>
        <message>
            <source>Tax rate</source>
            <translation>Tasa de impuesto</translation>
        </message>
        <message>
            <source>Rounded</source>
            <translation>Se redondea</translation>
        </message>
        <message>
            <source>once, on the whole order</source>
            <translation>una vez, en todo el pedido</translation>
        </message>
        <message>
            <source>on every line</source>
            <translation>en cada línea</translation>
        </message>
        <message>
            <source>On what is given away</source>
            <translation>Sobre lo regalado</translation>
        </message>
        <message>
            <source>no tax</source>
            <translation>sin impuesto</translation>
        </message>
        <message>
            <source>tax on its cost, ours to pay</source>
            <translation>impuesto sobre su costo, lo pagamos nosotros</translation>
        </message>
        <message>
            <source>Prices hold the tax</source>
            <translation>Precios con impuesto</translation>
        </message>
        <message>
            <source>No tax is meant</source>
            <translation>Sin impuesto, adrede</translation>
        </message>
        <message>
            <source>Then setting up counts it as decided</source>
            <translation>Así Arranque lo da por decidido</translation>
        </message>
        <message>
            <source>+ tax rate</source>
            <translation>+ tasa de impuesto</translation>
        </message>
        <message>
            <source>a line may name another rate</source>
            <translation>una línea puede indicar otra tasa</translation>
        </message>
        <message>
            <source>rate</source>
            <translation>tasa</translation>
        </message>
        <message>
            <source>Other rate</source>
            <translation>Otra tasa</translation>
        </message>
        <message>
            <source>Other rate %1</source>
            <translation>Otra tasa %1</translation>
        </message>
        <message>
            <source>Give the rate a name, as it is printed.</source>
            <translation>Dé un nombre a la tasa, como se imprime.</translation>
        </message>
        <message>
            <source>name of further rate %1</source>
            <translation>nombre de la otra tasa %1</translation>
        </message>
        <message>
            <source>further rate %1</source>
            <translation>otra tasa %1</translation>
        </message>
        <message>
            <source>Take further rate %1 out</source>
            <translation>Quitar la otra tasa %1</translation>
        </message>
        <message>
            <source>Reckon with a card fee</source>
            <translation>Contar con una comisión de tarjeta</translation>
        </message>
        <message>
            <source>Card fee</source>
            <translation>Comisión de tarjeta</translation>
        </message>
        <message>
            <source>and for each payment</source>
            <translation>y por cada pago</translation>
        </message>
        <message>
            <source>What every line takes</source>
            <translation>Lo que lleva cada línea</translation>
        </message>
        <message>
            <source>Tape</source>
            <translation>Cinta</translation>
        </message>
        <message>
            <source>Template sheet</source>
            <translation>Lámina de plantilla</translation>
        </message>
        <message>
            <source>No tape is meant</source>
            <translation>Sin cinta, adrede</translation>
        </message>
        <message>
            <source>No template is meant</source>
            <translation>Sin plantilla, adrede</translation>
        </message>
        <message>
            <source>More or fewer: prices shown for</source>
            <translation>Otras cantidades: precios para</translation>
        </message>
        <message>
            <source>numbers of pieces, such as 12 24 48 96</source>
            <translation>números de piezas, como 12 24 48 96</translation>
        </message>
        <message>
            <source>“%1” is not a number of pieces; write numbers with spaces between.</source>
            <translation>«%1» no es un número de piezas; escriba números separados por espacios.</translation>
        </message>
        <message>
            <source>Print them on the sheet</source>
            <translation>Imprimirlos en la hoja</translation>
        </message>
        <message>
            <source>Count a design’s pieces over all its lines</source>
            <translation>Contar las piezas de un diseño en todas sus líneas</translation>
        </message>
        <message>
            <source>Planned pieces pay off art and cutting too</source>
            <translation>Las piezas previstas amortizan también arte y corte</translation>
        </message>
        <message>
            <source>Say on the sheet where more pieces cost less</source>
            <translation>Decir en la hoja dónde más piezas cuestan menos</translation>
        </message>
        <message>
            <source>Bench hours</source>
            <translation>Horas de taller</translation>
        </message>
        <message>
            <source>How long the bench is worked at, of all hands together and without the counter and the books. Days are promised by it; while all of it is 0 none is.</source>
            <translation>Cuánto se trabaja en el taller, entre todas las manos y sin el mostrador ni las cuentas. Con ello se prometen fechas; mientras todo sea 0 no se promete ninguna.</translation>
        </message>
        <message>
            <source>Monday</source>
            <translation>Lunes</translation>
        </message>
        <message>
            <source>Tuesday</source>
            <translation>Martes</translation>
        </message>
        <message>
            <source>Wednesday</source>
            <translation>Miércoles</translation>
        </message>
        <message>
            <source>Thursday</source>
            <translation>Jueves</translation>
        </message>
        <message>
            <source>Friday</source>
            <translation>Viernes</translation>
        </message>
        <message>
            <source>Saturday</source>
            <translation>Sábado</translation>
        </message>
        <message>
            <source>Sunday</source>
            <translation>Domingo</translation>
        </message>
        <message>
            <source>Bench standards</source>
            <translation>Tiempos estándar del taller</translation>
        </message>
        <message>
            <source>Starting values: time your own bench. Art to set up are done once for a job, the other steps for every piece.</source>
            <translation>Valores para empezar: cronometre su propio taller. De arte a preparación se hace una vez por trabajo, los demás pasos para cada pieza.</translation>
        </message>
        <message>
            <source>Press and cutter</source>
            <translation>Prensa y cortadora</translation>
        </message>
        <message>
            <source>A press and freshly pressed work burn: gloves, a cover sheet, ventilation. Retract blades before loading. The makers’ data, local rules and licensed practice come first.</source>
            <translation>Una prensa y lo recién prensado queman: guantes, hoja protectora, ventilación. Retraiga las cuchillas antes de cargar. Los datos de los fabricantes, las normas locales y la práctica autorizada van antes.</translation>
        </message>
        <message>
            <source>Press, price</source>
            <translation>Prensa, precio</translation>
        </message>
        <message>
            <source>Press, worth at the end</source>
            <translation>Prensa, valor final</translation>
        </message>
        <message>
            <source>Press lasts, presses</source>
            <translation>Prensa dura, prensados</translation>
        </message>
        <message>
            <source>Running it, per hour</source>
            <translation>Uso, por hora</translation>
        </message>
        <message>
            <source>Platen, width</source>
            <translation>Placa, ancho</translation>
        </message>
        <message>
            <source>Platen, depth</source>
            <translation>Placa, fondo</translation>
        </message>
        <message>
            <source>Dwell</source>
            <translation>Tiempo de prensado</translation>
        </message>
        <message>
            <source>Handling, each cycle</source>
            <translation>Manejo, cada ciclo</translation>
        </message>
        <message>
            <source>Warm-up</source>
            <translation>Calentamiento</translation>
        </message>
        <message>
            <source>Test presses</source>
            <translation>Prensados de prueba</translation>
        </message>
        <message>
            <source>Pressed a second time</source>
            <translation>Prensadas otra vez</translation>
        </message>
        <message>
            <source>Second dwell</source>
            <translation>Segundo tiempo</translation>
        </message>
        <message>
            <source>Temperature noted</source>
            <translation>Temperatura anotada</translation>
        </message>
        <message>
            <source>Cutter, price</source>
            <translation>Cortadora, precio</translation>
        </message>
        <message>
            <source>Cutter, worth at the end</source>
            <translation>Cortadora, valor final</translation>
        </message>
        <message>
            <source>Cutter lasts, holes</source>
            <translation>Cortadora dura, agujeros</translation>
        </message>
        <message>
            <source>No running cost is meant</source>
            <translation>Uso sin costo, adrede</translation>
        </message>
        <message>
            <source>No wear of the press is meant</source>
            <translation>Prensa sin desgaste, adrede</translation>
        </message>
        <message>
            <source>No wear of the cutter is meant</source>
            <translation>Cortadora sin desgaste, adrede</translation>
        </message>
    </context>
    <context>
        <name>sp::shop::StepRows</name>
        <message>
            <source>+ step</source>
            <translation>+ tramo</translation>
        </message>
        <message>
            <source>Take step %1 out</source>
            <translation>Quitar el tramo %1</translation>
        </message>
    </context>
    <context>
        <name>sp::supplies::ColourButton</name>
        <message>
            <source>Choose from a picture of colours</source>
            <translation>Elegir en una imagen de colores</translation>
        </message>
        <message>
            <source>Picture’s colour: %1</source>
            <translation>Color de la imagen: %1</translation>
        </message>
        <message>
            <source>Colours</source>
            <translation>Colores</translation>
        </message>
        <message>
            <source>&amp;Another colour…</source>
            <translation>&amp;Otro color…</translation>
        </message>
    </context>
    <context>
        <name>sp::supplies::KitCard</name>
        <message>
            <source>Give the kit a name.</source>
            <translation>Dé un nombre al surtido.</translation>
        </message>
        <message>
            <source>What one kit makes</source>
            <translation>Lo que rinde un surtido</translation>
        </message>
        <message>
            <source>N&amp;ame</source>
            <translation>&amp;Nombre</translation>
        </message>
        <message>
            <source>&amp;Supplier</source>
            <translation>Pro&amp;veedor</translation>
        </message>
        <message>
            <source>&amp;Price</source>
            <translation>&amp;Precio</translation>
        </message>
        <message>
            <source>&amp;With templates cut</source>
            <translation>Con plantillas &amp;cortadas</translation>
        </message>
        <message>
            <source>empty: not to be had</source>
            <translation>vacío: no se consigue</translation>
        </message>
        <message>
            <source>For the &amp;design</source>
            <translation>Para el &amp;diseño</translation>
        </message>
        <message>
            <source>Sh&amp;ort count</source>
            <translation>Conteo cor&amp;to</translation>
        </message>
        <message>
            <source>stones missing as a rule</source>
            <translation>piedras que suelen faltar</translation>
        </message>
        <message>
            <source>Too&amp;ls that come along</source>
            <translation>&amp;Herramientas incluidas</translation>
        </message>
        <message>
            <source>with commas between; not used up</source>
            <translation>separadas por comas; no se gastan</translation>
        </message>
    </context>
    <context>
        <name>sp::supplies::KitItems</name>
        <message>
            <source>In the kit</source>
            <translation>En el surtido</translation>
        </message>
        <message>
            <source>+ ma&amp;terial</source>
            <translation>+ &amp;material</translation>
        </message>
        <message>
            <source>material</source>
            <translation>material</translation>
        </message>
        <message>
            <source>stones, sheets or pieces</source>
            <translation>piedras, láminas o piezas</translation>
        </message>
        <message>
            <source>material %1 of the kit</source>
            <translation>material %1 del surtido</translation>
        </message>
        <message>
            <source>number of material %1 of the kit</source>
            <translation>número del material %1 del surtido</translation>
        </message>
        <message>
            <source>Take material %1 out of the kit</source>
            <translation>Quitar el material %1 del surtido</translation>
        </message>
    </context>
    <context>
        <name>sp::supplies::ListColumns</name>
        <message>
            <source>The columns of the list</source>
            <translation>Las columnas de la lista</translation>
        </message>
        <message>
            <source>not used</source>
            <translation>sin usar</translation>
        </message>
        <message>
            <source>Item number</source>
            <translation>Número de artículo</translation>
        </message>
        <message>
            <source>What is sold</source>
            <translation>Qué se vende</translation>
        </message>
        <message>
            <source>Size</source>
            <translation>Tamaño</translation>
        </message>
        <message>
            <source>Colour</source>
            <translation>Color</translation>
        </message>
        <message>
            <source>Pack</source>
            <translation>Paquete</translation>
        </message>
        <message>
            <source>How many</source>
            <translation>Cuántos</translation>
        </message>
        <message>
            <source>Pack’s price</source>
            <translation>Precio del paquete</translation>
        </message>
        <message>
            <source>From packs</source>
            <translation>Desde paquetes</translation>
        </message>
        <message>
            <source>What column “%1” says</source>
            <translation>Qué dice la columna «%1»</translation>
        </message>
    </context>
    <context>
        <name>sp::supplies::ListRowsModel</name>
        <message>
            <source>new: %1</source>
            <translation>nuevo: %1</translation>
        </message>
        <message>
            <source>%1 (now %2)</source>
            <translation>%1 (ahora %2)</translation>
        </message>
        <message>
            <source>new pack</source>
            <translation>paquete nuevo</translation>
        </message>
        <message>
            <source>%1; as before: %2</source>
            <translation>%1; como antes: %2</translation>
        </message>
        <message>
            <source>Line</source>
            <translation>Línea</translation>
        </message>
        <message>
            <source>In the list</source>
            <translation>En la lista</translation>
        </message>
        <message>
            <source>In the book</source>
            <translation>En el libro</translation>
        </message>
        <message>
            <source>Pack</source>
            <translation>Paquete</translation>
        </message>
        <message>
            <source>Holds</source>
            <translation>Contiene</translation>
        </message>
        <message>
            <source>Price now</source>
            <translation>Precio ahora</translation>
        </message>
        <message>
            <source>Price in the list</source>
            <translation>Precio en la lista</translation>
        </message>
    </context>
    <context>
        <name>sp::supplies::MaterialCard</name>
        <message>
            <source>Give the material a name.</source>
            <translation>Dé un nombre al material.</translation>
        </message>
        <message>
            <source>N&amp;ame</source>
            <translation>&amp;Nombre</translation>
        </message>
        <message>
            <source>Give the colour as the trade says it.</source>
            <translation>Dé el color como lo dice el oficio.</translation>
        </message>
        <message>
            <source>&amp;Colour</source>
            <translation>&amp;Color</translation>
        </message>
        <message>
            <source>&amp;Size</source>
            <translation>&amp;Tamaño</translation>
        </message>
        <message>
            <source>&amp;Picture’s colour</source>
            <translation>Color de la &amp;imagen</translation>
        </message>
        <message>
            <source>&amp;Lost</source>
            <translation>Pér&amp;dida</translation>
        </message>
        <message>
            <source>of the stones taken out</source>
            <translation>de las piedras que se sacan</translation>
        </message>
        <message>
            <source>sheets</source>
            <translation>láminas</translation>
        </message>
        <message>
            <source>a roll</source>
            <translation>un rollo</translation>
        </message>
        <message>
            <source>whole sheets</source>
            <translation>láminas enteras</translation>
        </message>
        <message>
            <source>its share; offcuts are kept</source>
            <translation>su parte; se guardan los retazos</translation>
        </message>
        <message>
            <source>&amp;Has a direction: no turning</source>
            <translation>Tiene &amp;sentido: no girar</translation>
        </message>
        <message>
            <source>Comes &amp;in</source>
            <translation>&amp;Viene en</translation>
        </message>
        <message>
            <source>&amp;Width</source>
            <translation>&amp;Ancho</translation>
        </message>
        <message>
            <source>Hei&amp;ght</source>
            <translation>A&amp;lto</translation>
        </message>
        <message>
            <source>&amp;Margin</source>
            <translation>&amp;Margen</translation>
        </message>
        <message>
            <source>unusable, all round</source>
            <translation>no utilizable, alrededor</translation>
        </message>
        <message>
            <source>A piece pays for</source>
            <translation>Una pieza paga</translation>
        </message>
        <message>
            <source>B&amp;order round the design</source>
            <translation>Bo&amp;rde alrededor del diseño</translation>
        </message>
        <message>
            <source>Gap &amp;between pieces</source>
            <translation>Separación &amp;entre piezas</translation>
        </message>
        <message>
            <source>A pi&amp;ece lifts</source>
            <translation>Un tro&amp;zo levanta</translation>
        </message>
        <message>
            <source>times</source>
            <translation>veces</translation>
        </message>
        <message>
            <source>what the usual pack costs today</source>
            <translation>lo que cuesta hoy el paquete habitual</translation>
        </message>
        <message>
            <source>the average of the shelf</source>
            <translation>el promedio del estante</translation>
        </message>
        <message>
            <source>a fixed price</source>
            <translation>un precio fijo</translation>
        </message>
        <message>
            <source>The cost sheet &amp;uses</source>
            <translation>La &amp;hoja de costos usa</translation>
        </message>
        <message>
            <source>Fi&amp;xed price of one</source>
            <translation>Precio fi&amp;jo de uno</translation>
        </message>
        <message>
            <source>0.00 is meant</source>
            <translation>Va a 0.00, adrede</translation>
        </message>
        <message>
            <source>Then nobody is told any more that it costs nothing, and Buying takes a pack at 0.00</source>
            <translation>Así ya no se avisa de que no cuesta nada, y Compras toma un paquete a 0.00</translation>
        </message>
        <message>
            <source>Shelf</source>
            <translation>Estante</translation>
        </message>
        <message>
            <source>How man&amp;y</source>
            <translation>Cuánt&amp;os</translation>
        </message>
        <message>
            <source>Paid for &amp;them</source>
            <translation>Pa&amp;gado por ellos</translation>
        </message>
        <message>
            <source>for the average; may stay empty</source>
            <translation>para el promedio; puede quedar vacío</translation>
        </message>
        <message>
            <source>Count in</source>
            <translation>Anotar entrada</translation>
        </message>
        <message>
            <source>Take out</source>
            <translation>Sacar</translation>
        </message>
        <message>
            <source>That is all there is</source>
            <translation>Eso es todo lo que hay</translation>
        </message>
        <message>
            <source>So many were counted; the difference is booked</source>
            <translation>Se contaron tantos; se anota la diferencia</translation>
        </message>
        <message>
            <source>used</source>
            <translation>usado</translation>
        </message>
        <message>
            <source>lost</source>
            <translation>perdido</translation>
        </message>
        <message>
            <source>spoiled</source>
            <translation>estropeado</translation>
        </message>
        <message>
            <source>returned</source>
            <translation>devuelto</translation>
        </message>
        <message>
            <source>What goes out is</source>
            <translation>Lo que sale es</translation>
        </message>
        <message>
            <source>Reason</source>
            <translation>Motivo</translation>
        </message>
        <message>
            <source>as you say it; may stay empty</source>
            <translation>como usted lo diga; puede quedar vacío</translation>
        </message>
        <message>
            <source>Type how many first.</source>
            <translation>Escriba antes cuántos.</translation>
        </message>
        <message>
            <source>Len&amp;gth</source>
            <translation>&amp;Largo</translation>
        </message>
        <message>
            <source>No job at work is called “%1”; choose from the list.</source>
            <translation>Ningún trabajo en curso se llama «%1»; elija de la lista.</translation>
        </message>
        <message>
            <source>For the &amp;job</source>
            <translation>Para el traba&amp;jo</translation>
        </message>
        <message>
            <source>what goes out for it or comes back from it; may stay empty</source>
            <translation>lo que sale para él o vuelve de él; puede quedar vacío</translation>
        </message>
        <message>
            <source>What comes back from a job was not paid for again: leave out the sum, or the job.</source>
            <translation>Lo que vuelve de un trabajo no se pagó otra vez: quite el importe o el trabajo.</translation>
        </message>
    </context>
    <context>
        <name>sp::supplies::PackRows</name>
        <message>
            <source>Packs and prices</source>
            <translation>Paquetes y precios</translation>
        </message>
        <message>
            <source>+ pac&amp;k</source>
            <translation>+ &amp;paquete</translation>
        </message>
        <message>
            <source>supplier; item no.</source>
            <translation>proveedor; n.º art.</translation>
        </message>
        <message>
            <source>pack</source>
            <translation>paquete</translation>
        </message>
        <message>
            <source>holds</source>
            <translation>contiene</translation>
        </message>
        <message>
            <source>price of one</source>
            <translation>precio de uno</translation>
        </message>
        <message>
            <source>a gross · a stone</source>
            <translation>por gruesa · por piedra</translation>
        </message>
        <message>
            <source>one</source>
            <translation>por uno</translation>
        </message>
        <message>
            <source>usual</source>
            <translation>habitual</translation>
        </message>
        <message>
            <source>Give the pack a name, such as bag of 10 gross.</source>
            <translation>Dé un nombre al paquete, como bolsa de 10 gruesas.</translation>
        </message>
        <message>
            <source>%1 of pack %2</source>
            <translation>%1 del paquete %2</translation>
        </message>
        <message>
            <source>supplier</source>
            <translation>proveedor</translation>
        </message>
        <message>
            <source>name</source>
            <translation>nombre</translation>
        </message>
        <message>
            <source>contents</source>
            <translation>contenido</translation>
        </message>
        <message>
            <source>price</source>
            <translation>precio</translation>
        </message>
        <message>
            <source>usual tick</source>
            <translation>marca de habitual</translation>
        </message>
        <message>
            <source>item number</source>
            <translation>número de artículo</translation>
        </message>
        <message>
            <source>Add “%1” as a supplier</source>
            <translation>Añadir «%1» como proveedor</translation>
        </message>
        <message>
            <source>who sells it</source>
            <translation>quién lo vende</translation>
        </message>
        <message>
            <source>What the supplier’s price list calls this pack</source>
            <translation>Cómo llama a este paquete la lista de precios del proveedor</translation>
        </message>
        <message>
            <source>Take pack %1 out</source>
            <translation>Quitar el paquete %1</translation>
        </message>
        <message>
            <source>+ price</source>
            <translation>+ precio</translation>
        </message>
        <message>
            <source>%1 from so many packs on, of pack %2</source>
            <translation>%1 desde tantos paquetes, del paquete %2</translation>
        </message>
        <message>
            <source>from how many packs, price %1 of pack %2</source>
            <translation>desde cuántos paquetes, precio %1 del paquete %2</translation>
        </message>
        <message>
            <source>price %1 of pack %2</source>
            <translation>precio %1 del paquete %2</translation>
        </message>
        <message>
            <source>packs from</source>
            <translation>paquetes desde</translation>
        </message>
        <message>
            <source>Take price %1 of pack %2 out</source>
            <translation>Quitar el precio %1 del paquete %2</translation>
        </message>
        <message>
            <source>Give the price of one pack first.</source>
            <translation>Dé antes el precio de un paquete.</translation>
        </message>
        <message>
            <source>A pack costs more than nothing; count in on the shelf what came free.</source>
            <translation>Un paquete cuesta más que cero; anote en el estante la entrada de lo que llegó gratis.</translation>
        </message>
        <message>
            <source>Give more than %1; the price above holds from there on.</source>
            <translation>Dé más que %1; desde ahí vale el precio de arriba.</translation>
        </message>
        <message>
            <source>The price of a pack rises from %1 packs on; it is kept, but check it.</source>
            <translation>El precio de un paquete sube desde %1 paquetes; se conserva, pero revíselo.</translation>
        </message>
    </context>
    <context>
        <name>sp::supplies::PriceListDialog</name>
        <message>
            <source>Price list of %1</source>
            <translation>Lista de precios de %1</translation>
        </message>
        <message>
            <source>Choose &amp;file…</source>
            <translation>Elegir &amp;archivo…</translation>
        </message>
        <message>
            <source>Nothing in the book is called “%1”; choose from the list.</source>
            <translation>Nada en el libro se llama «%1»; elija de la lista.</translation>
        </message>
        <message>
            <source>The chosen &amp;row is</source>
            <translation>La &amp;fila elegida es</translation>
        </message>
        <message>
            <source>&amp;Decimal comma: 6,95</source>
            <translation>Coma &amp;decimal: 6,95</translation>
        </message>
        <message>
            <source>What becomes of the rows</source>
            <translation>Qué pasa con las filas</translation>
        </message>
        <message>
            <source>&amp;Stop</source>
            <translation>De&amp;tener</translation>
        </message>
        <message>
            <source>&amp;Close</source>
            <translation>&amp;Cerrar</translation>
        </message>
        <message>
            <source>&amp;Take these prices over</source>
            <translation>&amp;Incorporar estos precios</translation>
        </message>
        <message>
            <source>Choose a price list</source>
            <translation>Elegir una lista de precios</translation>
        </message>
        <message>
            <source>Price lists (*.csv *.tsv *.txt);;All files (*)</source>
            <translation>Listas de precios (*.csv *.tsv *.txt);;Todos los archivos (*)</translation>
        </message>
        <message>
            <source>How far the list is saved</source>
            <translation>Hasta dónde está guardada la lista</translation>
        </message>
        <message>
            <source>How far the list is read</source>
            <translation>Hasta dónde está leída la lista</translation>
        </message>
        <message>
            <source>The prices are being saved.</source>
            <translation>Se están guardando los precios.</translation>
        </message>
        <message>
            <source>No file chosen yet</source>
            <translation>Aún no hay archivo elegido</translation>
        </message>
        <message>
            <source>%1 (letters taken for Windows-1252)</source>
            <translation>%1 (letras tomadas como Windows-1252)</translation>
        </message>
        <message>
            <source>The list is being read.</source>
            <translation>Se está leyendo la lista.</translation>
        </message>
        <message>
            <source>Packs that change: %1; as they were: %2. Rows that cannot be taken: %3.</source>
            <translation>Paquetes que cambian: %1; como estaban: %2. Filas que no se pueden tomar: %3.</translation>
        </message>
    </context>
    <context>
        <name>sp::supplies::PriceListPresenter</name>
        <message>
            <source>“%1” cannot be read; check the file and choose it again.</source>
            <translation>No se puede leer «%1»; revise el archivo y elíjalo de nuevo.</translation>
        </message>
        <message>
            <source>Choose the file of the price list.</source>
            <translation>Elija el archivo de la lista de precios.</translation>
        </message>
        <message>
            <source>Reading “%1” was stopped; choose it again, or another file.</source>
            <translation>Se detuvo la lectura de «%1»; elíjalo de nuevo, u otro archivo.</translation>
        </message>
        <message>
            <source>Stopped: of %1 stones and packs %2 are in the book; undo takes them back part by part.</source>
            <translation>Detenido: de %1 piedras y paquetes, %2 están en el libro; deshacer los quita parte por parte.</translation>
        </message>
        <message>
            <source>%1 Of %2 stones and packs %3 are in the book; undo takes them back part by part.</source>
            <translation>%1 De %2 piedras y paquetes, %3 están en el libro; deshacer los quita parte por parte.</translation>
        </message>
    </context>
    <context>
        <name>sp::supplies::SizeRows</name>
        <message>
            <source>Sizes</source>
            <translation>Tallas</translation>
        </message>
        <message>
            <source>+ si&amp;ze</source>
            <translation>+ &amp;talla</translation>
        </message>
        <message>
            <source>size</source>
            <translation>talla</translation>
        </message>
        <message>
            <source>costs more</source>
            <translation>cuesta más</translation>
        </message>
        <message>
            <source>customer pays more</source>
            <translation>el cliente paga más</translation>
        </message>
        <message>
            <source>Give the size a name, such as 2XL.</source>
            <translation>Dé un nombre a la talla, como 2XL.</translation>
        </message>
        <message>
            <source>name of size %1</source>
            <translation>nombre de la talla %1</translation>
        </message>
        <message>
            <source>what size %1 costs more</source>
            <translation>lo que cuesta más la talla %1</translation>
        </message>
        <message>
            <source>what the customer pays more for size %1</source>
            <translation>lo que el cliente paga más por la talla %1</translation>
        </message>
        <message>
            <source>Take size %1 out</source>
            <translation>Quitar la talla %1</translation>
        </message>
    </context>
    <context>
        <name>sp::supplies::SupplierCard</name>
        <message>
            <source>Give the supplier a name.</source>
            <translation>Dé un nombre al proveedor.</translation>
        </message>
        <message>
            <source>N&amp;ame</source>
            <translation>&amp;Nombre</translation>
        </message>
        <message>
            <source>&amp;Days until it is here</source>
            <translation>&amp;Días hasta que llega</translation>
        </message>
        <message>
            <source>&amp;Shipping</source>
            <translation>&amp;Envío</translation>
        </message>
        <message>
            <source>Fr&amp;ee from</source>
            <translation>&amp;Gratis desde</translation>
        </message>
        <message>
            <source>goods for so much; empty: never</source>
            <translation>mercancía por tanto; vacío: nunca</translation>
        </message>
        <message>
            <source>S&amp;mallest order</source>
            <translation>Pedido &amp;mínimo</translation>
        </message>
        <message>
            <source>Read a price &amp;list…</source>
            <translation>&amp;Leer una lista de precios…</translation>
        </message>
        <message>
            <source>none of it</source>
            <translation>nada de él</translation>
        </message>
        <message>
            <source>a share of the goods</source>
            <translation>una parte de la mercancía</translation>
        </message>
        <message>
            <source>spread over a usual order</source>
            <translation>repartido en un pedido habitual</translation>
        </message>
        <message>
            <source>Shipping in the c&amp;ost</source>
            <translation>Envío en el c&amp;osto</translation>
        </message>
        <message>
            <source>S&amp;hare of the goods</source>
            <translation>&amp;Proporción de la mercancía</translation>
        </message>
        <message>
            <source>&amp;Usual order</source>
            <translation>Pedido &amp;habitual</translation>
        </message>
        <message>
            <source>goods for so much</source>
            <translation>mercancía por tanto</translation>
        </message>
    </context>
    <context>
        <name>sp::supplies::SuppliesPage</name>
        <message>
            <source>Supplies</source>
            <translation>Insumos</translation>
        </message>
        <message>
            <source>Materials, kits and suppliers</source>
            <translation>Materiales, surtidos y proveedores</translation>
        </message>
        <message>
            <source>&amp;Find by name or kind</source>
            <translation>&amp;Buscar por nombre o tipo</translation>
        </message>
        <message>
            <source>Nothing here is called that.</source>
            <translation>Nada aquí se llama así.</translation>
        </message>
        <message>
            <source>Stones, sheets, blanks and packing belong here, with what a pack of each costs.</source>
            <translation>Aquí van piedras, láminas, prendas base y empaque, con lo que cuesta un paquete de cada uno.</translation>
        </message>
        <message>
            <source>Add the first stone</source>
            <translation>Añadir la primera piedra</translation>
        </message>
        <message>
            <source>&amp;Remove</source>
            <translation>&amp;Quitar</translation>
        </message>
        <message>
            <source>&amp;New</source>
            <translation>N&amp;uevo</translation>
        </message>
        <message>
            <source>&amp;Stone</source>
            <translation>&amp;Piedra</translation>
        </message>
        <message>
            <source>&amp;Tape</source>
            <translation>&amp;Cinta</translation>
        </message>
        <message>
            <source>Te&amp;mplate sheet</source>
            <translation>Lá&amp;mina de plantilla</translation>
        </message>
        <message>
            <source>&amp;Backing</source>
            <translation>&amp;Respaldo</translation>
        </message>
        <message>
            <source>Blan&amp;k</source>
            <translation>Prenda &amp;base</translation>
        </message>
        <message>
            <source>&amp;Packing</source>
            <translation>&amp;Empaque</translation>
        </message>
        <message>
            <source>Ki&amp;t, several at one price</source>
            <translation>&amp;Surtido, varios a un precio</translation>
        </message>
        <message>
            <source>S&amp;upplier</source>
            <translation>Pr&amp;oveedor</translation>
        </message>
        <message>
            <source>%1 · %2</source>
            <translation>%1 · %2</translation>
        </message>
        <message>
            <source>kit · for %1</source>
            <translation>surtido · para %1</translation>
        </message>
        <message>
            <source>kit</source>
            <translation>surtido</translation>
        </message>
        <message>
            <source>supplier</source>
            <translation>proveedor</translation>
        </message>
        <message>
            <source>“%1” is removed.</source>
            <translation>«%1» se quitó.</translation>
        </message>
        <message>
            <source>Undo</source>
            <translation>Deshacer</translation>
        </message>
        <message>
            <source>The price list is taken over.</source>
            <translation>La lista de precios está incorporada.</translation>
        </message>
    </context>
    <context>
        <name>sp::supplies::SuppliesPresenter</name>
        <message>
            <source>Choose the design it is for; then what it makes stands here.</source>
            <translation>Elija el diseño para el que es; entonces aquí está lo que rinde.</translation>
        </message>
        <message>
            <source>New %1</source>
            <translation>Material nuevo: %1</translation>
        </message>
        <message>
            <source>Colour</source>
            <translation>Color</translation>
        </message>
        <message>
            <source>New supplier</source>
            <translation>Proveedor nuevo</translation>
        </message>
        <message>
            <source>Add a supplier first; a kit is bought from one.</source>
            <translation>Añada antes un proveedor; un surtido se le compra a uno.</translation>
        </message>
        <message>
            <source>New kit</source>
            <translation>Surtido nuevo</translation>
        </message>
        <message>
            <source>Every material is in the kit already.</source>
            <translation>Todos los materiales están ya en el surtido.</translation>
        </message>
        <message>
            <source>pack</source>
            <translation>paquete</translation>
        </message>
        <message>
            <source>Add a supplier first; a pack is bought from one.</source>
            <translation>Añada antes un proveedor; un paquete se le compra a uno.</translation>
        </message>
        <message>
            <source>What is promised could not be read again; it is shown as it was before.</source>
            <translation>Lo prometido no se pudo leer de nuevo; se muestra como estaba antes.</translation>
        </message>
        <message>
            <source>What %1 takes is not known; nothing of it is promised.</source>
            <translation>No se sabe qué lleva %1; no se promete nada para él.</translation>
        </message>
        <message>
            <source>You book by hand what jobs use: it stays promised until a job is ready, or you take it out for it.</source>
            <translation>Usted anota a mano lo que usan los trabajos: queda prometido hasta que un trabajo está listo o usted lo saca para él.</translation>
        </message>
    </context>
</TS>
