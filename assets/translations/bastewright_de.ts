<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de_DE" sourcelanguage="en">
<context>
    <name>AddPerson</name>
    <message>
        <source>Names, commas between</source>
        <translation>Namen, mit Komma dazwischen</translation>
    </message>
    <message>
        <source>Names</source>
        <translation>Namen</translation>
    </message>
    <message>
        <source>Name of whoever comes too; several with commas between</source>
        <translation>Name, wer noch kommt; mehrere mit Komma dazwischen</translation>
    </message>
    <message>
        <source>Add</source>
        <translation>Dazu</translation>
    </message>
    <message>
        <source>Add a person</source>
        <translation>Jemanden hinzufügen</translation>
    </message>
</context>
<context>
    <name>BackingWays</name>
    <message>
        <source>%1 · %2 · the plan</source>
        <translation>%1 · %2 · der Plan</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>Use this plan</source>
        <translation>Diesen Plan nehmen</translation>
    </message>
</context>
<context>
    <name>BattingWays</name>
    <message>
        <source>This is the plan.</source>
        <translation>Das ist der Plan.</translation>
    </message>
    <message>
        <source>Buy it this way</source>
        <translation>So kaufen</translation>
    </message>
</context>
<context>
    <name>BreakBoard</name>
    <message>
        <source>Resume</source>
        <translation>Weitermachen</translation>
    </message>
</context>
<context>
    <name>BringPane</name>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>need %1, have %2</source>
        <translation>nötig %1, da %2</translation>
    </message>
    <message>
        <source>Why so much: %1</source>
        <translation>Warum so viel: %1</translation>
    </message>
    <message>
        <source>buy %1</source>
        <translation>%1 kaufen</translation>
    </message>
</context>
<context>
    <name>CallRibbon</name>
    <message>
        <source>%1; next: %2</source>
        <translation>%1; danach: %2</translation>
    </message>
    <message>
        <source>Next: %1</source>
        <translation>Danach: %1</translation>
    </message>
</context>
<context>
    <name>ChangeCard</name>
    <message>
        <source>Planning …</source>
        <translation>Wird geplant …</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Keep the old plan</source>
        <translation>Alten Plan behalten</translation>
    </message>
    <message>
        <source>%1: %2 instead of %3 at work</source>
        <translation>%1: %2 statt %3 bei der Arbeit</translation>
    </message>
    <message>
        <source>Use this plan</source>
        <translation>Diesen Plan verwenden</translation>
    </message>
    <message>
        <source>As it is</source>
        <translation>Wie es ist</translation>
    </message>
    <message>
        <source>New plan</source>
        <translation>Neuer Plan</translation>
    </message>
    <message>
        <source>Wider rows</source>
        <translation>Weitere Reihen</translation>
    </message>
    <message>
        <source>Some fuse dots</source>
        <translation>Einige Klebepunkte</translation>
    </message>
    <message>
        <source>Fewer zones today</source>
        <translation>Heute weniger Zonen</translation>
    </message>
</context>
<context>
    <name>ChangeDesk</name>
    <message>
        <source>%1 comes</source>
        <translation>%1 kommt</translation>
    </message>
    <message>
        <source>%1 leaves</source>
        <translation>%1 geht</translation>
    </message>
    <message>
        <source>%1 comes for %2</source>
        <translation>%1 kommt für %2</translation>
    </message>
    <message>
        <source>Guest</source>
        <translation>Gast</translation>
    </message>
    <message>
        <source>Guest %1</source>
        <translation>Gast %1</translation>
    </message>
    <message>
        <source>%1 comes to help</source>
        <translation>%1 kommt helfen</translation>
    </message>
    <message>
        <source>Irons on circuits of their own where you can; cords off the walkway.</source>
        <translation>Bügeleisen möglichst an eigene Stromkreise; Kabel nicht im Laufweg.</translation>
    </message>
    <message>
        <source>Let it cool upright, out of the way.</source>
        <translation>Aufrecht und abseits abkühlen lassen.</translation>
    </message>
    <message>
        <source>%1 pins more</source>
        <translation>%1 Nadeln mehr</translation>
    </message>
    <message>
        <source>%1 pins less</source>
        <translation>%1 Nadeln weniger</translation>
    </message>
    <message>
        <source>One table more</source>
        <translation>Ein Tisch mehr</translation>
    </message>
    <message>
        <source>One table less</source>
        <translation>Ein Tisch weniger</translation>
    </message>
    <message>
        <source>Tables are carried by two, their legs locked before anything lies on them.</source>
        <translation>Tische tragen zwei; die Beine einrasten, bevor etwas darauf liegt.</translation>
    </message>
    <message>
        <source>Leave the rest of this pass out</source>
        <translation>Rest dieses Durchgangs weglassen</translation>
    </message>
    <message>
        <source>What is left out is not basted: baste it before anybody quilts there.</source>
        <translation>Was wegbleibt, ist nicht geheftet: vor dem Quilten dort heften.</translation>
    </message>
    <message>
        <source>Resume</source>
        <translation>Fortsetzen</translation>
    </message>
    <message>
        <source>Look at the holds and palm over the quilt first: fabric moves overnight.</source>
        <translation>Erst die Halter ansehen und mit der Hand über den Quilt fahren: Stoff bewegt sich über Nacht.</translation>
    </message>
    <message>
        <source>Plan the rest again</source>
        <translation>Rest neu planen</translation>
    </message>
    <message>
        <source>%1 to whoever is best</source>
        <translation>%1 an wen es am besten passt</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 an %2</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nichts</translation>
    </message>
    <message>
        <source>And %1 more changes of hands.</source>
        <translation>Und %1 weitere Wechsel.</translation>
    </message>
    <message>
        <source>Nobody&apos;s work changes.</source>
        <translation>Niemandes Arbeit ändert sich.</translation>
    </message>
    <message>
        <source>%1 stays to the end</source>
        <translation>%1 bleibt bis zum Ende</translation>
    </message>
    <message>
        <source>%1 leaves at %2</source>
        <translation>%1 geht um %2</translation>
    </message>
    <message>
        <source>Begin at %1</source>
        <translation>Beginn um %1</translation>
    </message>
    <message>
        <source>Finishes about %1, as before</source>
        <translation>Fertig gegen %1, wie vorher</translation>
    </message>
    <message>
        <source>Finishes about %1 instead of %2</source>
        <translation>Fertig gegen %1 statt %2</translation>
    </message>
    <message>
        <source>Add an iron</source>
        <translation>Ein Bügeleisen mehr</translation>
    </message>
    <message>
        <source>Take an iron away</source>
        <translation>Ein Bügeleisen weniger</translation>
    </message>
    <message>
        <source>The pins do not last</source>
        <translation>Die Nadeln reichen nicht</translation>
    </message>
    <message>
        <source>Wider rows for what is left</source>
        <translation>Weitere Reihen für den Rest</translation>
    </message>
    <message>
        <source>Fuse dots in some zones</source>
        <translation>Klebepunkte in einigen Zonen</translation>
    </message>
    <message>
        <source>Fewer zones today</source>
        <translation>Heute weniger Zonen</translation>
    </message>
    <message>
        <source>Finishes about</source>
        <translation>Fertig etwa um</translation>
    </message>
    <message>
        <source>Passes left</source>
        <translation>Durchgänge übrig</translation>
    </message>
    <message>
        <source>Zones left</source>
        <translation>Zonen übrig</translation>
    </message>
    <message>
        <source>Pins to place</source>
        <translation>Nadeln zu setzen</translation>
    </message>
</context>
<context>
    <name>ChangesSheet</name>
    <message>
        <source>Who comes?</source>
        <translation>Wer kommt?</translation>
    </message>
    <message>
        <source>Who leaves?</source>
        <translation>Wer geht?</translation>
    </message>
    <message>
        <source>Who comes for %1?</source>
        <translation>Wer kommt für %1?</translation>
    </message>
    <message>
        <source>How many pins?</source>
        <translation>Wie viele Nadeln?</translation>
    </message>
    <message>
        <source>What has changed?</source>
        <translation>Was hat sich geändert?</translation>
    </message>
    <message>
        <source>Somebody comes</source>
        <translation>Jemand kommt</translation>
    </message>
    <message>
        <source>Somebody leaves</source>
        <translation>Jemand geht</translation>
    </message>
    <message>
        <source>Pins</source>
        <translation>Nadeln</translation>
    </message>
    <message>
        <source>Leave the rest of this pass</source>
        <translation>Rest des Durchgangs weglassen</translation>
    </message>
    <message>
        <source>Stop for today</source>
        <translation>Schluss für heute</translation>
    </message>
    <message>
        <source>Plan the rest again</source>
        <translation>Rest neu planen</translation>
    </message>
    <message>
        <source>A guest</source>
        <translation>Ein Gast</translation>
    </message>
    <message>
        <source>Whose hours?</source>
        <translation>Wessen Zeiten?</translation>
    </message>
    <message>
        <source>Until when is %1 here?</source>
        <translation>Bis wann ist %1 da?</translation>
    </message>
    <message>
        <source>Somebody&apos;s hours</source>
        <translation>Jemandes Zeiten</translation>
    </message>
    <message>
        <source>Swap a helper</source>
        <translation>Ablösung</translation>
    </message>
    <message>
        <source>Add an iron</source>
        <translation>Ein Bügeleisen dazu</translation>
    </message>
    <message>
        <source>Take an iron away</source>
        <translation>Ein Bügeleisen weniger</translation>
    </message>
    <message>
        <source>Add a table</source>
        <translation>Einen Tisch dazu</translation>
    </message>
    <message>
        <source>Take a table away</source>
        <translation>Einen Tisch weniger</translation>
    </message>
    <message>
        <source>Resume</source>
        <translation>Weitermachen</translation>
    </message>
    <message>
        <source>A guest&apos;s name</source>
        <translation>Name des Gastes</translation>
    </message>
    <message>
        <source>%1 comes as a guest</source>
        <translation>%1 kommt als Gast</translation>
    </message>
    <message>
        <source>Leaves then</source>
        <translation>Geht dann</translation>
    </message>
    <message>
        <source>Leaves at %1</source>
        <translation>Geht um %1</translation>
    </message>
    <message>
        <source>Stays to the end</source>
        <translation>Bleibt bis zum Ende</translation>
    </message>
    <message>
        <source>Short by this many</source>
        <translation>So viele fehlen</translation>
    </message>
    <message>
        <source>This many more are here</source>
        <translation>So viele mehr sind da</translation>
    </message>
    <message>
        <source>Begin now</source>
        <translation>Jetzt beginnen</translation>
    </message>
</context>
<context>
    <name>CheckQuestion</name>
    <message>
        <source>Yes</source>
        <translation>Ja</translation>
    </message>
    <message>
        <source>Yes: %1</source>
        <translation>Ja: %1</translation>
    </message>
    <message>
        <source>Not yet</source>
        <translation>Noch nicht</translation>
    </message>
    <message>
        <source>Not yet: %1</source>
        <translation>Noch nicht: %1</translation>
    </message>
</context>
<context>
    <name>ClothSheet</name>
    <message>
        <source>Photo and fabrics</source>
        <translation>Foto und Stoffe</translation>
    </message>
    <message>
        <source>The photo of your quilt</source>
        <translation>Das Foto des Quilts</translation>
    </message>
    <message>
        <source>Your quilt in its fabrics</source>
        <translation>Der Quilt in seinen Stoffen</translation>
    </message>
    <message>
        <source>Reading the photo …</source>
        <translation>Das Foto wird gelesen …</translation>
    </message>
    <message>
        <source>Choose another photo</source>
        <translation>Anderes Foto wählen</translation>
    </message>
    <message>
        <source>Choose a photo</source>
        <translation>Foto wählen</translation>
    </message>
    <message>
        <source>Remove the photo</source>
        <translation>Foto entfernen</translation>
    </message>
    <message>
        <source>Or drag a picture from another program onto the plan.</source>
        <translation>Oder ein Bild aus einem anderen Programm auf den Plan ziehen.</translation>
    </message>
</context>
<context>
    <name>ComfortSheet</name>
    <message>
        <source>%1: less</source>
        <translation>%1: weniger</translation>
    </message>
    <message>
        <source>%1: more</source>
        <translation>%1: mehr</translation>
    </message>
    <message>
        <source>From your eyes to the screen at the table</source>
        <translation>Von den Augen zum Bildschirm am Tisch</translation>
    </message>
    <message>
        <source>%1 cm</source>
        <translation>%1 cm</translation>
    </message>
    <message>
        <source>Size of text elsewhere</source>
        <translation>Schriftgröße sonst</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Hell</translation>
    </message>
    <message>
        <source>Dark</source>
        <translation>Dunkel</translation>
    </message>
    <message>
        <source>Whole screen (F11)</source>
        <translation>Ganzer Bildschirm (F11)</translation>
    </message>
    <message>
        <source>Nothing moves or fades</source>
        <translation>Nichts bewegt sich oder blendet</translation>
    </message>
    <message>
        <source>Hold a bank card (85.6 mm wide) against the bar and make them equal, so that buttons and letters have their true size.</source>
        <translation>Eine Bankkarte (85,6 mm breit) an den Balken halten und angleichen, damit Tasten und Schrift ihre wahre Größe haben.</translation>
    </message>
    <message>
        <source>Length of the bar</source>
        <translation>Länge des Balkens</translation>
    </message>
    <message>
        <source>%1 px/mm</source>
        <translation>%1 px/mm</translation>
    </message>
    <message>
        <source>High contrast</source>
        <translation>Hoher Kontrast</translation>
    </message>
    <message>
        <source>As needed</source>
        <translation>Bei Bedarf</translation>
    </message>
    <message>
        <source>Always</source>
        <translation>Immer</translation>
    </message>
    <message>
        <source>Never</source>
        <translation>Nie</translation>
    </message>
    <message>
        <source>Text and display</source>
        <translation>Schrift und Anzeige</translation>
    </message>
    <message>
        <source>Same as device</source>
        <translation>Wie das Gerät</translation>
    </message>
    <message>
        <source>On-screen keyboard</source>
        <translation>Bildschirmtastatur</translation>
    </message>
    <message>
        <source>On-screen keyboard: as needed</source>
        <translation>Bildschirmtastatur: bei Bedarf</translation>
    </message>
    <message>
        <source>On-screen keyboard: always</source>
        <translation>Bildschirmtastatur: immer</translation>
    </message>
    <message>
        <source>On-screen keyboard: never</source>
        <translation>Bildschirmtastatur: nie</translation>
    </message>
    <message>
        <source>Light up the edge when the quilt may be moved</source>
        <translation>Rand leuchtet, wenn der Quilt weitergeschoben werden darf</translation>
    </message>
</context>
<context>
    <name>CountSheet</name>
    <message>
        <source>Pins</source>
        <translation>Nadeln</translation>
    </message>
    <message>
        <source>Add to returned</source>
        <translation>Zu den zurückgelegten zählen</translation>
    </message>
    <message>
        <source>Add found pins</source>
        <translation>Gefundene dazuzählen</translation>
    </message>
    <message>
        <source>So many are in the box now</source>
        <translation>So viele sind jetzt in der Dose</translation>
    </message>
    <message>
        <source>%1 are in the box now</source>
        <translation>%1 sind jetzt in der Dose</translation>
    </message>
</context>
<context>
    <name>EndSheet</name>
    <message>
        <source>End the session?</source>
        <translation>Das Treffen beenden?</translation>
    </message>
    <message>
        <source>The record is kept. Stop for today instead where the work goes on another day.</source>
        <translation>Das Protokoll bleibt erhalten. Geht die Arbeit an einem anderen Tag weiter, besser für heute aufhören.</translation>
    </message>
    <message>
        <source>End the session</source>
        <translation>Treffen beenden</translation>
    </message>
</context>
<context>
    <name>FabricsEditor</name>
    <message>
        <source>The border and the darkest fabric come first, the lightest last.</source>
        <translation>Zuerst der Rand und der dunkelste Stoff, zuletzt der hellste.</translation>
    </message>
    <message>
        <source>Fabric %1</source>
        <translation>Stoff %1</translation>
    </message>
    <message>
        <source>Add a fabric</source>
        <translation>Stoff hinzufügen</translation>
    </message>
    <message>
        <source>Remove this fabric</source>
        <translation>Diesen Stoff entfernen</translation>
    </message>
    <message>
        <source>Use the usual fabrics</source>
        <translation>Die üblichen Stoffe verwenden</translation>
    </message>
    <message>
        <source>Any color: its hue</source>
        <translation>Beliebige Farbe: ihr Farbton</translation>
    </message>
    <message>
        <source>How strong</source>
        <translation>Wie kräftig</translation>
    </message>
    <message>
        <source>How light</source>
        <translation>Wie hell</translation>
    </message>
</context>
<context>
    <name>FacingTiles</name>
    <message>
        <source>To the plan</source>
        <translation>Zum Plan</translation>
    </message>
    <message>
        <source>Undo: %1</source>
        <translation>Zurück: %1</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Mehr</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
</context>
<context>
    <name>FieldEditor</name>
    <message>
        <source>Not given</source>
        <translation>Keine Angabe</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>Set</source>
        <translation>Übernehmen</translation>
    </message>
</context>
<context>
    <name>FieldModel</name>
    <message>
        <source>overage: batting %1, backing %2</source>
        <translation>Überstand: Vlies %1, Rückseite %2</translation>
    </message>
    <message>
        <source>on the floor</source>
        <translation>auf dem Boden</translation>
    </message>
    <message>
        <source>one wall</source>
        <translation>eine Wand</translation>
    </message>
    <message>
        <source>%1 walls</source>
        <translation>%1 Wände</translation>
    </message>
    <message>
        <source>%1 people</source>
        <translation>%1 Personen</translation>
    </message>
    <message>
        <source>nobody yet</source>
        <translation>noch niemand</translation>
    </message>
    <message>
        <source>%1, %2 × %3 blocks</source>
        <translation>%1, %2 × %3 Blöcke</translation>
    </message>
    <message>
        <source>reaches %1</source>
        <translation>reicht %1 weit</translation>
    </message>
    <message>
        <source>sits</source>
        <translation>sitzt</translation>
    </message>
    <message>
        <source>does not lift</source>
        <translation>hebt nicht</translation>
    </message>
    <message>
        <source>1 pin</source>
        <translation>1 Nadel</translation>
    </message>
    <message>
        <source>%1 pins</source>
        <translation>%1 Nadeln</translation>
    </message>
    <message>
        <source>1 clamp</source>
        <translation>1 Klemme</translation>
    </message>
    <message>
        <source>%1 clamps</source>
        <translation>%1 Klemmen</translation>
    </message>
    <message>
        <source>1 clip</source>
        <translation>1 Clip</translation>
    </message>
    <message>
        <source>%1 clips</source>
        <translation>%1 Clips</translation>
    </message>
    <message>
        <source>nothing counted yet</source>
        <translation>noch nichts gezählt</translation>
    </message>
</context>
<context>
    <name>FieldTile</name>
    <message>
        <source>not given</source>
        <translation>keine Angabe</translation>
    </message>
</context>
<context>
    <name>Figure</name>
    <message>
        <source>%1: why</source>
        <translation>%1: warum</translation>
    </message>
</context>
<context>
    <name>FileName</name>
    <message>
        <source>Quilt</source>
        <translation>Quilt</translation>
    </message>
</context>
<context>
    <name>GoOnSheet</name>
    <message>
        <source>Going on</source>
        <translation>Es geht weiter</translation>
    </message>
    <message>
        <source>Who is here? Tap who is not, or has come.</source>
        <translation>Wer ist da? Antippen, wer fehlt oder gekommen ist.</translation>
    </message>
    <message>
        <source>%1 is here</source>
        <translation>%1 ist da</translation>
    </message>
    <message>
        <source>%1 is not here</source>
        <translation>%1 ist nicht da</translation>
    </message>
    <message>
        <source>Plan the rest from now</source>
        <translation>Den Rest ab jetzt planen</translation>
    </message>
</context>
<context>
    <name>Guests</name>
    <message>
        <source>No session is running at the table.</source>
        <translation>Am Tisch läuft kein Treffen.</translation>
    </message>
    <message>
        <source>Choose who you are.</source>
        <translation>Auswählen, wer hier abhakt.</translation>
    </message>
    <message>
        <source>This page is out of date. Load it again.</source>
        <translation>Diese Seite ist veraltet. Neu laden.</translation>
    </message>
    <message>
        <source>Pass %1 of %2</source>
        <translation>Durchgang %1 von %2</translation>
    </message>
    <message>
        <source>Pass %1 is finished</source>
        <translation>Durchgang %1 ist fertig</translation>
    </message>
    <message>
        <source>All is done</source>
        <translation>Alles ist fertig</translation>
    </message>
</context>
<context>
    <name>GuideDesk</name>
    <message>
        <source>For a child</source>
        <translation>Für ein Kind</translation>
    </message>
    <message>
        <source>For the sofa</source>
        <translation>Fürs Sofa</translation>
    </message>
    <message>
        <source>Single bed</source>
        <translation>Einzelbett</translation>
    </message>
    <message>
        <source>Double bed</source>
        <translation>Doppelbett</translation>
    </message>
    <message>
        <source>Wide bed</source>
        <translation>Breites Bett</translation>
    </message>
    <message>
        <source>Roll clips that hold %1</source>
        <translation>Rollenklammern, die %1 halten</translation>
    </message>
    <message>
        <source>How large is the quilt top?</source>
        <translation>Wie groß ist das Top?</translation>
    </message>
    <message>
        <source>How will it be quilted?</source>
        <translation>Wie wird gequiltet?</translation>
    </message>
    <message>
        <source>Which tables are there?</source>
        <translation>Welche Tische gibt es?</translation>
    </message>
    <message>
        <source>Who comes to help?</source>
        <translation>Wer hilft mit?</translation>
    </message>
    <message>
        <source>What is in the box?</source>
        <translation>Was ist in der Kiste?</translation>
    </message>
    <message>
        <source>Measure it through the middle, or take the nearest size and measure later.</source>
        <translation>In der Mitte messen, oder die nächste Größe nehmen und später messen.</translation>
    </message>
    <message>
        <source>Pins keep out of the way of the needle.</source>
        <translation>Die Nadeln bleiben der Maschine aus dem Weg.</translation>
    </message>
    <message>
        <source>They are pushed together, and the quilt is moved across them.</source>
        <translation>Sie werden zusammengeschoben, und der Quilt wandert darüber.</translation>
    </message>
    <message>
        <source>Tap what somebody can do and what not.</source>
        <translation>Antippen, was jemand kann und was nicht.</translation>
    </message>
    <message>
        <source>What is missing stands on the shopping list.</source>
        <translation>Was fehlt, steht auf der Einkaufsliste.</translation>
    </message>
    <message>
        <source>Along the seams, hidden in them</source>
        <translation>Den Nähten entlang, in ihnen versteckt</translation>
    </message>
    <message>
        <source>One design over the whole top</source>
        <translation>Ein Muster über das ganze Top</translation>
    </message>
    <message>
        <source>Drawn freely with the needle</source>
        <translation>Frei mit der Nadel gezeichnet</translation>
    </message>
    <message>
        <source>Knots or bar tacks, no lines</source>
        <translation>Knoten oder Riegel, keine Linien</translation>
    </message>
    <message>
        <source>Pins then keep clear of the seams</source>
        <translation>Die Nadeln halten dann Abstand von den Nähten</translation>
    </message>
    <message>
        <source>my fist</source>
        <translation>meine Faust</translation>
    </message>
    <message>
        <source>four fingers</source>
        <translation>vier Finger</translation>
    </message>
    <message>
        <source>A fist apart</source>
        <translation>Eine Faust auseinander</translation>
    </message>
    <message>
        <source>Four fingers apart</source>
        <translation>Vier Finger auseinander</translation>
    </message>
    <message>
        <source>By the ruler</source>
        <translation>Nach dem Maßband</translation>
    </message>
    <message>
        <source>1 table</source>
        <translation>1 Tisch</translation>
    </message>
    <message>
        <source>%1 tables</source>
        <translation>%1 Tische</translation>
    </message>
    <message>
        <source>The floor</source>
        <translation>Der Boden</translation>
    </message>
    <message>
        <source>Narrow bands</source>
        <translation>Schmale Streifen</translation>
    </message>
    <message>
        <source>Deep bands</source>
        <translation>Tiefe Streifen</translation>
    </message>
</context>
<context>
    <name>GuideHead</name>
    <message>
        <source>Back to your quilts</source>
        <translation>Zurück zu den Quilts</translation>
    </message>
    <message>
        <source>Skip the questions</source>
        <translation>Fragen überspringen</translation>
    </message>
</context>
<context>
    <name>GuidePage</name>
    <message>
        <source>Keep these people for the next quilt</source>
        <translation>Diese Leute für den nächsten Quilt behalten</translation>
    </message>
</context>
<context>
    <name>GuideQuestion</name>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
</context>
<context>
    <name>GuideScreen</name>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Show the plan</source>
        <translation>Plan zeigen</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Weiter</translation>
    </message>
</context>
<context>
    <name>HelpList</name>
    <message>
        <source>What would help most</source>
        <translation>Was am meisten hilft</translation>
    </message>
    <message>
        <source>Try it</source>
        <translation>Probieren</translation>
    </message>
    <message>
        <source>Try it: %1</source>
        <translation>Probieren: %1</translation>
    </message>
</context>
<context>
    <name>HintSheet</name>
    <message>
        <source>Worth knowing</source>
        <translation>Gut zu wissen</translation>
    </message>
    <message>
        <source>Nothing more.</source>
        <translation>Sonst nichts.</translation>
    </message>
    <message>
        <source>Put away</source>
        <translation>Weglegen</translation>
    </message>
    <message>
        <source>Put away: %1</source>
        <translation>Weglegen: %1</translation>
    </message>
    <message>
        <source>See what helps</source>
        <translation>Zeigen, was hilft</translation>
    </message>
</context>
<context>
    <name>HoldPress</name>
    <message>
        <source>Once more, or hold</source>
        <translation>Noch einmal, oder halten</translation>
    </message>
    <message>
        <source>Hold</source>
        <translation>Halten</translation>
    </message>
</context>
<context>
    <name>HoldsPicture</name>
    <message>
        <source>All are set.</source>
        <translation>Alle sitzen.</translation>
    </message>
    <message>
        <source>Number %1 · tap for the next</source>
        <translation>Nummer %1 · tippen: weiter</translation>
    </message>
    <message>
        <source>Number %1, the last</source>
        <translation>Nummer %1, die letzte</translation>
    </message>
    <message>
        <source>Tap for the next</source>
        <translation>Weiter: antippen</translation>
    </message>
    <message>
        <source>The last</source>
        <translation>Die letzte</translation>
    </message>
</context>
<context>
    <name>HoursBar</name>
    <message>
        <source>%1 comes at %2</source>
        <translation>%1 kommt um %2</translation>
    </message>
    <message>
        <source>%1 stays to the end</source>
        <translation>%1 bleibt bis zum Ende</translation>
    </message>
    <message>
        <source>%1 leaves at %2</source>
        <translation>%1 geht um %2</translation>
    </message>
    <message>
        <source>Drag it, or move it with Left and Right; press to type the time</source>
        <translation>Ziehen, oder mit Links und Rechts bewegen; drücken, um die Zeit einzugeben</translation>
    </message>
</context>
<context>
    <name>JobCard</name>
    <message>
        <source>Copy %1</source>
        <translation>%1 kopieren</translation>
    </message>
    <message>
        <source>Save %1 as a file</source>
        <translation>%1 als Datei sichern</translation>
    </message>
    <message>
        <source>Remove %1</source>
        <translation>%1 entfernen</translation>
    </message>
    <message>
        <source>Share %1</source>
        <translation>%1 teilen</translation>
    </message>
    <message>
        <source>Sessions of %1</source>
        <translation>Treffen von %1</translation>
    </message>
</context>
<context>
    <name>JobEditor</name>
    <message>
        <source>Quilt without a name</source>
        <translation>Quilt ohne Namen</translation>
    </message>
</context>
<context>
    <name>KeptChoices</name>
    <message>
        <source>Who came before</source>
        <translation>Wer schon dabei war</translation>
    </message>
    <message>
        <source>Kept from before</source>
        <translation>Vom letzten Mal</translation>
    </message>
    <message>
        <source>Rename or forget what is kept</source>
        <translation>Umbenennen oder vergessen, was behalten wird</translation>
    </message>
</context>
<context>
    <name>KeptDesk</name>
    <message>
        <source>Me</source>
        <translation>Ich</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Forget %1</source>
        <translation>%1 vergessen</translation>
    </message>
</context>
<context>
    <name>KeptSheet</name>
    <message>
        <source>New name of %1</source>
        <translation>Neuer Name von %1</translation>
    </message>
    <message>
        <source>Forget %1? What was written down at the table stays in its record.</source>
        <translation>%1 vergessen? Was am Tisch aufgeschrieben wurde, bleibt im Protokoll.</translation>
    </message>
    <message>
        <source>Forget %1? Quilts that use it keep what they have.</source>
        <translation>%1 vergessen? Quilts, die ihn verwenden, behalten, was sie haben.</translation>
    </message>
    <message>
        <source>Rename</source>
        <translation>Umbenennen</translation>
    </message>
    <message>
        <source>Rename %1</source>
        <translation>%1 umbenennen</translation>
    </message>
    <message>
        <source>Forget</source>
        <translation>Vergessen</translation>
    </message>
    <message>
        <source>Forget %1</source>
        <translation>%1 vergessen</translation>
    </message>
    <message>
        <source>Set</source>
        <translation>Übernehmen</translation>
    </message>
    <message>
        <source>Forget and take out of every quilt</source>
        <translation>Vergessen und aus jedem Quilt nehmen</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>Kept for the next quilt</source>
        <translation>Behalten für den nächsten Quilt</translation>
    </message>
    <message>
        <source>Nothing yet. A room or a box of supplies is kept once it has a name; people where you say so.</source>
        <translation>Noch nichts. Ein Raum oder eine Kiste wird behalten, sobald ein Name da ist; Leute nur auf Wunsch.</translation>
    </message>
    <message>
        <source>Kept on this device alone.</source>
        <translation>Nur auf diesem Gerät behalten.</translation>
    </message>
    <message>
        <source>Rooms</source>
        <translation>Räume</translation>
    </message>
    <message>
        <source>People</source>
        <translation>Leute</translation>
    </message>
    <message>
        <source>Supplies</source>
        <translation>Vorräte</translation>
    </message>
</context>
<context>
    <name>LaneCard</name>
    <message>
        <source>Tap a piece of work: dashed is pinned open, solid is closed or pressed, tied is done together.</source>
        <translation>Eine Arbeit antippen: gestrichelt wird offen gesteckt, voll wird geschlossen oder gebügelt, verbunden ist gemeinsam.</translation>
    </message>
    <message>
        <source>Hand %1 to …</source>
        <translation>%1 geben an …</translation>
    </message>
    <message>
        <source>Give %1 back to whoever is best</source>
        <translation>%1 zurück an wen es am besten passt</translation>
    </message>
</context>
<context>
    <name>LanesBoard</name>
    <message>
        <source>nobody yet</source>
        <translation>noch niemand</translation>
    </message>
    <message>
        <source>%1–%2  %3</source>
        <translation>%1–%2  %3</translation>
    </message>
    <message>
        <source>Pass %1 of %2.</source>
        <translation>Durchgang %1 von %2.</translation>
    </message>
    <message>
        <source>From the %1 edge.</source>
        <translation>Vom Rand %1.</translation>
    </message>
    <message>
        <source>%1.</source>
        <translation>%1.</translation>
    </message>
    <message>
        <source>Waits until %1: %2.</source>
        <translation>Wartet bis %1: %2.</translation>
    </message>
    <message>
        <source>Given to somebody else by hand.</source>
        <translation>Von Hand an jemand anderen gegeben.</translation>
    </message>
</context>
<context>
    <name>LanesItem</name>
    <message>
        <source>now %1</source>
        <translation>jetzt %1</translation>
    </message>
    <message>
        <source>start %1</source>
        <translation>Beginn %1</translation>
    </message>
    <message>
        <source>Pass %1</source>
        <translation>Durchgang %1</translation>
    </message>
</context>
<context>
    <name>LanesView</name>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Who, when</source>
        <translation>Wer, wann</translation>
    </message>
    <message>
        <source>Who does what, when</source>
        <translation>Wer macht was, wann</translation>
    </message>
    <message>
        <source>Longer time in sight</source>
        <translation>Mehr Zeit sehen</translation>
    </message>
    <message>
        <source>Closer</source>
        <translation>Näher</translation>
    </message>
    <message>
        <source>Everybody&apos;s work over time</source>
        <translation>Arbeit aller im Zeitverlauf</translation>
    </message>
    <message>
        <source>This work</source>
        <translation>Diese Arbeit</translation>
    </message>
    <message>
        <source>Undo: %1</source>
        <translation>Zurück: %1</translation>
    </message>
    <message>
        <source>Redo: %1</source>
        <translation>Wiederholen: %1</translation>
    </message>
</context>
<context>
    <name>LayersPresenter</name>
    <message>
        <source>%1, %2 wide: cut in this order</source>
        <translation>%1, %2 breit: in dieser Reihenfolge zuschneiden</translation>
    </message>
    <message>
        <source>The plan cannot be asked for this way.</source>
        <translation>Diese Variante lässt sich vom Plan nicht verlangen.</translation>
    </message>
    <message>
        <source>way to piece the backing</source>
        <translation>Zusammensetzen der Rückseite</translation>
    </message>
    <message>
        <source>Fabric</source>
        <translation>Stoff</translation>
    </message>
    <message>
        <source>Another fabric</source>
        <translation>Ein anderer Stoff</translation>
    </message>
    <message>
        <source>way to get the batting</source>
        <translation>Wahl des Vlieses</translation>
    </message>
    <message>
        <source>The backing is there already, or cannot be made: see what to check first.</source>
        <translation>Die Rückseite ist schon da oder lässt sich nicht machen: siehe „Zuerst prüfen“.</translation>
    </message>
    <message>
        <source>Least to buy: %1</source>
        <translation>Am wenigsten zu kaufen: %1</translation>
    </message>
    <message>
        <source>Nearly: %1</source>
        <translation>Knapp daneben: %1</translation>
    </message>
    <message>
        <source>Next best: %1</source>
        <translation>Nächstbeste Variante: %1</translation>
    </message>
    <message>
        <source>The batting is there already, or cannot be made: see what to check first.</source>
        <translation>Das Vlies ist schon da oder lässt sich nicht machen: siehe „Zuerst prüfen“.</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Nothing to buy for the backing</source>
        <translation>Für die Rückseite ist nichts zu kaufen</translation>
    </message>
    <message>
        <source>Buy %1</source>
        <translation>%1 kaufen</translation>
    </message>
</context>
<context>
    <name>LayersView</name>
    <message>
        <source>Backing</source>
        <translation>Rückseite</translation>
    </message>
    <message>
        <source>Batting</source>
        <translation>Vlies</translation>
    </message>
    <message>
        <source>Only looked at: this is not the plan.</source>
        <translation>Nur angesehen: Das ist nicht der Plan.</translation>
    </message>
    <message>
        <source>Dashed: the quilt. Dotted: the tables of the first pass.</source>
        <translation>Gestrichelt: der Quilt. Gepunktet: die Tische im ersten Durchgang.</translation>
    </message>
    <message>
        <source>Fabric</source>
        <translation>Stoff</translation>
    </message>
    <message>
        <source>Overage</source>
        <translation>Überstand</translation>
    </message>
    <message>
        <source>Other ways</source>
        <translation>Andere Varianten</translation>
    </message>
</context>
<context>
    <name>LearntPaces</name>
    <message>
        <source>%1 quicker</source>
        <translation>%1 schneller</translation>
    </message>
    <message>
        <source>%1 slower</source>
        <translation>%1 langsamer</translation>
    </message>
    <message>
        <source>Learnt at the last session: %1.</source>
        <translation>Beim letzten Treffen gelernt: %1.</translation>
    </message>
    <message>
        <source>Learnt speeds</source>
        <translation>Gelerntes Tempo</translation>
    </message>
</context>
<context>
    <name>LettersPad</name>
    <message>
        <source>Capital letter</source>
        <translation>Großbuchstabe</translation>
    </message>
    <message>
        <source>Delete</source>
        <translation>Löschen</translation>
    </message>
    <message>
        <source>Space</source>
        <translation>Leerzeichen</translation>
    </message>
    <message>
        <source>Set</source>
        <translation>Übernehmen</translation>
    </message>
</context>
<context>
    <name>LiveController</name>
    <message>
        <source>The session that was running cannot be read.</source>
        <translation>Das laufende Treffen ist nicht lesbar.</translation>
    </message>
    <message>
        <source>No session is running.</source>
        <translation>Es läuft kein Treffen.</translation>
    </message>
    <message>
        <source>Another tick has this number already. Tick again.</source>
        <translation>Diese Nummer ist schon vergeben. Noch einmal abhaken.</translation>
    </message>
    <message>
        <source>%1 has no tick to take back.</source>
        <translation>%1 hat keinen Haken zum Zurücknehmen.</translation>
    </message>
    <message>
        <source>not here</source>
        <translation>nicht hier</translation>
    </message>
    <message>
        <source>all done</source>
        <translation>alles fertig</translation>
    </message>
    <message>
        <source>%1/%2 zones</source>
        <translation>%1/%2 Zonen</translation>
    </message>
    <message>
        <source>the step</source>
        <translation>der Schritt</translation>
    </message>
    <message>
        <source>the release</source>
        <translation>die Freigabe</translation>
    </message>
    <message>
        <source>the count</source>
        <translation>die Zählung</translation>
    </message>
    <message>
        <source>the ending</source>
        <translation>das Ende</translation>
    </message>
    <message>
        <source>the last change</source>
        <translation>die letzte Änderung</translation>
    </message>
    <message>
        <source>the note</source>
        <translation>die Notiz</translation>
    </message>
    <message>
        <source>The next call has come. Tell the person at the tablet.</source>
        <translation>Die nächste Ansage ist schon da. Am Tablet Bescheid sagen.</translation>
    </message>
    <message>
        <source>There is no tick to take back.</source>
        <translation>Es gibt keinen Haken zurückzunehmen.</translation>
    </message>
    <message>
        <source>Stopped on %1</source>
        <translation>Aufgehört am %1</translation>
    </message>
    <message>
        <source>On a break since %1</source>
        <translation>Pause seit %1</translation>
    </message>
    <message>
        <source>%1 of %2 zones are done.</source>
        <translation>%1 von %2 Zonen sind fertig.</translation>
    </message>
    <message>
        <source>%1 %2 is open: close it before anybody leaves it.</source>
        <translation>%1 %2 ist offen: vor dem Weggehen schließen.</translation>
    </message>
    <message>
        <source>%1 Open: %2. Close them before anybody leaves them.</source>
        <translation>%1 Offen: %2. Vor dem Weggehen schließen.</translation>
    </message>
    <message>
        <source>%1 lies as in pass %2 of %3.</source>
        <translation>%1 liegt wie in Durchgang %2 von %3.</translation>
    </message>
    <message>
        <source>1 pin in the quilt</source>
        <translation>1 Nadel im Quilt</translation>
    </message>
    <message>
        <source>%1 pins in the quilt</source>
        <translation>%1 Nadeln im Quilt</translation>
    </message>
    <message>
        <source>In the box: %1</source>
        <translation>In der Dose: %1</translation>
    </message>
    <message>
        <source>In the quilt: %1</source>
        <translation>Im Quilt: %1</translation>
    </message>
    <message>
        <source>Back in the box: %1</source>
        <translation>Zurück in der Dose: %1</translation>
    </message>
    <message>
        <source>Still to be placed: %1</source>
        <translation>Noch zu stecken: %1</translation>
    </message>
    <message>
        <source>Finished at %1</source>
        <translation>Fertig um %1</translation>
    </message>
    <message>
        <source>Finishes about %1 (%2–%3)</source>
        <translation>Fertig gegen %1 (%2–%3)</translation>
    </message>
    <message>
        <source>on a break</source>
        <translation>macht Pause</translation>
    </message>
    <message>
        <source>%1 again</source>
        <translation>%1 noch einmal</translation>
    </message>
    <message>
        <source>It is %1 later than planned. Tap More, then What has changed, then Begin now: the rest is planned from now on, and whoever has to leave still leaves on time.</source>
        <translation>Es ist %1 später als geplant. Mehr antippen, dann Was hat sich geändert, dann Jetzt beginnen: Der Rest wird von jetzt an geplant, und wer gehen muss, geht trotzdem rechtzeitig.</translation>
    </message>
    <message>
        <source>Finishes about %1</source>
        <translation>Fertig gegen %1</translation>
    </message>
    <message>
        <source>Irons off. Pins off the chairs and the floor.</source>
        <translation>Bügeleisen aus. Keine Nadeln auf Stühlen und Boden.</translation>
    </message>
    <message>
        <source>Close what is open. Irons off and unplugged. Count the pins, sweep the floor, shut the door: no children, no pets.</source>
        <translation>Offenes schließen. Bügeleisen aus und ausgesteckt. Nadeln zählen, Boden absuchen, Tür zu: keine Kinder, keine Tiere.</translation>
    </message>
    <message>
        <source>Sweep the floor, shut the door: no children, no pets.</source>
        <translation>Boden absuchen, Tür zu: keine Kinder, keine Tiere.</translation>
    </message>
</context>
<context>
    <name>MoreSheet</name>
    <message>
        <source>What has changed?</source>
        <translation>Was hat sich geändert?</translation>
    </message>
    <message>
        <source>One view for all</source>
        <translation>Eine Ansicht für alle</translation>
    </message>
    <message>
        <source>Two people face to face</source>
        <translation>Zwei einander gegenüber</translation>
    </message>
    <message>
        <source>Redo</source>
        <translation>Wiederholen</translation>
    </message>
    <message>
        <source>Count pins</source>
        <translation>Nadeln zählen</translation>
    </message>
    <message>
        <source>Print</source>
        <translation>Drucken</translation>
    </message>
    <message>
        <source>End the session</source>
        <translation>Treffen beenden</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notizen</translation>
    </message>
    <message>
        <source>It was done otherwise</source>
        <translation>Es wurde anders gemacht</translation>
    </message>
    <message>
        <source>Everybody&apos;s turns</source>
        <translation>Wer wann dran ist</translation>
    </message>
    <message>
        <source>Resume</source>
        <translation>Weitermachen</translation>
    </message>
    <message>
        <source>Break</source>
        <translation>Pause</translation>
    </message>
    <message>
        <source>What was done</source>
        <translation>Was getan wurde</translation>
    </message>
    <message>
        <source>Follow on phones</source>
        <translation>Am Handy mitverfolgen</translation>
    </message>
    <message>
        <source>Text and display</source>
        <translation>Schrift und Anzeige</translation>
    </message>
    <message>
        <source>Turn the picture</source>
        <translation>Bild drehen</translation>
    </message>
</context>
<context>
    <name>NotesView</name>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notizen</translation>
    </message>
    <message>
        <source>A note</source>
        <translation>Eine Notiz</translation>
    </message>
    <message>
        <source>Keep the note</source>
        <translation>Notiz behalten</translation>
    </message>
    <message>
        <source>Take back: %1</source>
        <translation>Zurücknehmen: %1</translation>
    </message>
    <message>
        <source>Nothing noted yet. What should not be forgotten, such as a seam to mend, is kept here with its time.</source>
        <translation>Noch nichts notiert. Was nicht vergessen werden soll, etwa eine Naht, die zu flicken ist, steht hier mit seiner Uhrzeit.</translation>
    </message>
</context>
<context>
    <name>Notice</name>
    <message>
        <source>Close the message</source>
        <translation>Meldung schließen</translation>
    </message>
</context>
<context>
    <name>NumberPad</name>
    <message>
        <source>Delete</source>
        <translation>Löschen</translation>
    </message>
</context>
<context>
    <name>OtherwiseSheet</name>
    <message>
        <source>It was done otherwise</source>
        <translation>Es wurde anders gemacht</translation>
    </message>
    <message>
        <source>It is done all the same</source>
        <translation>Es ist trotzdem getan</translation>
    </message>
    <message>
        <source>Everything of this pass is done, up to and with:</source>
        <translation>Alles von diesem Durchgang ist fertig, bis einschließlich:</translation>
    </message>
    <message>
        <source>That was</source>
        <translation>Das war</translation>
    </message>
    <message>
        <source>just now</source>
        <translation>eben</translation>
    </message>
    <message>
        <source>%1 min ago</source>
        <translation>vor %1 min</translation>
    </message>
</context>
<context>
    <name>OverviewPane</name>
    <message>
        <source>Planning …</source>
        <translation>Wird geplant …</translation>
    </message>
    <message>
        <source>How the quilt lies and is held</source>
        <translation>Wie der Quilt liegt und gehalten wird</translation>
    </message>
    <message>
        <source>Who does what</source>
        <translation>Wer macht was</translation>
    </message>
    <message>
        <source>Rehearse</source>
        <translation>Probelauf</translation>
    </message>
    <message>
        <source>Basting</source>
        <translation>Heften</translation>
    </message>
    <message>
        <source>Layers</source>
        <translation>Lagen</translation>
    </message>
    <message>
        <source>People</source>
        <translation>Wer kommt</translation>
    </message>
    <message>
        <source>The session in a minute</source>
        <translation>Das Treffen in einer Minute</translation>
    </message>
    <message>
        <source>Finishes about</source>
        <translation>Fertig gegen</translation>
    </message>
    <message>
        <source>Your quilt</source>
        <translation>Der Quilt</translation>
    </message>
    <message>
        <source>Room</source>
        <translation>Raum</translation>
    </message>
    <message>
        <source>What we have</source>
        <translation>Vorhanden</translation>
    </message>
    <message>
        <source>Your plan</source>
        <translation>Der Plan</translation>
    </message>
    <message>
        <source>What to bring</source>
        <translation>Mitbringen</translation>
    </message>
    <message>
        <source>Other ways</source>
        <translation>Andere Varianten</translation>
    </message>
    <message>
        <source>Steps and hours of each</source>
        <translation>Schritte und Zeiten von jedem</translation>
    </message>
    <message>
        <source>Everybody’s turns</source>
        <translation>Wer wann dran ist</translation>
    </message>
    <message>
        <source>Who is where, over time</source>
        <translation>Wer wann wo ist</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Warum</translation>
    </message>
    <message>
        <source>Every figure and its reason</source>
        <translation>Jede Zahl und ihr Grund</translation>
    </message>
</context>
<context>
    <name>Page</name>
    <message>
        <source>en</source>
        <translation>de</translation>
    </message>
    <message>
        <source>At the table</source>
        <translation>Am Tisch</translation>
    </message>
    <message>
        <source>Follow the table</source>
        <translation>Dem Tisch folgen</translation>
    </message>
    <message>
        <source>The code on the tablet</source>
        <translation>Der Code auf dem Tablet</translation>
    </message>
    <message>
        <source>Follow</source>
        <translation>Folgen</translation>
    </message>
    <message>
        <source>Who are you?</source>
        <translation>Wer hakt hier ab?</translation>
    </message>
    <message>
        <source>Somebody else</source>
        <translation>Noch jemand</translation>
    </message>
    <message>
        <source>Your zones</source>
        <translation>Eigene Zonen</translation>
    </message>
    <message>
        <source>Everybody</source>
        <translation>Alle</translation>
    </message>
    <message>
        <source>This page needs JavaScript.</source>
        <translation>Diese Seite braucht JavaScript.</translation>
    </message>
    <message>
        <source>That did not work. Try again.</source>
        <translation>Das ging nicht. Noch einmal versuchen.</translation>
    </message>
    <message>
        <source>The tablet does not answer. Are you on the same network?</source>
        <translation>Das Tablet antwortet nicht. Ist es dasselbe Netz?</translation>
    </message>
    <message>
        <source>The code has changed. Scan the one on the tablet.</source>
        <translation>Der Code hat sich geändert. Den auf dem Tablet scannen.</translation>
    </message>
    <message>
        <source>No word from the tablet. What you see may be old; trying again.</source>
        <translation>Keine Nachricht vom Tablet. Das Gezeigte kann alt sein; neuer Versuch läuft.</translation>
    </message>
    <message>
        <source>That did not work.</source>
        <translation>Das ging nicht.</translation>
    </message>
    <message>
        <source>%1 could not be ticked. Tell the person at the tablet.</source>
        <translation>%1 ließ sich nicht abhaken. Am Tablet Bescheid sagen.</translation>
    </message>
    <message>
        <source>No session is open on the tablet. This page goes on by itself.</source>
        <translation>Auf dem Tablet ist kein Treffen offen. Diese Seite geht von selbst weiter.</translation>
    </message>
    <message>
        <source>The session has ended. Thank you.</source>
        <translation>Das Treffen ist beendet. Danke.</translation>
    </message>
    <message>
        <source>Now: %1</source>
        <translation>Jetzt: %1</translation>
    </message>
    <message>
        <source>None at the moment. The next step at the table is below.</source>
        <translation>Im Augenblick keine. Der nächste Schritt am Tisch steht unten.</translation>
    </message>
    <message>
        <source>Tick %1: %2</source>
        <translation>%1 abhaken: %2</translation>
    </message>
    <message>
        <source>waiting</source>
        <translation>wartet</translation>
    </message>
    <message>
        <source>dotted</source>
        <translation>geklebt</translation>
    </message>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>closed</source>
        <translation>geschlossen</translation>
    </message>
    <message>
        <source>On a break. Ticks wait until it is over.</source>
        <translation>Pause. Abgehakt wird danach.</translation>
    </message>
    <message>
        <source>Not on the list? Tell the person at the tablet that you have come.</source>
        <translation>Nicht auf der Liste? Am Tablet Bescheid sagen.</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Rückgängig</translation>
    </message>
    <message>
        <source>Take back the tick of %1</source>
        <translation>Den Haken von %1 zurücknehmen</translation>
    </message>
</context>
<context>
    <name>PagesView</name>
    <message>
        <source>The page before</source>
        <translation>Vorige Seite</translation>
    </message>
    <message>
        <source>The next page</source>
        <translation>Nächste Seite</translation>
    </message>
    <message>
        <source>The next person&apos;s sheets</source>
        <translation>Blätter der nächsten Person</translation>
    </message>
</context>
<context>
    <name>PassPicture</name>
    <message>
        <source>Planning …</source>
        <translation>Wird geplant …</translation>
    </message>
    <message>
        <source>There is nothing to draw yet.</source>
        <translation>Noch ist nichts zu zeichnen.</translation>
    </message>
    <message>
        <source>Tap a row to see how it is placed</source>
        <translation>Eine Reihe antippen: So wird sie gesteckt</translation>
    </message>
</context>
<context>
    <name>PassPresenter</name>
    <message>
        <source>One pass</source>
        <translation>Ein Durchgang</translation>
    </message>
    <message>
        <source>Pass %1 of %2</source>
        <translation>Durchgang %1 von %2</translation>
    </message>
    <message>
        <source>Shift the quilt %1 to the %2.</source>
        <translation>Den Quilt %1 weiterschieben, Richtung %2.</translation>
    </message>
    <message>
        <source>Shift the quilt %1 toward the %2.</source>
        <translation>Den Quilt %1 weiterschieben, Richtung %2.</translation>
    </message>
    <message>
        <source>%1 people move it.</source>
        <translation>%1 Personen bewegen ihn.</translation>
    </message>
    <message>
        <source>Backing hangs over the %1 edge by %2.</source>
        <translation>Die Rückseite hängt %2 über den Rand (%1).</translation>
    </message>
    <message>
        <source>Fold the %1 side on a support.</source>
        <translation>Diese Seite auf einer Stütze falten: %1.</translation>
    </message>
    <message>
        <source>Roll the %1 side: %2 across, %3 clips.</source>
        <translation>Diese Seite rollen: %1, %2 dick, %3 Clips.</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>, at the %1 edge</source>
        <translation>, Rand %1</translation>
    </message>
    <message>
        <source>Nothing is laid: the quilt, held, is only pulled across.</source>
        <translation>Nichts wird aufgelegt: Der festgehaltene Quilt wird nur hinübergezogen.</translation>
    </message>
    <message>
        <source>Rest the %1 side on chairs.</source>
        <translation>Seite %1 auf Stühle legen.</translation>
    </message>
    <message>
        <source>Rest the %1 side on the spare table.</source>
        <translation>Seite %1 auf den freien Tisch legen.</translation>
    </message>
</context>
<context>
    <name>PeopleBoard</name>
    <message>
        <source>› %1</source>
        <translation>› %1</translation>
    </message>
    <message>
        <source>Who does what</source>
        <translation>Wer macht was</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>PeopleDesk</name>
    <message>
        <source>%1–%2</source>
        <translation>%1–%2</translation>
    </message>
    <message>
        <source>from %1</source>
        <translation>ab %1</translation>
    </message>
    <message>
        <source>all the time</source>
        <translation>die ganze Zeit</translation>
    </message>
    <message>
        <source>Finishes about %1</source>
        <translation>Fertig gegen %1</translation>
    </message>
    <message>
        <source>Hours of %1</source>
        <translation>Zeiten von %1</translation>
    </message>
    <message>
        <source>Remove %1</source>
        <translation>%1 entfernen</translation>
    </message>
</context>
<context>
    <name>PeoplePane</name>
    <message>
        <source>All people</source>
        <translation>Alle Leute</translation>
    </message>
    <message>
        <source>Keep %1 for other quilts</source>
        <translation>%1 für andere Quilts behalten</translation>
    </message>
</context>
<context>
    <name>PeopleView</name>
    <message>
        <source>Drag somebody to a side of the tables, or tap them and choose. They then work its zones from there.</source>
        <translation>Jemanden an eine Tischseite ziehen oder antippen und wählen. Von dort werden dann die Zonen gearbeitet.</translation>
    </message>
    <message>
        <source>Where do they work?</source>
        <translation>Wo wird gearbeitet?</translation>
    </message>
    <message>
        <source>wherever there is work</source>
        <translation>wo Arbeit ist</translation>
    </message>
    <message>
        <source>%1, wherever there is work</source>
        <translation>%1, wo Arbeit ist</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Use these speeds</source>
        <translation>Dieses Tempo verwenden</translation>
    </message>
</context>
<context>
    <name>PersonCard</name>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>lifts</source>
        <translation>hebt</translation>
    </message>
    <message>
        <source>irons</source>
        <translation>bügelt</translation>
    </message>
    <message>
        <source>sits</source>
        <translation>sitzt</translation>
    </message>
    <message>
        <source>pins</source>
        <translation>steckt</translation>
    </message>
    <message>
        <source>Remove %1</source>
        <translation>%1 entfernen</translation>
    </message>
    <message>
        <source>breathes well</source>
        <translation>atmet frei</translation>
    </message>
</context>
<context>
    <name>PhoneSheet</name>
    <message>
        <source>Guests see this table on their phones and tick their own zones. Use a network you trust: nothing is encrypted.</source>
        <translation>Gäste sehen diesen Tisch auf ihren Telefonen und haken ihre Zonen ab. Nur in einem vertrauten Netz: Nichts ist verschlüsselt.</translation>
    </message>
    <message>
        <source>Switch on</source>
        <translation>Einschalten</translation>
    </message>
    <message>
        <source>%1 · this device alone</source>
        <translation>%1 · nur dieses Gerät</translation>
    </message>
    <message>
        <source>The address and the code as a picture to scan</source>
        <translation>Adresse und Code als Bild zum Scannen</translation>
    </message>
    <message>
        <source>Scan, or type this address</source>
        <translation>Scannen oder diese Adresse eingeben</translation>
    </message>
    <message>
        <source>and this code there</source>
        <translation>und dort diesen Code</translation>
    </message>
    <message>
        <source>New code</source>
        <translation>Neuer Code</translation>
    </message>
    <message>
        <source>Follow on phones</source>
        <translation>Am Handy mitverfolgen</translation>
    </message>
    <message>
        <source>Nobody follows yet.</source>
        <translation>Noch verfolgt es niemand.</translation>
    </message>
    <message>
        <source>On phones: %1</source>
        <translation>Am Handy: %1</translation>
    </message>
    <message>
        <source>Turn off</source>
        <translation>Ausschalten</translation>
    </message>
</context>
<context>
    <name>PhotoDesk</name>
    <message>
        <source>Navy</source>
        <translation>Marineblau</translation>
    </message>
    <message>
        <source>Denim blue</source>
        <translation>Jeansblau</translation>
    </message>
    <message>
        <source>Sky blue</source>
        <translation>Himmelblau</translation>
    </message>
    <message>
        <source>Teal</source>
        <translation>Petrol</translation>
    </message>
    <message>
        <source>Sea gray</source>
        <translation>Meergrau</translation>
    </message>
    <message>
        <source>Forest green</source>
        <translation>Tannengrün</translation>
    </message>
    <message>
        <source>Sage</source>
        <translation>Salbei</translation>
    </message>
    <message>
        <source>Leaf green</source>
        <translation>Blattgrün</translation>
    </message>
    <message>
        <source>Gold</source>
        <translation>Gold</translation>
    </message>
    <message>
        <source>Butter yellow</source>
        <translation>Buttergelb</translation>
    </message>
    <message>
        <source>Pumpkin</source>
        <translation>Kürbis</translation>
    </message>
    <message>
        <source>Terra cotta</source>
        <translation>Terrakotta</translation>
    </message>
    <message>
        <source>Barn red</source>
        <translation>Ziegelrot</translation>
    </message>
    <message>
        <source>Burgundy</source>
        <translation>Burgunder</translation>
    </message>
    <message>
        <source>Rose</source>
        <translation>Rosé</translation>
    </message>
    <message>
        <source>Blush</source>
        <translation>Zartrosa</translation>
    </message>
    <message>
        <source>Plum</source>
        <translation>Pflaume</translation>
    </message>
    <message>
        <source>Lavender</source>
        <translation>Lavendel</translation>
    </message>
    <message>
        <source>Brown</source>
        <translation>Braun</translation>
    </message>
    <message>
        <source>Tan</source>
        <translation>Hellbraun</translation>
    </message>
    <message>
        <source>Cream</source>
        <translation>Creme</translation>
    </message>
    <message>
        <source>White</source>
        <translation>Weiß</translation>
    </message>
    <message>
        <source>Gray</source>
        <translation>Grau</translation>
    </message>
    <message>
        <source>Black</source>
        <translation>Schwarz</translation>
    </message>
    <message>
        <source>Photos (%1)</source>
        <translation>Fotos (%1)</translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation>Alle Dateien (*)</translation>
    </message>
    <message>
        <source>%1 is not on this device: save the photo here first.</source>
        <translation>%1 liegt nicht auf diesem Gerät: das Foto zuerst hier speichern.</translation>
    </message>
    <message>
        <source>The photo could not be kept: choose another.</source>
        <translation>Das Foto ließ sich nicht aufbewahren: bitte ein anderes wählen.</translation>
    </message>
    <message>
        <source>the photo</source>
        <translation>das Foto</translation>
    </message>
    <message>
        <source>without the photo</source>
        <translation>ohne das Foto</translation>
    </message>
    <message>
        <source>the fabrics</source>
        <translation>die Stoffe</translation>
    </message>
    <message>
        <source>the usual fabrics</source>
        <translation>die üblichen Stoffe</translation>
    </message>
</context>
<context>
    <name>PhotoFile</name>
    <message>
        <source>Choose a photo of the top</source>
        <translation>Foto des Tops wählen</translation>
    </message>
</context>
<context>
    <name>PhotoView</name>
    <message>
        <source>Corner at the head, left</source>
        <translation>Ecke am Kopfende links</translation>
    </message>
    <message>
        <source>Corner at the head, right</source>
        <translation>Ecke am Kopfende rechts</translation>
    </message>
    <message>
        <source>Corner at the foot, right</source>
        <translation>Ecke am Fußende rechts</translation>
    </message>
    <message>
        <source>Corner at the foot, left</source>
        <translation>Ecke am Fußende links</translation>
    </message>
    <message>
        <source>Put the four marks on the corners of your quilt</source>
        <translation>Die vier Marken auf die Ecken des Quilts setzen</translation>
    </message>
    <message>
        <source>The head of the quilt is at the top. Turn the photo until it is.</source>
        <translation>Das Kopfende des Quilts gehört nach oben. Das Foto drehen, bis es dort ist.</translation>
    </message>
    <message>
        <source>The corners have crossed. Move each mark back to its own corner.</source>
        <translation>Die Ecken liegen über Kreuz. Jede Marke zurück an ihre eigene Ecke schieben.</translation>
    </message>
    <message>
        <source>The photo and the corners of the quilt</source>
        <translation>Das Foto und die Ecken des Quilts</translation>
    </message>
    <message>
        <source>Arrows move it, with Shift in larger steps.</source>
        <translation>Pfeiltasten schieben sie, mit Umschalt in größeren Schritten.</translation>
    </message>
    <message>
        <source>Use this photo</source>
        <translation>Dieses Foto verwenden</translation>
    </message>
    <message>
        <source>Turn the photo</source>
        <translation>Foto drehen</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
</context>
<context>
    <name>PlanHeader</name>
    <message>
        <source>Back to your quilts</source>
        <translation>Zurück zu den Quilts</translation>
    </message>
    <message>
        <source>Undo: %1</source>
        <translation>Zurück: %1</translation>
    </message>
    <message>
        <source>Redo: %1</source>
        <translation>Wiederholen: %1</translation>
    </message>
    <message>
        <source>Sheets: look and print</source>
        <translation>Blätter: ansehen und drucken</translation>
    </message>
    <message>
        <source>Text and display</source>
        <translation>Schrift und Anzeige</translation>
    </message>
    <message>
        <source>Resume</source>
        <translation>Weiter</translation>
    </message>
    <message>
        <source>Start basting</source>
        <translation>Heften beginnen</translation>
    </message>
    <message>
        <source>Resume at the table</source>
        <translation>Am Tisch weitermachen</translation>
    </message>
    <message>
        <source>Start basting at the table</source>
        <translation>Am Tisch mit dem Heften beginnen</translation>
    </message>
</context>
<context>
    <name>PlanPresenter</name>
    <message>
        <source>1 pass</source>
        <translation>1 Durchgang</translation>
    </message>
    <message>
        <source>%1 passes</source>
        <translation>%1 Durchgänge</translation>
    </message>
    <message>
        <source>On the floor</source>
        <translation>Auf dem Boden</translation>
    </message>
    <message>
        <source>We have everything</source>
        <translation>Wir haben alles</translation>
    </message>
    <message>
        <source>To buy: %1</source>
        <translation>Zu kaufen: %1</translation>
    </message>
    <message>
        <source>along</source>
        <translation>längs</translation>
    </message>
    <message>
        <source>across</source>
        <translation>quer</translation>
    </message>
    <message>
        <source>Backing %1, fabric runs %2.</source>
        <translation>Rückseite %1, Stoff läuft %2.</translation>
    </message>
    <message>
        <source>Batting %1</source>
        <translation>Vlies %1</translation>
    </message>
    <message>
        <source>%1–%2</source>
        <translation>%1–%2</translation>
    </message>
    <message>
        <source>Nobody could do with fewer than %1 or %2 passes; no plan ends before %3.</source>
        <translation>Mit weniger als %1 oder %2 Durchgängen ginge es nicht; kein Plan endet vor %3.</translation>
    </message>
    <message>
        <source>Fix 1 thing before you start</source>
        <translation>Vor dem Start ist 1 Sache zu ändern</translation>
    </message>
    <message>
        <source>Fix %1 things before you start</source>
        <translation>Vor dem Start sind %1 Sachen zu ändern</translation>
    </message>
    <message>
        <source>Check 1 thing first</source>
        <translation>Erst 1 Sache prüfen</translation>
    </message>
    <message>
        <source>Check %1 things first</source>
        <translation>Erst %1 Sachen prüfen</translation>
    </message>
    <message>
        <source>Ready to baste · 1 tip</source>
        <translation>Bereit zum Heften · 1 Tipp</translation>
    </message>
    <message>
        <source>Ready to baste · %1 tips</source>
        <translation>Bereit zum Heften · %1 Tipps</translation>
    </message>
    <message>
        <source>Ready to baste</source>
        <translation>Bereit zum Heften</translation>
    </message>
</context>
<context>
    <name>PrintChoices</name>
    <message>
        <source>In color</source>
        <translation>Farbig</translation>
    </message>
    <message>
        <source>Black and white</source>
        <translation>Schwarz-weiß</translation>
    </message>
    <message>
        <source>Both sides of the paper</source>
        <translation>Beide Papierseiten</translation>
    </message>
    <message>
        <source>Printer</source>
        <translation>Drucker</translation>
    </message>
    <message>
        <source>Copies</source>
        <translation>Exemplare</translation>
    </message>
    <message>
        <source>Fewer copies</source>
        <translation>Weniger Exemplare</translation>
    </message>
    <message>
        <source>More copies</source>
        <translation>Mehr Exemplare</translation>
    </message>
    <message>
        <source>Files for other programs</source>
        <translation>Dateien für andere Programme</translation>
    </message>
    <message>
        <source>The plan, the bring list and the helpers as tables, a calendar, and a picture of every pass.</source>
        <translation>Plan, Mitbringliste und Helfende als Tabellen, ein Kalender und ein Bild jedes Durchgangs.</translation>
    </message>
    <message>
        <source>A page for whoever leads</source>
        <translation>Ein Blatt für die Leitung</translation>
    </message>
    <message>
        <source>What to bring and cut</source>
        <translation>Was mitzubringen und zuzuschneiden ist</translation>
    </message>
    <message>
        <source>A page for every helper</source>
        <translation>Ein Blatt für jede helfende Person</translation>
    </message>
    <message>
        <source>More sheets</source>
        <translation>Weitere Blätter</translation>
    </message>
    <message>
        <source>A page for every pass</source>
        <translation>Ein Blatt für jeden Durchgang</translation>
    </message>
    <message>
        <source>The ribbons at true size</source>
        <translation>Die Bänder in wahrer Größe</translation>
    </message>
    <message>
        <source>Cards to lay on the zones</source>
        <translation>Karten für die Zonen</translation>
    </message>
    <message>
        <source>Labels for places, head and foot</source>
        <translation>Schilder für Plätze, Kopf und Fuß</translation>
    </message>
    <message>
        <source>Pins counted back, roll for the machine</source>
        <translation>Nadeln zurückgezählt, Rolle für die Maschine</translation>
    </message>
    <message>
        <source>Why this plan</source>
        <translation>Warum dieser Plan</translation>
    </message>
</context>
<context>
    <name>PrintSheet</name>
    <message>
        <source>Sheets</source>
        <translation>Blätter</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Print</source>
        <translation>Drucken</translation>
    </message>
    <message>
        <source>Save as PDF</source>
        <translation>Als PDF sichern</translation>
    </message>
</context>
<context>
    <name>QuiltFile</name>
    <message>
        <source>Save %1 as a file</source>
        <translation>%1 als Datei sichern</translation>
    </message>
    <message>
        <source>Open a quilt from a file</source>
        <translation>Quilt aus einer Datei öffnen</translation>
    </message>
    <message>
        <source>Quilts (*.json)</source>
        <translation>Quilts (*.json)</translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation>Alle Dateien (*)</translation>
    </message>
</context>
<context>
    <name>QuiltFolder</name>
    <message>
        <source>Where to save %1</source>
        <translation>Wohin %1 sichern</translation>
    </message>
</context>
<context>
    <name>Record</name>
    <message>
        <source>Who</source>
        <translation>Wer</translation>
    </message>
    <message>
        <source>At the table</source>
        <translation>Am Tisch</translation>
    </message>
    <message>
        <source>Opened</source>
        <translation>Gesteckt</translation>
    </message>
    <message>
        <source>Closed</source>
        <translation>Geschlossen</translation>
    </message>
    <message>
        <source>Speed</source>
        <translation>Tempo</translation>
    </message>
    <message>
        <source>Pass %1</source>
        <translation>Durchgang %1</translation>
    </message>
    <message>
        <source>Pass</source>
        <translation>Durchgang</translation>
    </message>
    <message>
        <source>Call</source>
        <translation>Ansage</translation>
    </message>
    <message>
        <source>Took</source>
        <translation>Dauer</translation>
    </message>
    <message>
        <source>Planned</source>
        <translation>Geplant</translation>
    </message>
    <message>
        <source>What was done</source>
        <translation>Was getan wurde</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notizen</translation>
    </message>
    <message>
        <source>%1  %2</source>
        <translation>%1  %2</translation>
    </message>
    <message>
        <source>Calls</source>
        <translation>Ansagen</translation>
    </message>
    <message>
        <source>One thing after another</source>
        <translation>Eins nach dem anderen</translation>
    </message>
    <message>
        <source>%1: what was done</source>
        <translation>%1: was getan wurde</translation>
    </message>
    <message>
        <source>The pages could not be drawn.</source>
        <translation>Die Seiten ließen sich nicht zeichnen.</translation>
    </message>
    <message>
        <source>%1 could not be written: %2</source>
        <translation>%1 ließ sich nicht schreiben: %2</translation>
    </message>
    <message>
        <source>%1 pressed from the back</source>
        <translation>%1 von hinten gebügelt</translation>
    </message>
    <message>
        <source>The palm glides</source>
        <translation>Die Hand gleitet</translation>
    </message>
    <message>
        <source>The palm does not glide yet</source>
        <translation>Die Hand gleitet noch nicht</translation>
    </message>
    <message>
        <source>It is flat underneath</source>
        <translation>Unten ist alles glatt</translation>
    </message>
    <message>
        <source>It is not flat underneath yet</source>
        <translation>Unten ist es noch nicht glatt</translation>
    </message>
    <message>
        <source>Four sides as planned</source>
        <translation>Vier Seiten wie geplant</translation>
    </message>
    <message>
        <source>A side is short</source>
        <translation>Eine Seite ist zu kurz</translation>
    </message>
    <message>
        <source>The cautions were read</source>
        <translation>Die Vorsichtsregeln wurden vorgelesen</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>The session began</source>
        <translation>Das Treffen begann</translation>
    </message>
    <message>
        <source>%1 has to be done again</source>
        <translation>%1 muss noch einmal gemacht werden</translation>
    </message>
    <message>
        <source>The rest of pass %1 was left out</source>
        <translation>Der Rest von Durchgang %1 wurde ausgelassen</translation>
    </message>
    <message>
        <source>Pass %1 was finished</source>
        <translation>Durchgang %1 war fertig</translation>
    </message>
    <message>
        <source>%1 came to the table</source>
        <translation>%1 kam an den Tisch</translation>
    </message>
    <message>
        <source>%1 left the table</source>
        <translation>%1 ging vom Tisch</translation>
    </message>
    <message>
        <source>%1 pins were short</source>
        <translation>%1 Nadeln fehlten</translation>
    </message>
    <message>
        <source>%1 more pins turned up</source>
        <translation>%1 Nadeln mehr tauchten auf</translation>
    </message>
    <message>
        <source>%1 pins back in the box</source>
        <translation>%1 Nadeln zurück in der Dose</translation>
    </message>
    <message>
        <source>%1 pins counted in the box</source>
        <translation>%1 Nadeln in der Dose gezählt</translation>
    </message>
    <message>
        <source>The pins were counted</source>
        <translation>Die Nadeln wurden gezählt</translation>
    </message>
    <message>
        <source>Note: %1</source>
        <translation>Notiz: %1</translation>
    </message>
    <message>
        <source>A break began</source>
        <translation>Eine Pause begann</translation>
    </message>
    <message>
        <source>The work went on</source>
        <translation>Die Arbeit ging weiter</translation>
    </message>
    <message>
        <source>Something in the hall changed</source>
        <translation>Im Saal änderte sich etwas</translation>
    </message>
    <message>
        <source>The rest was planned again</source>
        <translation>Der Rest wurde neu geplant</translation>
    </message>
    <message>
        <source>The session ended</source>
        <translation>Das Treffen endete</translation>
    </message>
    <message>
        <source>%1, from %2; still running</source>
        <translation>%1, ab %2; läuft noch</translation>
    </message>
    <message>
        <source>%1, %2 to %3</source>
        <translation>%1, %2 bis %3</translation>
    </message>
    <message>
        <source>%1 of work and %2 of breaks</source>
        <translation>%1 Arbeit und %2 Pausen</translation>
    </message>
    <message>
        <source>%1 of work</source>
        <translation>%1 Arbeit</translation>
    </message>
    <message>
        <source>Planned: %1</source>
        <translation>Geplant: %1</translation>
    </message>
    <message>
        <source>%1 of %2 zones done</source>
        <translation>%1 von %2 Zonen fertig</translation>
    </message>
    <message>
        <source>Pins: %1 in the quilt, %2 back in the box</source>
        <translation>Nadeln: %1 im Quilt, %2 zurück in der Dose</translation>
    </message>
    <message>
        <source>1 pin is missing</source>
        <translation>1 Nadel fehlt</translation>
    </message>
    <message>
        <source>%1 pins are missing</source>
        <translation>%1 Nadeln fehlen</translation>
    </message>
    <message>
        <source>much quicker than planned</source>
        <translation>viel schneller als geplant</translation>
    </message>
    <message>
        <source>a little quicker than planned</source>
        <translation>etwas schneller als geplant</translation>
    </message>
    <message>
        <source>much slower than planned</source>
        <translation>viel langsamer als geplant</translation>
    </message>
    <message>
        <source>a little slower than planned</source>
        <translation>etwas langsamer als geplant</translation>
    </message>
    <message>
        <source>as planned</source>
        <translation>wie geplant</translation>
    </message>
    <message>
        <source>%1 was left out</source>
        <translation>%1 wurde ausgelassen</translation>
    </message>
    <message>
        <source>Zones</source>
        <translation>Zonen</translation>
    </message>
</context>
<context>
    <name>RecordBook</name>
    <message>
        <source>This session cannot be read.</source>
        <translation>Dieses Treffen lässt sich nicht lesen.</translation>
    </message>
    <message>
        <source>%1 · ended</source>
        <translation>%1 · beendet</translation>
    </message>
    <message>
        <source>%1 · running</source>
        <translation>%1 · läuft</translation>
    </message>
    <message>
        <source>Saved: %1</source>
        <translation>Gespeichert: %1</translation>
    </message>
    <message>
        <source>%1 could not be written: %2</source>
        <translation>%1 ließ sich nicht schreiben: %2</translation>
    </message>
</context>
<context>
    <name>RecordView</name>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>What was done</source>
        <translation>Was getan wurde</translation>
    </message>
    <message>
        <source>Save as a page to print</source>
        <translation>Als Seite zum Drucken speichern</translation>
    </message>
    <message>
        <source>Save as a table for other programs</source>
        <translation>Als Tabelle für andere Programme speichern</translation>
    </message>
    <message>
        <source>Pass %1 · %2</source>
        <translation>Durchgang %1 · %2</translation>
    </message>
    <message>
        <source>planned %1</source>
        <translation>geplant %1</translation>
    </message>
    <message>
        <source>%1, 1 zone done</source>
        <translation>%1, 1 Zone erledigt</translation>
    </message>
    <message>
        <source>%1, %2 zones done</source>
        <translation>%1, %2 Zonen erledigt</translation>
    </message>
</context>
<context>
    <name>RefusalWindow</name>
    <message>
        <source>The library cannot be opened</source>
        <translation>Die Bibliothek lässt sich nicht öffnen</translation>
    </message>
    <message>
        <source>Try again</source>
        <translation>Noch einmal versuchen</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
</context>
<context>
    <name>Rehearsal</name>
    <message>
        <source>Pass %1 of %2</source>
        <translation>Durchgang %1 von %2</translation>
    </message>
</context>
<context>
    <name>RehearsalView</name>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>To the step before</source>
        <translation>Zum vorigen Schritt</translation>
    </message>
    <message>
        <source>Pause</source>
        <translation>Pause</translation>
    </message>
    <message>
        <source>Play</source>
        <translation>Abspielen</translation>
    </message>
    <message>
        <source>To the next step</source>
        <translation>Zum nächsten Schritt</translation>
    </message>
    <message>
        <source>Moment of the session</source>
        <translation>Zeitpunkt im Treffen</translation>
    </message>
</context>
<context>
    <name>Remedies</name>
    <message>
        <source>%1, %2, %3. %4.</source>
        <translation>%1, %2, %3. %4.</translation>
    </message>
</context>
<context>
    <name>RoomBoard</name>
    <message>
        <source>On the floor</source>
        <translation>Auf dem Boden</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>At most %1 tables can be kept in line by hand.</source>
        <translation>Höchstens %1 Tische lassen sich von Hand in einer Linie halten.</translation>
    </message>
    <message>
        <source>These tables make no rectangle together, so there would be gaps.</source>
        <translation>Diese Tische ergeben kein Rechteck; es blieben Lücken.</translation>
    </message>
    <message>
        <source>where the tables stand</source>
        <translation>wo die Tische stehen</translation>
    </message>
    <message>
        <source>how the quilt lies</source>
        <translation>wie der Quilt liegt</translation>
    </message>
    <message>
        <source>the tables as is quickest</source>
        <translation>die Tische, wie es am schnellsten geht</translation>
    </message>
    <message>
        <source>the wall at the %1</source>
        <translation>die Wand: %1</translation>
    </message>
    <message>
        <source>one more table</source>
        <translation>ein Tisch mehr</translation>
    </message>
    <message>
        <source>one table fewer</source>
        <translation>ein Tisch weniger</translation>
    </message>
    <message>
        <source>where %1 works</source>
        <translation>wo %1 arbeitet</translation>
    </message>
    <message>
        <source>upper side of the drawing</source>
        <translation>obere Seite der Zeichnung</translation>
    </message>
    <message>
        <source>lower side of the drawing</source>
        <translation>untere Seite der Zeichnung</translation>
    </message>
    <message>
        <source>left end</source>
        <translation>linkes Ende</translation>
    </message>
    <message>
        <source>right end</source>
        <translation>rechtes Ende</translation>
    </message>
    <message>
        <source>Nobody can stand at the %1: it is a wall.</source>
        <translation>Hier kann niemand stehen (%1): Das ist eine Wand.</translation>
    </message>
</context>
<context>
    <name>RoomFloor</name>
    <message>
        <source>No tables: the quilt is laid on the floor, in one pass. Kneel on something soft, and change places often.</source>
        <translation>Keine Tische: Der Quilt liegt auf dem Boden, in einem Durchgang. Weich knien und oft den Platz wechseln.</translation>
    </message>
    <message>
        <source>%1: a wall</source>
        <translation>%1: Wand</translation>
    </message>
    <message>
        <source>%1: open</source>
        <translation>%1: frei</translation>
    </message>
    <message>
        <source>Table %1, %2, apart</source>
        <translation>Tisch %1, %2, einzeln</translation>
    </message>
    <message>
        <source>Table %1, %2, pushed together</source>
        <translation>Tisch %1, %2, angeschoben</translation>
    </message>
    <message>
        <source>Another table like this</source>
        <translation>Noch ein solcher Tisch</translation>
    </message>
    <message>
        <source>Push the same tables together another way</source>
        <translation>Dieselben Tische anders zusammenschieben</translation>
    </message>
    <message>
        <source>Push this table to the others</source>
        <translation>Diesen Tisch zu den anderen schieben</translation>
    </message>
    <message>
        <source>Pull this table away from the others</source>
        <translation>Diesen Tisch von den anderen wegziehen</translation>
    </message>
</context>
<context>
    <name>RoomView</name>
    <message>
        <source>Let the tables stand and the quilt lie as is fastest</source>
        <translation>Tische und Quilt so lassen, wie es am schnellsten geht</translation>
    </message>
    <message>
        <source>Add a table</source>
        <translation>Einen Tisch hinzufügen</translation>
    </message>
    <message>
        <source>Remove this table</source>
        <translation>Diesen Tisch entfernen</translation>
    </message>
    <message>
        <source>Turn the tables</source>
        <translation>Tische drehen</translation>
    </message>
    <message>
        <source>Turn the quilt</source>
        <translation>Quilt drehen</translation>
    </message>
    <message>
        <source>As is fastest</source>
        <translation>Wie es am schnellsten geht</translation>
    </message>
    <message>
        <source>Tap a table for its handles, or drag it. Tap an edge that stands against a wall. Stitched: the quilt in the first pass.</source>
        <translation>Einen Tisch antippen für seine Griffe, oder ihn ziehen. Eine Kante antippen, die an der Wand steht. Gestrichelt: der Quilt im ersten Durchgang.</translation>
    </message>
</context>
<context>
    <name>RowsCard</name>
    <message>
        <source>Previous row</source>
        <translation>Vorige Reihe</translation>
    </message>
    <message>
        <source>Next row</source>
        <translation>Nächste Reihe</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
</context>
<context>
    <name>RowsDesk</name>
    <message>
        <source>Row %1 of %2: %3</source>
        <translation>Reihe %1 von %2: %3</translation>
    </message>
    <message>
        <source>at the odd rows’ marks</source>
        <translation>an den Marken der ungeraden Reihen</translation>
    </message>
    <message>
        <source>at the even rows’ marks</source>
        <translation>an den Marken der geraden Reihen</translation>
    </message>
    <message>
        <source>%1 from the head, %2</source>
        <translation>%1 vom Kopf, %2</translation>
    </message>
    <message>
        <source>%1 from the left, %2</source>
        <translation>%1 von links, %2</translation>
    </message>
    <message>
        <source>%1; 1 of them beside its mark, clear of a seam</source>
        <translation>%1; 1 davon neben ihrer Marke, frei von einer Naht</translation>
    </message>
    <message>
        <source>%1; %2 of them beside their marks, clear of seams</source>
        <translation>%1; %2 davon neben ihren Marken, frei von Nähten</translation>
    </message>
    <message>
        <source>Along a row, from the left: above odd rows, below even rows</source>
        <translation>Entlang einer Reihe, von links: oben ungerade, unten gerade Reihen</translation>
    </message>
    <message>
        <source>Along a row, from the head: above odd rows, below even rows</source>
        <translation>Entlang einer Reihe, vom Kopf: oben ungerade, unten gerade Reihen</translation>
    </message>
    <message>
        <source>at the marks of all rows</source>
        <translation>an den Marken aller Reihen</translation>
    </message>
    <message>
        <source>Along every row, from the left</source>
        <translation>Entlang jeder Reihe, von links</translation>
    </message>
    <message>
        <source>Along every row, from the head</source>
        <translation>Entlang jeder Reihe, vom Kopf</translation>
    </message>
</context>
<context>
    <name>SessionsSheet</name>
    <message>
        <source>Sessions of %1</source>
        <translation>Treffen von %1</translation>
    </message>
</context>
<context>
    <name>ShareSheet</name>
    <message>
        <source>Share %1</source>
        <translation>%1 teilen</translation>
    </message>
    <message>
        <source>One small file holds everything you entered. Whoever opens it plans the same quilt.</source>
        <translation>Eine kleine Datei enthält alle Angaben. Wer sie öffnet, plant denselben Quilt.</translation>
    </message>
    <message>
        <source>Save it in a folder, or on a stick</source>
        <translation>In einem Ordner oder auf einem Stick sichern</translation>
    </message>
    <message>
        <source>Open it with another program</source>
        <translation>Mit einem anderen Programm öffnen</translation>
    </message>
</context>
<context>
    <name>Sheet</name>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
</context>
<context>
    <name>SheetPreview</name>
    <message>
        <source>No sheet is chosen.</source>
        <translation>Kein Blatt ist gewählt.</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>Sheets</name>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>from %1</source>
        <translation>ab %1</translation>
    </message>
    <message>
        <source>until %1</source>
        <translation>bis %1</translation>
    </message>
    <message>
        <source>the whole time</source>
        <translation>die ganze Zeit</translation>
    </message>
    <message>
        <source>%1, break %2 to %3</source>
        <translation>%1, Pause %2 bis %3</translation>
    </message>
    <message>
        <source>The folder %1 cannot be made.</source>
        <translation>Der Ordner %1 lässt sich nicht anlegen.</translation>
    </message>
    <message>
        <source>%1 cannot be written: %2.</source>
        <translation>%1 lässt sich nicht schreiben: %2.</translation>
    </message>
    <message>
        <source>Pass %1</source>
        <translation>Durchgang %1</translation>
    </message>
    <message>
        <source>Overlap the two, cut once through both, peel the strips away, bring the edges together with no gap, then join.</source>
        <translation>Beide überlappen, einmal durch beide schneiden, die Streifen abziehen, die Kanten ohne Lücke aneinanderlegen, dann verbinden.</translation>
    </message>
    <message>
        <source>Batting</source>
        <translation>Vlies</translation>
    </message>
    <message>
        <source>Bring %1 of joining strip.</source>
        <translation>%1 Verbindungsstreifen mitbringen.</translation>
    </message>
    <message>
        <source>Left over: %1.</source>
        <translation>Übrig: %1.</translation>
    </message>
    <message>
        <source>Bring</source>
        <translation>Mitbringen</translation>
    </message>
    <message>
        <source>%1, pass %2</source>
        <translation>%1, Durchgang %2</translation>
    </message>
    <message>
        <source>%1 from the left</source>
        <translation>%1 von links</translation>
    </message>
    <message>
        <source>%1 from the head</source>
        <translation>%1 vom Kopf</translation>
    </message>
    <message>
        <source>This line is 100 mm long. Where it is not, print again at 100 %, not fitted to the page.</source>
        <translation>Diese Linie ist 100 mm lang. Wenn nicht: noch einmal mit 100 % drucken, nicht an die Seite angepasst.</translation>
    </message>
    <message>
        <source>Cards for the zones</source>
        <translation>Karten für die Zonen</translation>
    </message>
    <message>
        <source>%1 · cut out; lay each on its zone with the heavy corner on the zone&apos;s head-left corner; take it away before pinning</source>
        <translation>%1 · ausschneiden; jede auf ihre Zone legen, die dicke Ecke an die Ecke Kopf links der Zone; vor dem Stecken wegnehmen</translation>
    </message>
    <message>
        <source>Marks for the corners</source>
        <translation>Eckmarken</translation>
    </message>
    <message>
        <source>%1 · four for each pass: pin them so that the heavy corner lies on the corner of what is basted in it</source>
        <translation>%1 · vier je Durchgang: so anstecken, dass die dicke Ecke auf der Ecke dessen liegt, was darin geheftet wird</translation>
    </message>
    <message>
        <source>Take care</source>
        <translation>Achtung</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>along</source>
        <translation>längs</translation>
    </message>
    <message>
        <source>across</source>
        <translation>quer</translation>
    </message>
    <message>
        <source>All</source>
        <translation>Alle</translation>
    </message>
    <message>
        <source>Pins into the quilt, pins back</source>
        <translation>Nadeln in den Quilt, Nadeln zurück</translation>
    </message>
    <message>
        <source>%1 · count out for each pass, and back as they leave the quilt</source>
        <translation>%1 · für jeden Durchgang abzählen und beim Herausnehmen zurückzählen</translation>
    </message>
    <message>
        <source>Pass</source>
        <translation>Durchgang</translation>
    </message>
    <message>
        <source>Zones</source>
        <translation>Zonen</translation>
    </message>
    <message>
        <source>Planned</source>
        <translation>Geplant</translation>
    </message>
    <message>
        <source>Into the quilt</source>
        <translation>In den Quilt</translation>
    </message>
    <message>
        <source>Counted back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source> · </source>
        <translation> · </translation>
    </message>
    <message>
        <source>; </source>
        <translation>; </translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>throat not given</source>
        <translation>Durchlass nicht angegeben</translation>
    </message>
    <message>
        <source>fits the throat</source>
        <translation>passt in den Durchlass</translation>
    </message>
    <message>
        <source>too thick for the throat</source>
        <translation>zu dick für den Durchlass</translation>
    </message>
    <message>
        <source>%1, none we have is large enough</source>
        <translation>%1, keiner, den wir haben, ist groß genug</translation>
    </message>
    <message>
        <source>Roll for the machine</source>
        <translation>Rollen für die Maschine</translation>
    </message>
    <message>
        <source>%1. The throat is %2: never more than half of the quilt goes through it.</source>
        <translation>%1. Der Durchlass ist %2: Nie geht mehr als der halbe Quilt hindurch.</translation>
    </message>
    <message>
        <source>%1. Never more than half of the quilt goes through the throat.</source>
        <translation>%1. Nie geht mehr als der halbe Quilt durch den Durchlass.</translation>
    </message>
    <message>
        <source>Side</source>
        <translation>Seite</translation>
    </message>
    <message>
        <source>Roll up</source>
        <translation>Aufrollen</translation>
    </message>
    <message>
        <source>Thickness</source>
        <translation>Dicke</translation>
    </message>
    <message>
        <source>Clips</source>
        <translation>Clips</translation>
    </message>
    <message>
        <source>Quilt %1</source>
        <translation>Quilt %1</translation>
    </message>
    <message>
        <source>Quilt</source>
        <translation>Quilt</translation>
    </message>
    <message>
        <source>%1 and %2 more</source>
        <translation>%1 und %2 weitere</translation>
    </message>
    <message>
        <source>%1, pass %2, table %3</source>
        <translation>%1, Durchgang %2, Tisch %3</translation>
    </message>
    <message>
        <source>Lead</source>
        <translation>Leitung</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Cards</source>
        <translation>Karten</translation>
    </message>
    <message>
        <source>strong frame: what is basted now, zone by zone, with the count</source>
        <translation>dicker Rahmen: was jetzt geheftet wird, je Zone mit Anzahl</translation>
    </message>
    <message>
        <source>dark squares: clamps; white: tape</source>
        <translation>dunkle Quadrate: Klemmen; weiß: Klebeband</translation>
    </message>
    <message>
        <source>thin lines round the top: batting (dashed) and backing</source>
        <translation>dünne Linien um das Top: Vlies (gestrichelt) und Rückseite</translation>
    </message>
    <message>
        <source>hatched: basted already</source>
        <translation>schraffiert: schon geheftet</translation>
    </message>
    <message>
        <source>Backing over the edge</source>
        <translation>Rückseite über die Kante</translation>
    </message>
    <message>
        <source>Batting over the edge</source>
        <translation>Vlies über die Kante</translation>
    </message>
    <message>
        <source>Top over the edge</source>
        <translation>Top über die Kante</translation>
    </message>
    <message>
        <source>Backing overage</source>
        <translation>Überstand der Rückseite</translation>
    </message>
    <message>
        <source>Batting overage</source>
        <translation>Überstand des Vlieses</translation>
    </message>
    <message>
        <source>Seen</source>
        <translation>Gesehen</translation>
    </message>
    <message>
        <source>Compare on all four sides before the first pin</source>
        <translation>Vor der ersten Nadel an allen vier Seiten vergleichen</translation>
    </message>
    <message>
        <source>Minus: ends on the table. %1 short of the figure or more: look underneath for a pleat.</source>
        <translation>Minus: endet auf dem Tisch. Fehlen %1 oder mehr: unten nach einer Falte sehen.</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>table %1</source>
        <translation>Tisch %1</translation>
    </message>
    <message>
        <source>zone %1</source>
        <translation>Zone %1</translation>
    </message>
    <message>
        <source>zones %1</source>
        <translation>Zonen %1</translation>
    </message>
    <message>
        <source>Pass %1 of %2</source>
        <translation>Durchgang %1 von %2</translation>
    </message>
    <message>
        <source>1 clamp</source>
        <translation>1 Klemme</translation>
    </message>
    <message>
        <source>%1 clamps</source>
        <translation>%1 Klemmen</translation>
    </message>
    <message>
        <source>1 tape</source>
        <translation>1 Klebestreifen</translation>
    </message>
    <message>
        <source>%1 tapes</source>
        <translation>%1 Klebestreifen</translation>
    </message>
    <message>
        <source>1 person</source>
        <translation>1 Person</translation>
    </message>
    <message>
        <source>%1 people</source>
        <translation>%1 Personen</translation>
    </message>
    <message>
        <source>Shift</source>
        <translation>Weiterschieben</translation>
    </message>
    <message>
        <source>Lift together</source>
        <translation>Gemeinsam heben</translation>
    </message>
    <message>
        <source>Hold</source>
        <translation>Halten</translation>
    </message>
    <message>
        <source>Smooth toward</source>
        <translation>Streichen in Richtung</translation>
    </message>
    <message>
        <source>Beyond the table</source>
        <translation>Über den Tisch hinaus</translation>
    </message>
    <message>
        <source>the floor</source>
        <translation>der Boden</translation>
    </message>
    <message>
        <source>the quilt&apos;s length along the long side</source>
        <translation>Quiltlänge an der langen Seite</translation>
    </message>
    <message>
        <source>the quilt&apos;s length across, head to a long side</source>
        <translation>Quiltlänge quer, Kopf zu einer langen Seite</translation>
    </message>
    <message>
        <source>%1, %2; %3</source>
        <translation>%1, %2; %3</translation>
    </message>
    <message>
        <source>Top</source>
        <translation>Top</translation>
    </message>
    <message>
        <source>Backing</source>
        <translation>Rückseite</translation>
    </message>
    <message>
        <source>Basted with</source>
        <translation>Geheftet mit</translation>
    </message>
    <message>
        <source>%1, %2 apart, %3 zones</source>
        <translation>%1, Abstand %2, %3 Zonen</translation>
    </message>
    <message>
        <source>Table</source>
        <translation>Tisch</translation>
    </message>
    <message>
        <source>Passes</source>
        <translation>Durchg.</translation>
    </message>
    <message>
        <source>Why so</source>
        <translation>Warum so</translation>
    </message>
    <message>
        <source>: %1</source>
        <translation>: %1</translation>
    </message>
    <message>
        <source>chosen</source>
        <translation>gewählt</translation>
    </message>
    <message>
        <source>out of reach</source>
        <translation>zu weit</translation>
    </message>
    <message>
        <source>The ways that were weighed: %1</source>
        <translation>Verglichene Varianten: %1</translation>
    </message>
    <message>
        <source>The ways that were weighed</source>
        <translation>Verglichene Varianten</translation>
    </message>
    <message>
        <source>Lies</source>
        <translation>Lage</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Anfang</translation>
    </message>
    <message>
        <source>Lifts</source>
        <translation>Heben</translation>
    </message>
    <message>
        <source>Reach</source>
        <translation>Reichw.</translation>
    </message>
    <message>
        <source>and %1 more that take longer</source>
        <translation>und %1 weitere, die länger dauern</translation>
    </message>
    <message>
        <source>seated</source>
        <translation>sitzt</translation>
    </message>
    <message>
        <source>closes pins</source>
        <translation>schließt Nadeln</translation>
    </message>
    <message>
        <source>irons</source>
        <translation>bügelt</translation>
    </message>
    <message>
        <source>lifts</source>
        <translation>hebt</translation>
    </message>
    <message>
        <source>People</source>
        <translation>Wer kommt</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Here</source>
        <translation>Da</translation>
    </message>
    <message>
        <source>Can</source>
        <translation>Kann</translation>
    </message>
    <message>
        <source>To know before you start</source>
        <translation>Vorher zu wissen</translation>
    </message>
    <message>
        <source>laid down</source>
        <translation>abgelegt</translation>
    </message>
    <message>
        <source>The passes</source>
        <translation>Die Durchgänge</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Wann</translation>
    </message>
    <message>
        <source>1 pass</source>
        <translation>1 Durchgang</translation>
    </message>
    <message>
        <source>%1 passes</source>
        <translation>%1 Durchgänge</translation>
    </message>
    <message>
        <source>What would help most</source>
        <translation>Was am meisten hilft</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Änderung</translation>
    </message>
    <message>
        <source>Saves</source>
        <translation>Spart</translation>
    </message>
    <message>
        <source>%1 to %2 · %3 · %4</source>
        <translation>%1 bis %2 · %3 · %4</translation>
    </message>
    <message>
        <source> · no order of this work ends before %1</source>
        <translation> · keine Reihenfolge endet vor %1</translation>
    </message>
    <message>
        <source>en</source>
        <extracomment>The language these sheets are written in, as a tag after BCP 47</extracomment>
        <translation>de</translation>
    </message>
    <message>
        <source>head</source>
        <translation>Kopf</translation>
    </message>
    <message>
        <source>from one to the next: %1</source>
        <translation>von einem zum nächsten: %1</translation>
    </message>
    <message>
        <source>%1, turned</source>
        <translation>%1, gedreht</translation>
    </message>
    <message>
        <source>wall</source>
        <translation>Wand</translation>
    </message>
    <message>
        <source>The print service of this computer cannot be reached.</source>
        <translation>Der Druckdienst dieses Rechners ist nicht erreichbar.</translation>
    </message>
    <message>
        <source>No printer called %1 is known on this computer.</source>
        <translation>Auf diesem Rechner gibt es keinen Drucker %1.</translation>
    </message>
    <message>
        <source>The print service says of %1: %2.</source>
        <translation>Der Druckdienst meldet zu %1: %2.</translation>
    </message>
    <message>
        <source>The printer %1 cannot be used from this program.</source>
        <translation>Der Drucker %1 lässt sich von diesem Programm aus nicht nutzen.</translation>
    </message>
    <message>
        <source>%1 has no paper of the size %2.</source>
        <translation>%1 hat kein Papier der Größe %2.</translation>
    </message>
    <message>
        <source>The pages could not be sent to %1.</source>
        <translation>Die Seiten ließen sich nicht an %1 senden.</translation>
    </message>
    <message>
        <source>%1 printed %2 pages.</source>
        <translation>%1 hat %2 Seiten gedruckt.</translation>
    </message>
    <message>
        <source>%1 is stopped%2. The sheets wait there as job %3.</source>
        <translation>%1 ist angehalten%2. Die Blätter warten dort als Auftrag %3.</translation>
    </message>
    <message>
        <source>%1 is printing %2 pages.</source>
        <translation>%1 druckt %2 Seiten.</translation>
    </message>
    <message>
        <source>%1 has the sheets as job %2; they wait their turn.</source>
        <translation>%1 hat die Blätter als Auftrag %2; sie warten.</translation>
    </message>
    <message>
        <source>There is no plan to print yet.</source>
        <translation>Es gibt noch keinen Plan zum Drucken.</translation>
    </message>
    <message>
        <source>Copies: %1 is not accepted; 1 to %2 is.</source>
        <translation>Exemplare: %1 geht nicht; möglich sind 1 bis %2.</translation>
    </message>
    <message>
        <source>%1 takes no jobs%2.</source>
        <translation>%1 nimmt keine Aufträge an%2.</translation>
    </message>
    <message>
        <source>No sheet is chosen.</source>
        <translation>Kein Blatt ist gewählt.</translation>
    </message>
    <message>
        <source>%1 did not take the sheets.</source>
        <translation>%1 hat die Blätter nicht angenommen.</translation>
    </message>
    <message>
        <source>%1 gave up on the sheets, job %2%3.</source>
        <translation>%1 hat die Blätter aufgegeben, Auftrag %2%3.</translation>
    </message>
    <message>
        <source>page %1 of %2</source>
        <translation>Seite %1 von %2</translation>
    </message>
    <message>
        <source>%1: sheets</source>
        <translation>%1: Blätter</translation>
    </message>
    <message>
        <source>The pages could not be drawn.</source>
        <translation>Die Seiten ließen sich nicht zeichnen.</translation>
    </message>
    <message>
        <source>Lay the backing, wrong side up</source>
        <translation>Rückseite auflegen, linke Seite oben</translation>
    </message>
    <message>
        <source>Lay the batting</source>
        <translation>Vlies auflegen</translation>
    </message>
    <message>
        <source>Lay the top, right side up</source>
        <translation>Top auflegen, rechte Seite oben</translation>
    </message>
    <message>
        <source>Move the clamps to all three layers</source>
        <translation>Klemmen auf alle drei Lagen umsetzen</translation>
    </message>
    <message>
        <source>Smooth toward %1</source>
        <translation>Glattstreichen in Richtung %1</translation>
    </message>
    <message>
        <source>Smooth</source>
        <translation>Glattstreichen</translation>
    </message>
    <message>
        <source>Check underneath, and what hangs</source>
        <translation>Unten nachsehen, auch was überhängt</translation>
    </message>
    <message>
        <source>Shift the quilt %1</source>
        <translation>Quilt weiterschieben: %1</translation>
    </message>
    <message>
        <source>Shift the quilt</source>
        <translation>Quilt weiterschieben</translation>
    </message>
    <message>
        <source>Lay the backing</source>
        <translation>Rückseite auflegen</translation>
    </message>
    <message>
        <source>Lay the top</source>
        <translation>Top auflegen</translation>
    </message>
    <message>
        <source>Move the clamps</source>
        <translation>Klemmen umsetzen</translation>
    </message>
    <message>
        <source>Check underneath</source>
        <translation>Unten nachsehen</translation>
    </message>
    <message>
        <source>Fold back batting and top</source>
        <translation>Vlies und Top zurückschlagen</translation>
    </message>
    <message>
        <source>Fold the batting forward</source>
        <translation>Vlies nach vorn klappen</translation>
    </message>
    <message>
        <source>Let it cool: nobody touches it</source>
        <translation>Abkühlen lassen: niemand fasst es an</translation>
    </message>
    <message>
        <source>Turn the quilt over</source>
        <translation>Quilt wenden</translation>
    </message>
    <message>
        <source>Opened from the middle, patted flat, not pulled.</source>
        <translation>Von der Mitte aufgeschlagen, flach geklopft, nicht gezogen.</translation>
    </message>
    <message>
        <source>A straight fold, batting and top together, nothing dragged.</source>
        <translation>Ein gerader Bruch, Vlies und Top zusammen, nichts verzogen.</translation>
    </message>
    <message>
        <source>Rolled down, smoothed from the fold outwards.</source>
        <translation>Abgerollt, vom Bruch nach außen glattgestrichen.</translation>
    </message>
    <message>
        <source>Iron up on its heel, away from the edge.</source>
        <translation>Eisen aufrecht, weg von der Kante.</translation>
    </message>
    <message>
        <source>Lift together on the count; turn it like a page.</source>
        <translation>Gemeinsam auf Kommando heben; wie eine Seite umwenden.</translation>
    </message>
    <message>
        <source>%1 × %2</source>
        <translation>%1 × %2</translation>
    </message>
    <message>
        <source>%1 toward the %2</source>
        <translation>%1 Richtung %2</translation>
    </message>
    <message>
        <source>no shift</source>
        <translation>kein Weiterschieben</translation>
    </message>
    <message>
        <source>centered</source>
        <translation>mittig</translation>
    </message>
    <message>
        <source>best</source>
        <translation>schnellste</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Halt</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Hinweis</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <translation>%1 und %2</translation>
    </message>
    <message>
        <source>all four sides</source>
        <translation>alle vier Seiten</translation>
    </message>
    <message>
        <source>By the blocks: %1, %2.</source>
        <translation>Nach den Blöcken: %1, %2.</translation>
    </message>
    <message>
        <source>in column %1 of %2 from the left</source>
        <translation>in Spalte %1 von %2 von links</translation>
    </message>
    <message>
        <source>between columns %1 and %2 of %3 from the left</source>
        <translation>zwischen Spalte %1 und %2 von %3 von links</translation>
    </message>
    <message>
        <source>in row %1 of %2 from the head</source>
        <translation>in Reihe %1 von %2 vom Kopf</translation>
    </message>
    <message>
        <source>between rows %1 and %2 of %3 from the head</source>
        <translation>zwischen Reihe %1 und %2 von %3 vom Kopf</translation>
    </message>
    <message>
        <source>the middle of the top, %1 from the left and right edges, %2 from the head and foot edges</source>
        <translation>die Mitte des Tops, %1 vom linken und rechten Rand, %2 vom Kopf- und Fußrand</translation>
    </message>
    <message>
        <source>Fold each side edge to edge, or measure, and mark the four middles with a thread. The lines between opposite marks cross at the start.</source>
        <translation>Jede Seite Rand auf Rand falten oder messen und die vier Mitten mit einem Faden markieren. Die Linien zwischen gegenüberliegenden Marken kreuzen sich am Anfang.</translation>
    </message>
    <message>
        <source>Find it</source>
        <translation>Finden</translation>
    </message>
    <message>
        <source>Then</source>
        <translation>Dann</translation>
    </message>
    <message>
        <source>from the start outwards, the half under the arm first; then turn the quilt end for end and quilt the other half.</source>
        <translation>vom Anfang nach außen, zuerst die Hälfte unter dem Arm; dann den Quilt herumdrehen und die andere Hälfte quilten.</translation>
    </message>
    <message>
        <source>under the arm, right of the needle; %1</source>
        <translation>unter dem Arm, rechts der Nadel; %1</translation>
    </message>
    <message>
        <source>on the table, left of the needle; after the turn under the arm; %1</source>
        <translation>auf dem Tisch, links der Nadel; nach dem Drehen unter dem Arm; %1</translation>
    </message>
    <message>
        <source>At the machine</source>
        <translation>An der Maschine</translation>
    </message>
    <message>
        <source>Sizes</source>
        <translation>Maße</translation>
    </message>
    <message>
        <source>top %1, batting %2, backing %3</source>
        <translation>Top %1, Vlies %2, Rückseite %3</translation>
    </message>
    <message>
        <source>Table %1</source>
        <translation>Tisch %1</translation>
    </message>
    <message>
        <source>: %1; reach %2; %3</source>
        <translation>: %1; Reichweite %2; %3</translation>
    </message>
    <message>
        <source>Wrong side up, middles on the marks. Firm, never stretched: a palm pushes no ripple.</source>
        <translation>Linke Seite oben, Mitten auf die Marken. Straff, nie gedehnt: Eine Hand schiebt keine Welle.</translation>
    </message>
    <message>
        <source>Right side up, middles on the marks; batting and backing show on every side.</source>
        <translation>Rechte Seite oben, Mitten auf die Marken; Vlies und Rückseite schauen ringsum hervor.</translation>
    </message>
    <message>
        <source>Never two off at once; no pleat under any.</source>
        <translation>Nie zwei zugleich lösen; keine Falte darunter.</translation>
    </message>
    <message>
        <source>Overhang %1 short or more: a pleat. Turn up a few places: the back is caught, and flat.</source>
        <translation>Überhang %1 zu kurz oder mehr: eine Falte. Einige Stellen umschlagen: Rückseite gefasst und glatt.</translation>
    </message>
    <message>
        <source>Sweep below with a palm, lift together on the count, slide, fold back, hold the backing, return batting, then top.</source>
        <translation>Unten mit der Hand streichen, gemeinsam auf Kommando heben, schieben, zurückschlagen, Rückseite halten, Vlies zurück, dann Top.</translation>
    </message>
    <message>
        <source>beside the middle</source>
        <translation>neben der Mitte</translation>
    </message>
    <message>
        <source>About</source>
        <translation>Etwa</translation>
    </message>
    <message>
        <source>%1 in two, at %2 of its width</source>
        <translation>%1 in zwei Teile, bei %2 der Breite</translation>
    </message>
    <message>
        <source>%1 in two, at %2 of its length</source>
        <translation>%1 in zwei Teile, bei %2 der Länge</translation>
    </message>
    <message>
        <source>Ribbon along a row, from the left edge</source>
        <translation>Band entlang einer Reihe, von der linken Kante</translation>
    </message>
    <message>
        <source>Ribbon along a row, from the head</source>
        <translation>Band entlang einer Reihe, vom Kopf</translation>
    </message>
    <message>
        <source>Odd rows (black): </source>
        <translation>Ungerade Reihen (schwarz): </translation>
    </message>
    <message>
        <source>Even rows (white): </source>
        <translation>Gerade Reihen (weiß): </translation>
    </message>
    <message>
        <source>Ribbon down the side, from the head: where the rows lie</source>
        <translation>Band an der Seite, vom Kopf: Hier liegen die Reihen</translation>
    </message>
    <message>
        <source>Ribbon along the head, from the left: where the rows lie</source>
        <translation>Band am Kopf, von links: Hier liegen die Reihen</translation>
    </message>
    <message>
        <source>Rows: </source>
        <translation>Reihen: </translation>
    </message>
    <message>
        <source>In the order of the numbers, middles first; two people facing each other set one number at the same moment.</source>
        <translation>In der Reihenfolge der Nummern, die Mitten zuerst; zwei, die sich gegenüberstehen, setzen eine Nummer im selben Augenblick.</translation>
    </message>
    <message>
        <source>%1: hangs, its weight helps</source>
        <translation>%1: hängt, das Gewicht hilft</translation>
    </message>
    <message>
        <source>%1: rests on chairs</source>
        <translation>%1: liegt auf Stühlen</translation>
    </message>
    <message>
        <source>%1: rests on the spare table</source>
        <translation>%1: liegt auf dem freien Tisch</translation>
    </message>
    <message>
        <source>from one end</source>
        <translation>von einem Ende aus</translation>
    </message>
    <message>
        <source>%1: 1 clamp.</source>
        <translation>%1: 1 Klammer.</translation>
    </message>
    <message>
        <source>%1: 1 piece of tape.</source>
        <translation>%1: 1 Streifen Klebeband.</translation>
    </message>
    <message>
        <source>%1: %2 clamps a side, about %3 apart.</source>
        <translation>%1: %2 Klammern je Seite, etwa alle %3.</translation>
    </message>
    <message>
        <source>%1: %2 pieces of tape a side, about %3 apart.</source>
        <translation>%1: %2 Streifen Klebeband je Seite, etwa alle %3.</translation>
    </message>
    <message>
        <source>Ribbons</source>
        <translation>Maßbänder</translation>
    </message>
    <message>
        <source>This line is %1.</source>
        <translation>Diese Linie misst %1.</translation>
    </message>
    <message>
        <source>If yours is not, print at 100 %.</source>
        <translation>Misst deine anders, mit 100 % drucken.</translation>
    </message>
    <message>
        <source>%1 · true size</source>
        <translation>%1 · wahre Größe</translation>
    </message>
    <message>
        <source>Lay a ribbon along strip 1, copy one edge, go on at strip 2; or cut the strips out and join them. Left edges: where the rows lie, along the side. Right edges: marks along a row, black for odd rows, white for even ones. Gray: sashing and borders.</source>
        <translation>Ein Band an Streifen 1 anlegen, eine Kante abzeichnen, bei Streifen 2 weitermachen; oder die Streifen ausschneiden und aneinandersetzen. Linke Kanten: wo die Reihen liegen, entlang der Seite. Rechte Kanten: Marken entlang einer Reihe, schwarz für ungerade, weiß für gerade Reihen. Grau: Zwischenstreifen und Ränder.</translation>
    </message>
    <message>
        <source>%1; zone %2 of pass %3</source>
        <translation>%1; Zone %2 in Durchgang %3</translation>
    </message>
    <message>
        <source>Set up the tables, mark their middles, open the pins into bowls</source>
        <translation>Tische aufstellen, ihre Mitten markieren, die Nadeln offen in Schalen legen</translation>
    </message>
    <message>
        <source>Clamp the backing, middles first</source>
        <translation>Die Rückseite festklemmen, die Mitten zuerst</translation>
    </message>
    <message>
        <source>Roll it up for the machine</source>
        <translation>Für die Maschine aufrollen</translation>
    </message>
    <message>
        <source>Set up</source>
        <translation>Aufbauen</translation>
    </message>
    <message>
        <source>Clamp the backing</source>
        <translation>Rückseite festklemmen</translation>
    </message>
    <message>
        <source>Legs locked, joints covered, middles marked; pins counted.</source>
        <translation>Beine eingerastet, Fugen abgedeckt, Mitten markiert; Nadeln gezählt.</translation>
    </message>
    <message>
        <source>Everybody their own stretch, middles first. Firm, never stretched.</source>
        <translation>Alle am eigenen Abschnitt, die Mitten zuerst. Straff, nie gedehnt.</translation>
    </message>
    <message>
        <source>Lay</source>
        <translation>Auflegen</translation>
    </message>
    <message>
        <source>Clamp</source>
        <translation>Klemmen</translation>
    </message>
    <message>
        <source>Hands off</source>
        <translation>Hände weg</translation>
    </message>
    <message>
        <source>Cool</source>
        <translation>Abkühlen</translation>
    </message>
    <message>
        <source>Check</source>
        <translation>Prüfen</translation>
    </message>
    <message>
        <source>Move</source>
        <translation>Schieben</translation>
    </message>
    <message>
        <source>Nobody touches it.</source>
        <translation>Niemand fasst es an.</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Nothing: all of it is there.</source>
        <translation>Nichts: alles ist da.</translation>
    </message>
    <message>
        <source>Bring and cut</source>
        <translation>Mitbringen und zuschneiden</translation>
    </message>
    <message>
        <source>Still to get:</source>
        <translation>Noch zu besorgen:</translation>
    </message>
    <message>
        <source>get</source>
        <translation>fehlt</translation>
    </message>
    <message>
        <source>who</source>
        <translation>wer</translation>
    </message>
    <message>
        <source>a chair for %1</source>
        <translation>ein Stuhl für %1</translation>
    </message>
    <message>
        <source>a bowl for everybody&apos;s pins</source>
        <translation>eine Schale für die Nadeln an jedem Platz</translation>
    </message>
    <message>
        <source>these sheets</source>
        <translation>diese Blätter</translation>
    </message>
    <message>
        <source>a magnet for lost pins*</source>
        <translation>ein Magnet für verlorene Nadeln*</translation>
    </message>
    <message>
        <source>And:</source>
        <translation>Dazu:</translation>
    </message>
    <message>
        <source>%1.</source>
        <translation>%1.</translation>
    </message>
    <message>
        <source>Pins with a tenth to spare. Opened in advance they save the first minutes.</source>
        <translation>Nadeln mit einem Zehntel Reserve. Vorab geöffnet sparen sie die ersten Minuten.</translation>
    </message>
    <message>
        <source>* Keep it away from pacemakers and other implants, and from electronics.</source>
        <translation>* Von Herzschrittmachern, anderen Implantaten und Elektronik fernhalten.</translation>
    </message>
    <message>
        <source>piece %1, %2</source>
        <translation>Stück %1, %2</translation>
    </message>
    <message>
        <source>First sew %1 end to end.</source>
        <translation>Zuerst %1 aneinandernähen.</translation>
    </message>
    <message>
        <source>One piece, no seam.</source>
        <translation>Ein Stück, keine Naht.</translation>
    </message>
    <message>
        <source>Then the panels as drawn.</source>
        <translation>Dann die Bahnen wie gezeichnet.</translation>
    </message>
    <message>
        <source>Cut the backing</source>
        <translation>Rückseite zuschneiden</translation>
    </message>
    <message>
        <source>Fabric</source>
        <translation>Stoff</translation>
    </message>
    <message>
        <source>, %1 between selvages</source>
        <translation>, %1 zwischen den Webkanten</translation>
    </message>
    <message>
        <source>Square the cut ends, cut off the selvages; then in the order of the numbers. Cut away from you, close the cutter when you put it down.</source>
        <translation>Schnittenden begradigen, Webkanten abschneiden; dann der Reihe nach. Vom Körper weg schneiden, den Rollschneider beim Ablegen schließen.</translation>
    </message>
    <message>
        <source>Cut off the selvages; then in the order of the numbers. Cut away from you, close the cutter when you put it down.</source>
        <translation>Webkanten abschneiden; dann der Reihe nach. Vom Körper weg schneiden, den Rollschneider beim Ablegen schließen.</translation>
    </message>
    <message>
        <source>Sew the backing, %1</source>
        <translation>Rückseite nähen, %1</translation>
    </message>
    <message>
        <source>Seams %1, pressed open. The triangles are the middles of the sides: mark them with a thread.</source>
        <translation>Nahtzugabe %1, auseinandergebügelt. Die Dreiecke sind die Mitten der Seiten: mit einem Faden markieren.</translation>
    </message>
    <message>
        <source>Join the batting, %1</source>
        <translation>Vlies zusammensetzen, %1</translation>
    </message>
    <message>
        <source>Trim the batting to %1</source>
        <translation>Vlies zuschneiden auf %1</translation>
    </message>
    <message>
        <source>Cut first:</source>
        <translation>Zuerst schneiden:</translation>
    </message>
    <message>
        <source>%1 from the left, %2 long</source>
        <translation>%1 von links, %2 lang</translation>
    </message>
    <message>
        <source>%1 from the head, %2 long</source>
        <translation>%1 vom Kopf, %2 lang</translation>
    </message>
    <message>
        <source>Let it rest flat overnight. Mark the middle of each side.</source>
        <translation>Über Nacht flach ruhen lassen. Die Mitte jeder Seite markieren.</translation>
    </message>
    <message>
        <source>Your palm over it: no ripple? Is the hang right? If not, smooth again.</source>
        <translation>Handfläche darüber: keine Welle? Stimmt der Überhang? Sonst neu streichen.</translation>
    </message>
    <message>
        <source>Wait. %1 feels for ripples and looks at the hang.</source>
        <translation>Warten. Auf Wellen und Überhang achtet: %1.</translation>
    </message>
    <message>
        <source>Wait.</source>
        <translation>Warten.</translation>
    </message>
    <message>
        <source>Look underneath: no pleat. Turn some up: is the back caught?</source>
        <translation>Darunter sehen: keine Falte. Einige umdrehen: ist die Rückseite gefasst?</translation>
    </message>
    <message>
        <source>Wait. %1 looks underneath.</source>
        <translation>Warten. Darunter sieht nach: %1.</translation>
    </message>
    <message>
        <source>Smooth from the quilt&apos;s middle outward; never pull.</source>
        <translation>Von der Mitte des Quilts nach außen streichen; nie ziehen.</translation>
    </message>
    <message>
        <source>Wait until it lies.</source>
        <translation>Warten, bis es liegt.</translation>
    </message>
    <message>
        <source>Nothing of yours to hold: wait.</source>
        <translation>Hier ist nichts festzuhalten: warten.</translation>
    </message>
    <message>
        <source>Yours:</source>
        <translation>Die eigenen:</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>, each when it is called.</source>
        <translation>, jede auf Ruf.</translation>
    </message>
    <message>
        <source>Yours stand below, each when it is called.</source>
        <translation>Die eigenen stehen unten, jede auf Ruf.</translation>
    </message>
    <message>
        <source>move the clamps to all three layers.</source>
        <translation>die Klemmen auf alle drei Lagen umsetzen.</translation>
    </message>
    <message>
        <source>Tape on the backing only.</source>
        <translation>Klebeband nur auf die Rückseite.</translation>
    </message>
    <message>
        <source>Take off your clamps.</source>
        <translation>Eigene Klemmen ab.</translation>
    </message>
    <message>
        <source>Stay seated, take your clamps off.</source>
        <translation>Sitzen bleiben, die eigenen Klemmen abnehmen.</translation>
    </message>
    <message>
        <source>%1 Step back.</source>
        <translation>%1 Zurücktreten.</translation>
    </message>
    <message>
        <source>Slide it on.</source>
        <translation>Weiterschieben.</translation>
    </message>
    <message>
        <source>Lift with %1 on the count, then back to your place.</source>
        <translation>Mit %1 auf Zählen anheben, dann zurück an den Platz.</translation>
    </message>
    <message>
        <source>Into pass %1 lift with %2 on the count, then back to your place.</source>
        <translation>Vor Durchgang %1 auf Zählen anheben, zusammen mit %2; dann zurück an den Platz.</translation>
    </message>
    <message>
        <source>The plan has no work for you yet. Ask whoever leads: another pair of hands is always wanted when the quilt is moved.</source>
        <translation>Der Plan hat hier noch keine Arbeit. Bei der Leitung fragen: beim Weiterschieben sind weitere Hände immer willkommen.</translation>
    </message>
    <message>
        <source>Find the letter</source>
        <translation>Der Buchstabe</translation>
    </message>
    <message>
        <source>at the table: your place in every pass.</source>
        <translation>am Tisch ist der Platz in jedem Durchgang.</translation>
    </message>
    <message>
        <source>%1 at table %2 for %3</source>
        <translation>%1 an Tisch %2 für %3</translation>
    </message>
    <message>
        <source>%1 for %2</source>
        <translation>%1 für %2</translation>
    </message>
    <message>
        <source>Your places:</source>
        <translation>Die Plätze:</translation>
    </message>
    <message>
        <source>First:</source>
        <translation>Zuerst:</translation>
    </message>
    <message>
        <source>see that the table stands firm and every leg is locked.</source>
        <translation>prüfen, dass der Tisch fest steht und jedes Bein eingerastet ist.</translation>
    </message>
    <message>
        <source>you</source>
        <translation>hier</translation>
    </message>
    <message>
        <source>From where you stand</source>
        <translation>Vom eigenen Platz aus</translation>
    </message>
    <message>
        <source> (pulled across)</source>
        <translation> (herübergezogen)</translation>
    </message>
    <message>
        <source>; holds %1</source>
        <translation>; Halt %1</translation>
    </message>
    <message>
        <source>Break, %1</source>
        <translation>Pause, %1</translation>
    </message>
    <message>
        <source>You come: say hello to whoever leads.</source>
        <translation>Ankunft: bei der Leitung melden.</translation>
    </message>
    <message>
        <source>The times are about right; the call counts.</source>
        <translation>Die Zeiten gelten ungefähr; der Ruf zählt.</translation>
    </message>
    <message>
        <source>Too heavy? Say so and wait for more hands.</source>
        <translation>Zu schwer? Sagen und auf weitere Hände warten.</translation>
    </message>
    <message>
        <source>When you call</source>
        <translation>Bei den eigenen Rufen</translation>
    </message>
    <message>
        <source>When %1 calls</source>
        <translation>Wenn %1 ruft</translation>
    </message>
    <message>
        <source>nobody goes on before the next call</source>
        <translation>vor dem nächsten Ruf macht niemand weiter</translation>
    </message>
    <message>
        <source>Your passes</source>
        <translation>Die Durchgänge</translation>
    </message>
    <message>
        <source>HEAD</source>
        <translation>KOPF</translation>
    </message>
    <message>
        <source>FOOT</source>
        <translation>FUSS</translation>
    </message>
    <message>
        <source>place at table %1</source>
        <translation>Platz an Tisch %1</translation>
    </message>
    <message>
        <source>place at the table</source>
        <translation>Platz am Tisch</translation>
    </message>
    <message>
        <source>Labels</source>
        <translation>Schilder</translation>
    </message>
    <message>
        <source>Cut out; tape the letters where their people stand, from the lead&apos;s round the table; pin head and foot to the quilt.</source>
        <translation>Ausschneiden; die Buchstaben dort ankleben, wo die Leute stehen, von der Leitung aus rund um den Tisch; Kopf und Fuß an den Quilt stecken.</translation>
    </message>
    <message>
        <source>pull across</source>
        <translation>herüberziehen</translation>
    </message>
    <message>
        <source>pass</source>
        <translation>Durchgang</translation>
    </message>
    <message>
        <source>%1 alone.</source>
        <translation>Nur %1.</translation>
    </message>
    <message>
        <source>Break, %1.</source>
        <translation>Pause, %1.</translation>
    </message>
    <message>
        <source>%1 comes</source>
        <translation>%1 kommt</translation>
    </message>
    <message>
        <source> and takes a share of the neighbors&apos; rows.</source>
        <translation> und übernimmt einen Teil der Nachbarreihen.</translation>
    </message>
    <message>
        <source>quilt %1</source>
        <translation>Quilt %1</translation>
    </message>
    <message>
        <source>on the floor</source>
        <translation>auf dem Boden</translation>
    </message>
    <message>
        <source>all finished about</source>
        <translation>alles fertig gegen</translation>
    </message>
    <message>
        <source>finishes about</source>
        <translation>fertig gegen</translation>
    </message>
    <message>
        <source>between %1 and %2</source>
        <translation>zwischen %1 und %2</translation>
    </message>
    <message>
        <source>%1, sits</source>
        <translation>%1, sitzt</translation>
    </message>
    <message>
        <source>Round corners: a clamp on the edge.</source>
        <translation>Runde Ecken: Klemme an der Kante.</translation>
    </message>
    <message>
        <source>One number, one moment; middles first.</source>
        <translation>Gleiche Nummer, gleicher Moment; die Mitten zuerst.</translation>
    </message>
    <message>
        <source>Places and holds</source>
        <translation>Plätze und Halt</translation>
    </message>
    <message>
        <source>What reaches the floor: fold it up and clip it.</source>
        <translation>Was den Boden berührt: hochfalten und klammern.</translation>
    </message>
    <message>
        <source>Check first.</source>
        <translation>Zuerst prüfen.</translation>
    </message>
    <message>
        <source>%1 toward %2</source>
        <translation>%1 zur Seite %2</translation>
    </message>
    <message>
        <source>Smooth from the middle outward.</source>
        <translation>Von der Mitte nach außen streichen.</translation>
    </message>
    <message>
        <source>Smooth to %1.</source>
        <translation>Streichen zu %1.</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>The backing ends on the table all round.</source>
        <translation>Die Rückseite endet rundum auf dem Tisch.</translation>
    </message>
    <message>
        <source>Backing hangs %1.</source>
        <translation>Rückseite hängt über: %1.</translation>
    </message>
    <message>
        <source>%1 in %2 rows, %3.</source>
        <translation>%1 in %2 Reihen, %3.</translation>
    </message>
    <message>
        <source>%1, %2.</source>
        <translation>%1, %2.</translation>
    </message>
    <message>
        <source>Middle on the table&apos;s middle.</source>
        <translation>Mitte auf die Mitte des Tisches.</translation>
    </message>
    <message>
        <source>Off the middle: %1.</source>
        <translation>Neben der Mitte: %1.</translation>
    </message>
    <message>
        <source>Pull it across %1. It stays held; nothing is laid.</source>
        <translation>Herüberziehen: %1. Es bleibt festgehalten; nichts wird aufgelegt.</translation>
    </message>
    <message>
        <source>It stays where it lies.</source>
        <translation>Es bleibt liegen.</translation>
    </message>
    <message>
        <source>Move it %1.</source>
        <translation>Weiterschieben: %1.</translation>
    </message>
    <message>
        <source>Backing wrong side up.</source>
        <translation>Rückseite links nach oben.</translation>
    </message>
    <message>
        <source>%1 moves it.</source>
        <translation>Es schiebt: %1.</translation>
    </message>
    <message>
        <source>%1 lift.</source>
        <translation>Es heben: %1.</translation>
    </message>
    <message>
        <source>Hands to lift: %1.</source>
        <translation>Zum Heben nötig: %1.</translation>
    </message>
    <message>
        <source>%1, and tie it</source>
        <translation>%1, und zubinden</translation>
    </message>
    <message>
        <source>%1; %2 clips</source>
        <translation>%1; %2 Klammern</translation>
    </message>
    <message>
        <source>%1; %2 clips of %3</source>
        <translation>%1; %2 Klammern für %3</translation>
    </message>
    <message>
        <source>Set up.</source>
        <translation>Aufbauen.</translation>
    </message>
    <message>
        <source>Legs locked.</source>
        <translation>Tischbeine eingerastet.</translation>
    </message>
    <message>
        <source>A towel over the join.</source>
        <translation>Ein Handtuch über die Fuge.</translation>
    </message>
    <message>
        <source>Swept floor, pads for knees.</source>
        <translation>Boden gefegt, Polster für die Knie.</translation>
    </message>
    <message>
        <source>A letter at every place, a mark at the middle of every side.</source>
        <translation>Ein Buchstabe an jeden Platz, eine Marke an die Mitte jeder Seite.</translation>
    </message>
    <message>
        <source>The ribbon with the rows along the edge.</source>
        <translation>Das Band mit den Reihen an die Kante.</translation>
    </message>
    <message>
        <source>Open the pins into bowls:</source>
        <translation>Sicherheitsnadeln geöffnet in Schalen:</translation>
    </message>
    <message>
        <source>Roll up for quilting.</source>
        <translation>Zum Quilten aufrollen.</translation>
    </message>
    <message>
        <source>Lift together on the count, knees bent.</source>
        <translation>Zusammen auf Zählen heben, aus den Knien.</translation>
    </message>
    <message>
        <source>Nothing on the floor where people walk; children and animals elsewhere.</source>
        <translation>Nichts auf den Laufwegen; Kinder und Tiere anderswo.</translation>
    </message>
    <message>
        <source>Sweep with a magnet at the end, away from pacemakers and other implants.</source>
        <translation>Am Ende mit einem Magneten absuchen, fern von Herzschrittmachern und anderen Implantaten.</translation>
    </message>
    <message>
        <source>Labels of products, local rules and professional advice come first.</source>
        <translation>Etiketten der Produkte, örtliche Regeln und fachlicher Rat gehen vor.</translation>
    </message>
    <message>
        <source>Take care.</source>
        <translation>Vorsicht.</translation>
    </message>
    <message>
        <source>Record</source>
        <translation>Protokoll</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Warum</translation>
    </message>
    <message>
        <source>Ways that were weighed</source>
        <translation>Verglichene Varianten</translation>
    </message>
    <message>
        <source>%1 (sits)</source>
        <translation>%1 (sitzt)</translation>
    </message>
    <message>
        <source>the %1</source>
        <translation>%1</translation>
    </message>
    <message>
        <source>%1 × %2 by %3</source>
        <translation>%1 × %2, %3 Personen</translation>
    </message>
    <message>
        <source>%1 yd</source>
        <translation>%1 yd</translation>
    </message>
    <message>
        <source>%1 m</source>
        <translation>%1 m</translation>
    </message>
    <message>
        <source>Backing; once it is clamped batting and top.</source>
        <translation>Rückseite; geklammert, dann Vlies und Top.</translation>
    </message>
    <message>
        <source>The backing; then all three layers.</source>
        <translation>Die Rückseite; dann alle drei Lagen.</translation>
    </message>
    <message>
        <source>A palm glides? The hang is right?</source>
        <translation>Gleitet die Hand? Stimmt der Überhang?</translation>
    </message>
    <message>
        <source>Clamps off. Lift, slide.</source>
        <translation>Klemmen ab. Anheben, schieben.</translation>
    </message>
    <message>
        <source>From pass 2 on, top and batting are folded back first.</source>
        <translation>Ab Durchgang 2 erst Top und Vlies zurückschlagen.</translation>
    </message>
    <message>
        <source>You sit: nothing is carried over your head.</source>
        <translation>Im Sitzen: Nichts wird über den Kopf getragen.</translation>
    </message>
    <message>
        <source>First the backing; once all lie,</source>
        <translation>Erst die Rückseite; liegen alle,</translation>
    </message>
    <message>
        <source>%1 alike</source>
        <translation>%1 ebenso</translation>
    </message>
    <message>
        <source>Hangs %1 less than said: look for a pleat underneath.</source>
        <translation>Hängt %1 kürzer als gesagt: unten nach einer Falte suchen.</translation>
    </message>
    <message>
        <source>%1: %2 folded on a support</source>
        <translation>%1: %2 gefaltet auf einer Stütze</translation>
    </message>
    <message>
        <source>%1: roll up %2, %3 thick</source>
        <translation>%1: %2 aufrollen, %3 dick</translation>
    </message>
    <message>
        <source>%1 stay in; the others go back into the box.</source>
        <translation>%1 bleiben im Quilt; die anderen in die Dose.</translation>
    </message>
    <message>
        <source>chairs under what hangs</source>
        <translation>Stühle unter das, was hängt</translation>
    </message>
    <message>
        <source>a magnet for lost needles*</source>
        <translation>ein Magnet für verlorene Nähnadeln*</translation>
    </message>
    <message>
        <source>What hangs at your side rests on chairs, not on you.</source>
        <translation>Was am eigenen Platz hängt, liegt auf Stühlen, nicht auf den Knien.</translation>
    </message>
    <message>
        <source>Chairs under what hangs at your side.</source>
        <translation>Stühle unter das, was am eigenen Platz hängt.</translation>
    </message>
    <message>
        <source>Yours, where nobody stands (%1):</source>
        <translation>Die eigenen, wo niemand steht (%1):</translation>
    </message>
    <message>
        <source>; where nobody stands (%1):</source>
        <translation>; wo niemand steht (%1):</translation>
    </message>
    <message>
        <source>Clamps off, then roll it up from both sides and clip it.</source>
        <translation>Klemmen ab, dann von beiden Seiten aufrollen und klammern.</translation>
    </message>
    <message>
        <source>Clamps off, then roll it up from both sides with %1.</source>
        <translation>Klemmen ab, dann mit %1 von beiden Seiten aufrollen.</translation>
    </message>
    <message>
        <source>Clamps off; it is rolled up.</source>
        <translation>Klemmen ab; dann wird aufgerollt.</translation>
    </message>
    <message>
        <source>Clamps off. Rolling up: %1.</source>
        <translation>Klemmen ab. Aufrollen: %1.</translation>
    </message>
    <message>
        <source>After the last Check:</source>
        <translation>Nach dem letzten Prüfen:</translation>
    </message>
    <message>
        <source>Left-over pins back into the box.</source>
        <translation>Übrige Nadeln zurück in die Schachtel.</translation>
    </message>
    <message>
        <source>marks stand on the ribbon, from the left edge</source>
        <translation>Marken auf dem Band, vom linken Rand</translation>
    </message>
    <message>
        <source>marks stand on the ribbon, from the head</source>
        <translation>Marken auf dem Band, vom Kopf</translation>
    </message>
    <message>
        <source>marks stand on the ribbon, from the left edge; black: odd rows, white: even</source>
        <translation>Marken auf dem Band, ab linkem Rand; schwarz: ungerade, weiß: gerade</translation>
    </message>
    <message>
        <source>marks stand on the ribbon, from the head; black: odd rows, white: even</source>
        <translation>Marken auf dem Band, ab Kopf; schwarz: ungerade, weiß: gerade</translation>
    </message>
    <message>
        <source>%1 leaves, nothing half done.</source>
        <translation>%1 geht, nichts halb fertig.</translation>
    </message>
    <message>
        <source>%1 leaves, nothing half done; %2 take over.</source>
        <translation>%1 geht, nichts halb fertig; %2 übernehmen.</translation>
    </message>
    <message>
        <source>every time is about right</source>
        <translation>alle Zeiten ungefähr</translation>
    </message>
    <message>
        <source>Where nobody stands: %1.</source>
        <translation>Wo niemand steht: %1.</translation>
    </message>
    <message>
        <source>Chairs carry what would reach the floor, not knees.</source>
        <translation>Stühle tragen, was den Boden erreicht; nicht die Knie.</translation>
    </message>
    <message>
        <source>chairs</source>
        <translation>Stühle</translation>
    </message>
    <message>
        <source>spare table</source>
        <translation>freier Tisch</translation>
    </message>
    <message>
        <source>Hangs %1.</source>
        <translation>Hängt %1.</translation>
    </message>
    <message>
        <source>%1 rolls it up:</source>
        <translation>%1 rollt auf:</translation>
    </message>
    <message>
        <source>%1 roll it up:</source>
        <translation>%1 rollen auf:</translation>
    </message>
    <message>
        <source>Clamps off.</source>
        <translation>Klemmen ab.</translation>
    </message>
    <message>
        <source>Nobody climbs on a table.</source>
        <translation>Niemand steigt auf einen Tisch.</translation>
    </message>
    <message>
        <source>Who does what</source>
        <translation>Wer macht was</translation>
    </message>
    <message>
        <source>All rows: </source>
        <translation>Alle Reihen: </translation>
    </message>
    <message>
        <source>Set up the tables, mark their middles</source>
        <translation>Tische aufstellen, ihre Mitten markieren</translation>
    </message>
    <message>
        <source>Legs locked, joints covered, middles marked.</source>
        <translation>Tischbeine verriegelt, Stöße abgedeckt, Mitten markiert.</translation>
    </message>
    <message>
        <source>From the basted part outwards, no ripple.</source>
        <translation>Vom Gehefteten nach außen, keine Welle.</translation>
    </message>
    <message>
        <source>Top, batting, backing: the three layers, from above. Hang: what reaches over the table&apos;s edge. Pleat: a fold underneath; whoever finds one says so, and nobody goes on before it is out.</source>
        <translation>Top, Vlies, Rückseite: die drei Lagen, von oben. Überhang: was über die Tischkante reicht. Falte: Stoff, der darunter doppelt liegt; wer eine findet, sagt es, und vorher macht niemand weiter.</translation>
    </message>
    <message>
        <source>Wait</source>
        <translation>Warten</translation>
    </message>
    <message>
        <source>Nobody touches it, for as long as the can says.</source>
        <translation>Niemand fasst es an, so lange, wie es auf der Dose steht.</translation>
    </message>
    <message>
        <source>Wait. %1 feel for ripples and look at the hang.</source>
        <translation>Warten. Auf Wellen und Überhang achten: %1.</translation>
    </message>
    <message>
        <source>Wait. %1 look underneath.</source>
        <translation>Warten. Darunter sehen nach: %1.</translation>
    </message>
    <message>
        <source>Yours: none</source>
        <translation>Die eigenen: keine</translation>
    </message>
    <message>
        <source> (%1: %2)</source>
        <translation> (%1: %2)</translation>
    </message>
    <message>
        <source>: nothing of yours</source>
        <translation>: hier nichts zu tun</translation>
    </message>
    <message>
        <source>%1 leaves, nothing half done; %2 takes over.</source>
        <translation>%1 geht, nichts halb fertig; %2 übernimmt.</translation>
    </message>
    <message>
        <source>Square: %1 of tape, the backing only.</source>
        <translation>Eckig: %1 Klebeband, nur die Rückseite.</translation>
    </message>
    <message>
        <source>Leave it to set: nobody touches it</source>
        <translation>Abbinden lassen: niemand fasst es an</translation>
    </message>
    <message>
        <source>As long as the can says; cans closed, hands washed.</source>
        <translation>So lange, wie es auf der Dose steht; Dosen zu, Hände gewaschen.</translation>
    </message>
    <message>
        <source>How many</source>
        <translation>Wie viele</translation>
    </message>
    <message>
        <source>Neither printers nor sheets in gray can be used, because %1 is missing. Install Bastewright again, or save the sheets in color.</source>
        <translation>Weder Drucker noch graue Blätter gehen, weil %1 fehlt. Bastewright noch einmal installieren oder die Blätter farbig speichern.</translation>
    </message>
    <message>
        <source>Neither printers nor sheets in gray can be used, because %1 cannot be opened (%2). Install Bastewright again, or save the sheets in color.</source>
        <translation>Weder Drucker noch graue Blätter gehen, weil sich %1 nicht öffnen lässt (%2). Bastewright noch einmal installieren oder die Blätter farbig speichern.</translation>
    </message>
    <message>
        <source>Neither printers nor sheets in gray can be used, because %1 is of another version. Install Bastewright again, or save the sheets in color.</source>
        <translation>Weder Drucker noch graue Blätter gehen, weil %1 zu einer anderen Version gehört. Bastewright noch einmal installieren oder die Blätter farbig speichern.</translation>
    </message>
    <message>
        <source>Pass %1:</source>
        <translation>Durchgang %1:</translation>
    </message>
    <message>
        <source>Passes %1:</source>
        <translation>Durchgänge %1:</translation>
    </message>
    <message>
        <source>Then:</source>
        <translation>Dann:</translation>
    </message>
    <message>
        <source>%1 calls a pass. Nobody goes on before you call.</source>
        <translation>%1 Rufe je Durchgang. Vor deinem Ruf macht niemand weiter.</translation>
    </message>
    <message>
        <source>Pass %1: %2 calls. Nobody goes on before you call.</source>
        <translation>Durchgang %1: %2 Rufe. Vor deinem Ruf macht niemand weiter.</translation>
    </message>
    <message>
        <source>Passes %1: %2 calls each. Nobody goes on before you call.</source>
        <translation>Durchgänge %1: je %2 Rufe. Vor deinem Ruf macht niemand weiter.</translation>
    </message>
</context>
<context>
    <name>SheetsWriter</name>
    <message>
        <source>Writing the sheets …</source>
        <translation>Blätter werden geschrieben …</translation>
    </message>
    <message>
        <source>Written: %1</source>
        <translation>Geschrieben: %1</translation>
    </message>
    <message>
        <source>The sheets and the cards are in %1</source>
        <translation>Blätter und Karten liegen in %1</translation>
    </message>
    <message>
        <source>Writing the files …</source>
        <translation>Dateien werden geschrieben …</translation>
    </message>
    <message>
        <source>Plan, lists, calendar and pictures: %1 files in %2</source>
        <translation>Plan, Listen, Kalender und Bilder: %1 Dateien in %2</translation>
    </message>
    <message>
        <source>Sending the sheets to %1 …</source>
        <translation>Blätter gehen an %1 …</translation>
    </message>
    <message>
        <source>Looking for printers …</source>
        <translation>Drucker werden gesucht …</translation>
    </message>
    <message>
        <source>This computer knows no printer. Save the sheets and print them elsewhere.</source>
        <translation>Dieser Rechner kennt keinen Drucker. Die Blätter sichern und anderswo drucken.</translation>
    </message>
    <message>
        <source>Wait until these sheets are done.</source>
        <translation>Warten, bis diese Blätter fertig sind.</translation>
    </message>
    <message>
        <source>Choose at least one kind of sheet.</source>
        <translation>Mindestens eine Art von Blättern wählen.</translation>
    </message>
    <message>
        <source>There is no plan to print yet.</source>
        <translation>Es gibt noch keinen Plan zum Drucken.</translation>
    </message>
    <message>
        <source>No printer is known. Save the sheets as PDF and print them elsewhere.</source>
        <translation>Kein Drucker bekannt. Die Blätter als PDF sichern und anderswo drucken.</translation>
    </message>
</context>
<context>
    <name>ShelfModel</name>
    <message>
        <source>Quilt without a name</source>
        <translation>Quilt ohne Namen</translation>
    </message>
    <message>
        <source>%1 quilts, the first %2</source>
        <translation>%1 Quilts, der erste %2</translation>
    </message>
    <message>
        <source>%1 cannot be opened: %2</source>
        <translation>%1 lässt sich nicht öffnen: %2</translation>
    </message>
    <message>
        <source>it is empty.</source>
        <translation>Die Datei ist leer.</translation>
    </message>
    <message>
        <source>New quilt</source>
        <translation>Neuer Quilt</translation>
    </message>
    <message>
        <source>A new quilt</source>
        <translation>Neuer Quilt</translation>
    </message>
    <message>
        <source>The example</source>
        <translation>Das Beispiel</translation>
    </message>
    <message>
        <source>%1 cannot be opened.</source>
        <translation>%1 lässt sich nicht öffnen.</translation>
    </message>
    <message>
        <source>The quilt</source>
        <translation>Der Quilt</translation>
    </message>
    <message>
        <source>%1 (copy)</source>
        <translation>%1 (Kopie)</translation>
    </message>
    <message>
        <source>The copy</source>
        <translation>Die Kopie</translation>
    </message>
    <message>
        <source>%1 could not be written: %2.</source>
        <translation>%1 ließ sich nicht schreiben: %2.</translation>
    </message>
    <message>
        <source>In session</source>
        <translation>Am Tisch</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fertig</translation>
    </message>
    <message>
        <source>Planned</source>
        <translation>Geplant</translation>
    </message>
    <message>
        <source>New</source>
        <translation>Neu</translation>
    </message>
    <message>
        <source>This device has no program for such files; %1 was written.</source>
        <translation>Dieses Gerät hat kein Programm für solche Dateien; %1 wurde geschrieben.</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>%1 quilts</source>
        <translation>%1 Quilts</translation>
    </message>
</context>
<context>
    <name>ShelfScreen</name>
    <message>
        <source>Your quilts</source>
        <translation>Quilts</translation>
    </message>
    <message>
        <source>Examples</source>
        <translation>Beispiele</translation>
    </message>
    <message>
        <source>Open a file</source>
        <translation>Datei öffnen</translation>
    </message>
    <message>
        <source>Removed: %1</source>
        <translation>Entfernt: %1</translation>
    </message>
    <message>
        <source>Bring it back</source>
        <translation>Zurückholen</translation>
    </message>
    <message>
        <source>Look at an example</source>
        <translation>Ein Beispiel ansehen</translation>
    </message>
    <message>
        <source>Examples from Saltmarsh Hall</source>
        <translation>Beispiele aus Saltmarsh Hall</translation>
    </message>
    <message>
        <source>Text and display</source>
        <translation>Schrift und Anzeige</translation>
    </message>
    <message>
        <source>Plan a new quilt</source>
        <translation>Einen neuen Quilt planen</translation>
    </message>
    <message>
        <source>What is kept</source>
        <translation>Was behalten wird</translation>
    </message>
    <message>
        <source>No quilts yet. Plan a new one in six questions, or look at an example first.</source>
        <translation>Noch keine Quilts. Mit sechs Fragen einen neuen planen, oder erst ein Beispiel ansehen.</translation>
    </message>
</context>
<context>
    <name>SidePanel</name>
    <message>
        <source>Who does what</source>
        <translation>Wer macht was</translation>
    </message>
    <message>
        <source>Basting</source>
        <translation>Heften</translation>
    </message>
    <message>
        <source>Layers</source>
        <translation>Lagen</translation>
    </message>
    <message>
        <source>People</source>
        <translation>Wer kommt</translation>
    </message>
    <message>
        <source>Back to the overview</source>
        <translation>Zurück zur Übersicht</translation>
    </message>
    <message>
        <source>Check first</source>
        <translation>Erst prüfen</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Warum</translation>
    </message>
    <message>
        <source>Other ways</source>
        <translation>Andere Varianten</translation>
    </message>
    <message>
        <source>What to bring</source>
        <translation>Mitbringen</translation>
    </message>
    <message>
        <source>Your quilt</source>
        <translation>Der Quilt</translation>
    </message>
    <message>
        <source>Room</source>
        <translation>Raum</translation>
    </message>
    <message>
        <source>What we have</source>
        <translation>Vorhanden</translation>
    </message>
</context>
<context>
    <name>SidesToCompare</name>
    <message>
        <source>side</source>
        <translation>Seite</translation>
    </message>
    <message>
        <source>over the edge</source>
        <translation>über die Kante</translation>
    </message>
    <message>
        <source>backing overage</source>
        <translation>Überstand der Rückseite</translation>
    </message>
    <message>
        <source>batting overage</source>
        <translation>Überstand des Vlieses</translation>
    </message>
</context>
<context>
    <name>SignPress</name>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
</context>
<context>
    <name>SpareList</name>
    <message>
        <source>%1: too small</source>
        <translation>%1: zu klein</translation>
    </message>
    <message>
        <source>%1: check first</source>
        <translation>%1: zuerst prüfen</translation>
    </message>
    <message>
        <source>%1: large enough</source>
        <translation>%1: groß genug</translation>
    </message>
</context>
<context>
    <name>StepBar</name>
    <message>
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>How: %1</source>
        <translation>Wie: %1</translation>
    </message>
    <message>
        <source>Count pins</source>
        <translation>Nadeln zählen</translation>
    </message>
</context>
<context>
    <name>StepSheet</name>
    <message>
        <source>Now</source>
        <translation>Jetzt</translation>
    </message>
    <message>
        <source>After</source>
        <translation>Danach</translation>
    </message>
    <message>
        <source>%1  %2</source>
        <translation>%1  %2</translation>
    </message>
    <message>
        <source>Answer all of them first</source>
        <translation>Erst alle beantworten</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fertig</translation>
    </message>
    <message>
        <source>Where? What is tapped has to be closed once more.</source>
        <translation>Wo? Was angetippt wird, muss noch einmal geschlossen werden.</translation>
    </message>
    <message>
        <source>%1 has to be done again</source>
        <translation>%1 muss noch einmal gemacht werden</translation>
    </message>
</context>
<context>
    <name>StepWords</name>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Fold %1 of the %2 side in pleats on a support</source>
        <translation>%1 der Seite %2 in Falten auf eine Stütze legen</translation>
    </message>
    <message>
        <source>Roll %1 of the %2 side: a roll %3 thick, %4 clips that hold %5</source>
        <translation>%1 der Seite %2 aufrollen: Rolle %3 dick, %4 Clips für %5</translation>
    </message>
    <message>
        <source>Roll %1 of the %2 side: a roll %3 thick, tied, as no clip we have holds it</source>
        <translation>%1 der Seite %2 aufrollen: Rolle %3 dick, gebunden, weil kein Clip passt</translation>
    </message>
    <message>
        <source>Middle on the middle of the first area: %1 from the left, %2 from the head</source>
        <translation>Mitte auf die Mitte der ersten Fläche: %1 von links, %2 vom Kopf</translation>
    </message>
    <message>
        <source>Toward: %1</source>
        <translation>Richtung: %1</translation>
    </message>
    <message>
        <source>On the floor: kneel on a pad, and change places often</source>
        <translation>Auf dem Boden: auf einem Kissen knien und oft den Platz wechseln</translation>
    </message>
    <message>
        <source>lies</source>
        <translation>liegt auf</translation>
    </message>
    <message>
        <source>Is it flat underneath, and caught all over?</source>
        <translation>Ist es unten glatt und überall gefasst?</translation>
    </message>
    <message>
        <source>Four sides as planned, none %1 short?</source>
        <translation>Vier Seiten wie geplant, keiner fehlen %1?</translation>
    </message>
    <message>
        <source>Smooth again from the basted part outwards; open what stands in the way and close it afterwards.</source>
        <translation>Vom Gehefteten nach außen neu glattstreichen; öffnen, was im Weg ist, und danach schließen.</translation>
    </message>
    <message>
        <source>Open the places round the fold or gap, draw the backing flat from below, and baste them again.</source>
        <translation>Die Stellen um Falte oder Lücke öffnen, die Rückseite von unten glattziehen und neu heften.</translation>
    </message>
    <message>
        <source>Clamps: %1</source>
        <translation>Klammern: %1</translation>
    </message>
    <message>
        <source>Tape: %1</source>
        <translation>Klebeband: %1</translation>
    </message>
    <message>
        <source>%1; about %2 apart, middles first</source>
        <translation>%1; etwa alle %2, die Mitten zuerst</translation>
    </message>
    <message>
        <source>Rest the %1 side on chairs</source>
        <translation>Seite %1 auf Stühle legen</translation>
    </message>
    <message>
        <source>Rest the %1 side on the spare table</source>
        <translation>Seite %1 auf den freien Tisch legen</translation>
    </message>
    <message>
        <source>Nothing is laid: the quilt, held, is only pulled across</source>
        <translation>Nichts wird aufgelegt: Der festgehaltene Quilt wird nur hinübergezogen</translation>
    </message>
    <message>
        <source>Check that the legs of the tables are locked. Nobody climbs on a table.</source>
        <translation>Prüfen, ob die Tischbeine eingerastet sind. Niemand steigt auf einen Tisch.</translation>
    </message>
    <message>
        <source>Children and pets stay out, nobody walks barefoot.</source>
        <translation>Kinder und Haustiere bleiben draußen, niemand geht barfuß.</translation>
    </message>
    <message>
        <source>Lift together, on one person&apos;s count, and only as much as is easy.</source>
        <translation>Gemeinsam heben, auf das Zählen einer Person, und nur so viel, wie leicht geht.</translation>
    </message>
    <message>
        <source>Cutters closed when they are put down.</source>
        <translation>Schneider werden zugeklappt abgelegt.</translation>
    </message>
    <message>
        <source>Labels of products, the house&apos;s rules and a doctor&apos;s advice come first.</source>
        <translation>Etiketten, Hausregeln und ärztlicher Rat gehen vor.</translation>
    </message>
    <message>
        <source>Has everybody heard this?</source>
        <translation>Haben das alle gehört?</translation>
    </message>
    <message>
        <source>Does your palm glide over it without pushing up a ripple?</source>
        <translation>Gleitet die Hand darüber, ohne eine Falte vor sich herzuschieben?</translation>
    </message>
    <message>
        <source>Read it out before anybody begins.</source>
        <translation>Vorlesen, bevor jemand anfängt.</translation>
    </message>
    <message>
        <source>%1 people move it, about %2</source>
        <translation>%1 Personen schieben, etwa %2</translation>
    </message>
    <message>
        <source>There is a pleat, or a layer has crept: feel underneath from the side that hangs short toward the middle, undo the basting there, pull that layer flat, and baste it again.</source>
        <translation>Da ist eine Falte, oder eine Lage ist gewandert: von der Seite, die zu kurz hängt, zur Mitte hin unten fühlen, dort die Heftung lösen, die Lage glatt ziehen und neu heften.</translation>
    </message>
</context>
<context>
    <name>Stitches</name>
    <message>
        <source>%1 percent done</source>
        <translation>%1 Prozent fertig</translation>
    </message>
</context>
<context>
    <name>TableBoard</name>
    <message>
        <source>Pass %1 of %2</source>
        <translation>Durchgang %1 von %2</translation>
    </message>
    <message>
        <source>The session has ended</source>
        <translation>Das Treffen ist beendet</translation>
    </message>
    <message>
        <source>End the session</source>
        <translation>Treffen beenden</translation>
    </message>
    <message>
        <source>The last pass is finished</source>
        <translation>Der letzte Durchgang ist fertig</translation>
    </message>
    <message>
        <source>Pass %1 is finished: start pass %2</source>
        <translation>Durchgang %1 ist fertig: Durchgang %2 beginnen</translation>
    </message>
    <message>
        <source>Pass %1 is finished</source>
        <translation>Durchgang %1 ist fertig</translation>
    </message>
    <message>
        <source>All is done</source>
        <translation>Alles ist fertig</translation>
    </message>
</context>
<context>
    <name>TableHeader</name>
    <message>
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>To the plan</source>
        <translation>Zum Plan</translation>
    </message>
    <message>
        <source>1 hint</source>
        <translation>1 Hinweis</translation>
    </message>
    <message>
        <source>%1 hints</source>
        <translation>%1 Hinweise</translation>
    </message>
    <message>
        <source>On phones: %1</source>
        <translation>Am Handy: %1</translation>
    </message>
    <message>
        <source>Turn the picture of the table</source>
        <translation>Tischbild drehen</translation>
    </message>
    <message>
        <source>Undo: %1</source>
        <translation>Zurück: %1</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Mehr</translation>
    </message>
    <message>
        <source>%1 · finish %2</source>
        <translation>%1 · Ende %2</translation>
    </message>
</context>
<context>
    <name>TableNotice</name>
    <message>
        <source>Close the message</source>
        <translation>Meldung schließen</translation>
    </message>
    <message>
        <source>Done otherwise</source>
        <translation>Anders gemacht</translation>
    </message>
</context>
<context>
    <name>TakersSheet</name>
    <message>
        <source>%1 goes to</source>
        <translation>%1 geht an</translation>
    </message>
    <message>
        <source>%1 has it</source>
        <translation>%1 hat sie</translation>
    </message>
</context>
<context>
    <name>TopDesk</name>
    <message>
        <source>%1 from the left, %2 from the head</source>
        <translation>%1 von links, %2 vom Kopf</translation>
    </message>
    <message>
        <source>From %1. Tap where the seam ends.</source>
        <translation>Von %1. Antippen, wo die Naht endet.</translation>
    </message>
    <message>
        <source>Forgotten: a seam needs two places.</source>
        <translation>Verworfen: Eine Naht braucht zwei Stellen.</translation>
    </message>
    <message>
        <source>A seam from %1 to %2.</source>
        <translation>Eine Naht von %1 bis %2.</translation>
    </message>
    <message>
        <source>a seam</source>
        <translation>eine Naht</translation>
    </message>
    <message>
        <source>without the last seam</source>
        <translation>ohne die letzte Naht</translation>
    </message>
    <message>
        <source>The foot lies %1 too far to the right.</source>
        <translation>Der Fuß liegt %1 zu weit rechts.</translation>
    </message>
    <message>
        <source>The foot lies %1 too far to the left.</source>
        <translation>Der Fuß liegt %1 zu weit links.</translation>
    </message>
    <message>
        <source>The widths differ by %1.</source>
        <translation>Die Breiten weichen um %1 ab.</translation>
    </message>
    <message>
        <source>The lengths differ by %1.</source>
        <translation>Die Längen weichen um %1 ab.</translation>
    </message>
    <message>
        <source>More than %1 off: ease or trim it before it is layered.</source>
        <translation>Mehr als %1 daneben: vor dem Schichten einhalten oder beschneiden.</translation>
    </message>
    <message>
        <source>Measure across at the head, the middle and the foot, and down at the left, the middle and the right: edges stretch, middles do not. Every layer is cut for the largest reading, so that none ends short. Equal diagonals mean square corners.</source>
        <translation>Quer an Kopf, Mitte und Fuß messen und längs an links, Mitte und rechts: Ränder dehnen sich, Mitten nicht. Jede Lage wird nach der größten Messung zugeschnitten, damit keine zu kurz ist. Gleiche Diagonalen bedeuten rechte Winkel.</translation>
    </message>
    <message>
        <source>The blocks alone need %1 across, and the top measures %2.</source>
        <translation>Die Blöcke allein brauchen %1 in der Breite, das Top misst %2.</translation>
    </message>
    <message>
        <source>The blocks alone need %1 from head to foot, and the top measures %2.</source>
        <translation>Die Blöcke allein brauchen %1 vom Kopf zum Fuß, das Top misst %2.</translation>
    </message>
    <message>
        <source>The blocks and their borders make %1, the top measures %2: the borders come out %3 at the sides and %4 at head and foot.</source>
        <translation>Blöcke und Rand ergeben %1, das Top misst %2: Der Rand wird seitlich %3 und an Kopf und Fuß %4 breit.</translation>
    </message>
    <message>
        <source>%1, not %2</source>
        <translation>%1 statt %2</translation>
    </message>
    <message>
        <source>borders by the measured size</source>
        <translation>Rand nach dem gemessenen Maß</translation>
    </message>
    <message>
        <source>size by the blocks</source>
        <translation>Größe nach den Blöcken</translation>
    </message>
    <message>
        <source>Square enough</source>
        <translation>Rechtwinklig genug</translation>
    </message>
    <message>
        <source>Not square enough</source>
        <translation>Nicht rechtwinklig genug</translation>
    </message>
    <message>
        <source>Up to %1 eases flat.</source>
        <translation>Bis %1 lässt sich einhalten.</translation>
    </message>
</context>
<context>
    <name>TopView</name>
    <message>
        <source>Draw a seam</source>
        <translation>Naht zeichnen</translation>
    </message>
    <message>
        <source>Without the last seam</source>
        <translation>Ohne die letzte Naht</translation>
    </message>
    <message>
        <source>Is it square?</source>
        <translation>Ist es rechtwinklig?</translation>
    </message>
    <message>
        <source>One reading each way says nothing of the corners. Add readings, and measure the diagonals.</source>
        <translation>Je eine Messung sagt nichts über die Ecken. Messungen hinzufügen und die Diagonalen messen.</translation>
    </message>
    <message>
        <source>Tap where a seam begins, then where it ends.</source>
        <translation>Antippen, wo eine Naht beginnt, dann, wo sie endet.</translation>
    </message>
    <message>
        <source>The top, %1</source>
        <translation>Das Top, %1</translation>
    </message>
    <message>
        <source>What is off is drawn %1 times as large; dashed: square. %2</source>
        <translation>Abweichungen sind %1-fach gezeichnet; gestrichelt: rechtwinklig. %2</translation>
    </message>
    <message>
        <source>Keep the measured size</source>
        <translation>Beim gemessenen Maß bleiben</translation>
    </message>
    <message>
        <source>Use the size the blocks make</source>
        <translation>Größe nehmen, die die Blöcke ergeben</translation>
    </message>
    <message>
        <source>Photo and fabrics</source>
        <translation>Foto und Stoffe</translation>
    </message>
</context>
<context>
    <name>Tour</name>
    <message>
        <source>A seam has opened at the edge: mend it before quilting.</source>
        <translation>Am Rand ist eine Naht offen: vor dem Quilten flicken.</translation>
    </message>
</context>
<context>
    <name>TrialCard</name>
    <message>
        <source>Before: %1</source>
        <translation>Vorher: %1</translation>
    </message>
    <message>
        <source>Planning …</source>
        <translation>Wird geplant …</translation>
    </message>
    <message>
        <source>Now: %1</source>
        <translation>Jetzt: %1</translation>
    </message>
    <message>
        <source>Keep it</source>
        <translation>Behalten</translation>
    </message>
    <message>
        <source>Take it back</source>
        <translation>Zurücknehmen</translation>
    </message>
</context>
<context>
    <name>WayDesk</name>
    <message>
        <source>1 pass</source>
        <translation>1 Durchgang</translation>
    </message>
    <message>
        <source>%1 passes</source>
        <translation>%1 Durchgänge</translation>
    </message>
    <message>
        <source>%1: %2, %3</source>
        <translation>%1: %2, %3</translation>
    </message>
    <message>
        <source>another way</source>
        <translation>eine andere Variante</translation>
    </message>
    <message>
        <source>the quickest way</source>
        <translation>die schnellste Variante</translation>
    </message>
</context>
<context>
    <name>WaysPane</name>
    <message>
        <source>This is the plan</source>
        <translation>Das ist der Plan</translation>
    </message>
    <message>
        <source>On the picture the round mark is the start: drag it to another ring, or tap one.</source>
        <translation>Im Bild ist die runde Marke der Anfang: auf einen anderen Ring ziehen oder einen antippen.</translation>
    </message>
    <message>
        <source>Side by side</source>
        <translation>Nebeneinander</translation>
    </message>
    <message>
        <source>Beside the middle</source>
        <translation>Neben der Mitte</translation>
    </message>
    <message>
        <source>Whatever is fastest</source>
        <translation>Was am schnellsten geht</translation>
    </message>
    <message>
        <source>Use this plan</source>
        <translation>Diesen Plan nehmen</translation>
    </message>
    <message>
        <source>1 pass</source>
        <translation>1 Durchgang</translation>
    </message>
    <message>
        <source>%1 passes</source>
        <translation>%1 Durchgänge</translation>
    </message>
    <message>
        <source>%1, %2, %3: %4, %5</source>
        <translation>%1, %2, %3: %4, %5</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>%1, %2.</source>
        <translation>%1, %2.</translation>
    </message>
    <message>
        <source>Show 1 more way</source>
        <translation>1 weitere Variante zeigen</translation>
    </message>
    <message>
        <source>Show %1 more ways</source>
        <translation>%1 weitere Varianten zeigen</translation>
    </message>
</context>
<context>
    <name>WaysTable</name>
    <message>
        <source>%1, %2, %3</source>
        <translation>%1, %2, %3</translation>
    </message>
    <message>
        <source>The plan</source>
        <translation>Der Plan</translation>
    </message>
    <message>
        <source>Tap to take</source>
        <translation>Antippen zum Nehmen</translation>
    </message>
    <message>
        <source>Does not work</source>
        <translation>Geht nicht</translation>
    </message>
    <message>
        <source>1 pass</source>
        <translation>1 Durchgang</translation>
    </message>
    <message>
        <source>%1 passes</source>
        <translation>%1 Durchgänge</translation>
    </message>
    <message>
        <source>Beside the middle</source>
        <translation>Neben der Mitte</translation>
    </message>
</context>
<context>
    <name>WhoPane</name>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
</context>
<context>
    <name>WhoSheet</name>
    <message>
        <source>Who does what</source>
        <translation>Wer macht was</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>then: %1</source>
        <translation>dann: %1</translation>
    </message>
    <message>
        <source>Steps away</source>
        <translation>Geht kurz weg</translation>
    </message>
    <message>
        <source>Is back</source>
        <translation>Ist zurück</translation>
    </message>
    <message>
        <source>%1 steps away</source>
        <translation>%1 tritt weg</translation>
    </message>
    <message>
        <source>%1 is back at the table</source>
        <translation>%1 ist zurück am Tisch</translation>
    </message>
</context>
<context>
    <name>WhySheet</name>
    <message>
        <source>Source: %1</source>
        <translation>Quelle: %1</translation>
    </message>
    <message>
        <source>How it is worked out</source>
        <translation>So ist es gerechnet</translation>
    </message>
</context>
<context>
    <name>Workroom</name>
    <message>
        <source>This quilt cannot be read.</source>
        <translation>Dieser Quilt ist nicht lesbar.</translation>
    </message>
    <message>
        <source>There is no good plan to start with yet.</source>
        <translation>Noch gibt es keinen guten Plan zum Beginnen.</translation>
    </message>
</context>
<context>
    <name>ZoneCard</name>
    <message>
        <source>Hand %1 to …</source>
        <translation>%1 geben an …</translation>
    </message>
</context>
<context>
    <name>ZoneTile</name>
    <message>
        <source>closed</source>
        <translation>geschlossen</translation>
    </message>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>waiting</source>
        <translation>wartet</translation>
    </message>
    <message>
        <source>Zone %1, %2, %3 to place, %4</source>
        <translation>Zone %1, %2, %3 zu setzen, %4</translation>
    </message>
</context>
<context>
    <name>bastewright::app::KeepAwake</name>
    <message>
        <source>A session is running at the table.</source>
        <translation>Am Tisch läuft ein Treffen.</translation>
    </message>
</context>
<context>
    <name>bastewright::page::PageServer</name>
    <message>
        <source>The page cannot be opened at %1: %2.</source>
        <translation>Die Seite lässt sich unter %1 nicht öffnen: %2.</translation>
    </message>
    <message>
        <source>Scan the code on the tablet again.</source>
        <translation>Den Code auf dem Tablet neu scannen.</translation>
    </message>
    <message>
        <source>Too many wrong codes. Wait a little and try again.</source>
        <translation>Zu viele falsche Codes. Kurz warten und noch einmal versuchen.</translation>
    </message>
    <message>
        <source>That is not the code on the tablet.</source>
        <translation>Das ist nicht der Code auf dem Tablet.</translation>
    </message>
</context>
<context>
    <name>core</name>
    <message>
        <source>Four corners meet at 1 place; no layout of as few joins avoids it.</source>
        <translation>An 1 Stelle treffen vier Ecken zusammen; mit so wenigen Stößen geht es nicht anders.</translation>
    </message>
    <message>
        <source>Four corners meet at 1 place; no layout that was tried avoids it.</source>
        <translation>An 1 Stelle treffen vier Ecken zusammen; keine geprüfte Aufteilung vermeidet es.</translation>
    </message>
    <message>
        <source>Four corners meet at %1 places; no layout of as few joins avoids it.</source>
        <translation>An %1 Stellen treffen vier Ecken zusammen; mit so wenigen Stößen geht es nicht anders.</translation>
    </message>
    <message>
        <source>Four corners meet at %1 places; no layout that was tried avoids it.</source>
        <translation>An %1 Stellen treffen vier Ecken zusammen; keine geprüfte Aufteilung vermeidet es.</translation>
    </message>
    <message>
        <source>There are %1 further problems; fix those above first.</source>
        <translation>Es gibt %1 weitere Fehler; zuerst die obigen beheben.</translation>
    </message>
    <message>
        <source>an object in {} is accepted</source>
        <translation>möglich ist ein Objekt in {}</translation>
    </message>
    <message>
        <source>a list in [] is accepted</source>
        <translation>möglich ist eine Liste in []</translation>
    </message>
    <message>
        <source>has %1 entries; up to %2 are accepted.</source>
        <translation>hat %1 Einträge; möglich sind bis zu %2.</translation>
    </message>
    <message>
        <source>%1 is %2; %3.</source>
        <translation>%1 ist %2; %3.</translation>
    </message>
    <message>
        <source>is missing; it is needed.</source>
        <translation>fehlt; es ist nötig.</translation>
    </message>
    <message>
        <source>text of up to %1 bytes is accepted</source>
        <translation>möglich ist Text bis %1 Byte</translation>
    </message>
    <message>
        <source>%1 is %2 with %3 bytes; %4.</source>
        <translation>%1 ist %2 mit %3 Byte; %4.</translation>
    </message>
    <message>
        <source>text without line breaks, tabs or other control characters is accepted</source>
        <translation>möglich ist Text ohne Zeilenumbrüche, Tabulatoren oder andere Steuerzeichen</translation>
    </message>
    <message>
        <source>true or false is accepted</source>
        <translation>möglich ist true oder false</translation>
    </message>
    <message>
        <source>a whole number from %1 to %2 is accepted</source>
        <translation>möglich ist eine ganze Zahl von %1 bis %2</translation>
    </message>
    <message>
        <source>%1 is accepted</source>
        <translation>möglich ist %1</translation>
    </message>
    <message>
        <source>a number from %1 to %2 is accepted</source>
        <translation>möglich ist eine Zahl von %1 bis %2</translation>
    </message>
    <message>
        <source>%1 is %2: %3.</source>
        <translation>%1 ist %2: %3.</translation>
    </message>
    <message>
        <source>a length from %1 to %2 is accepted</source>
        <translation>möglich ist eine Länge von %1 bis %2</translation>
    </message>
    <message>
        <source>is an empty list; one reading or a list of up to %1 is accepted.</source>
        <translation>ist eine leere Liste; möglich ist eine Messung oder eine Liste von bis zu %1.</translation>
    </message>
    <message>
        <source>a place as [x, y] is accepted</source>
        <translation>möglich ist eine Stelle als [x, y]</translation>
    </message>
    <message>
        <source>a time of day from 00:00 to 23:59, such as 13:00, is accepted</source>
        <translation>möglich ist eine Uhrzeit von 00:00 bis 23:59, etwa 13:00</translation>
    </message>
    <message>
        <source>%1 or %2 is accepted</source>
        <translation>möglich ist %1 oder %2</translation>
    </message>
    <message>
        <source>is not a field this version knows; it is kept but has no effect.</source>
        <translation>kennt diese Version nicht; es bleibt erhalten, hat aber keine Wirkung.</translation>
    </message>
    <message>
        <source>is not a field this version knows; it has no effect.</source>
        <translation>kennt diese Version nicht; es hat keine Wirkung.</translation>
    </message>
    <message>
        <source>%1 is %2 again; each word is accepted once.</source>
        <translation>%1 ist noch einmal %2; jedes Wort ist einmal möglich.</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>has readings that differ by %1; up to %2 is usual for a square top without wavy edges.</source>
        <translation>hat Messungen, die um %1 abweichen; bis %2 ist üblich bei einem rechtwinkligen Top ohne wellige Ränder.</translation>
    </message>
    <message>
        <source>is missing; one reading, several, or a grid of blocks is needed.</source>
        <translation>fehlt; nötig ist eine Messung, mehrere oder ein Blockraster.</translation>
    </message>
    <message>
        <source>makes a top with a width of %1; %2 to %3 is accepted.</source>
        <translation>ergibt ein Top von %1 Breite; möglich ist %2 bis %3.</translation>
    </message>
    <message>
        <source>makes a top with a length of %1; %2 to %3 is accepted.</source>
        <translation>ergibt ein Top von %1 Länge; möglich ist %2 bis %3.</translation>
    </message>
    <message>
        <source>has an inner seam at %1 = %2; less than the block&apos;s %3 is accepted.</source>
        <translation>hat eine innere Naht bei %1 = %2; möglich ist weniger als der Block mit %3.</translation>
    </message>
    <message>
        <source>has %1 reading; none or both are accepted.</source>
        <translation>hat %1 Messung; möglich sind keine oder beide.</translation>
    </message>
    <message>
        <source>has a reading of %1 while the sides make %2; measure again.</source>
        <translation>hat eine Messung von %1, aus den Seiten folgt %2; noch einmal messen.</translation>
    </message>
    <message>
        <source>(%1, %2)</source>
        <translation>(%1, %2)</translation>
    </message>
    <message>
        <source>runs from %1 to itself; two different ends are accepted.</source>
        <translation>läuft von %1 zu sich selbst; nötig sind zwei verschiedene Enden.</translation>
    </message>
    <message>
        <source>runs from %1 to %2; places on the top, or up to %3 beyond it, are accepted.</source>
        <translation>läuft von %1 nach %2; möglich sind Stellen auf dem Top oder bis %3 daneben.</translation>
    </message>
    <message>
        <source>makes %1 seams inside its blocks; up to %2 are accepted.</source>
        <translation>ergibt %1 Nähte in den Blöcken; möglich sind bis zu %2.</translation>
    </message>
    <message>
        <source>is &quot;%1&quot; again; pieces are easier to find with a name each.</source>
        <translation>ist noch einmal „%1“; mit eigenen Namen sind Stücke leichter zu finden.</translation>
    </message>
    <message>
        <source>are %1 in all; up to %2 are accepted.</source>
        <translation>sind zusammen %1; möglich sind bis zu %2.</translation>
    </message>
    <message>
        <source>is &quot;%1&quot; again; each zone in one person&apos;s hands is accepted.</source>
        <translation>ist noch einmal „%1“; jede Zone kann nur eine Person haben.</translation>
    </message>
    <message>
        <source>line %1, column %2</source>
        <translation>Zeile %1, Spalte %2</translation>
    </message>
    <message>
        <source>has more than %1 fields, the most that are accepted.</source>
        <translation>hat mehr als die höchstens möglichen %1 Felder.</translation>
    </message>
    <message>
        <source>is given twice; each field is accepted once.</source>
        <translation>ist doppelt angegeben; jedes Feld ist einmal möglich.</translation>
    </message>
    <message>
        <source>The number %1 at %2 is too large; numbers up to 1e308 can be read.</source>
        <translation>Die Zahl %1 bei %2 ist zu groß; lesbar sind Zahlen bis 1e308.</translation>
    </message>
    <message>
        <source>The file is not complete JSON: it ends at %1 before everything that was opened is closed.</source>
        <translation>Die Datei ist kein vollständiges JSON: Sie endet bei %1, bevor alles Geöffnete geschlossen ist.</translation>
    </message>
    <message>
        <source>The file is not JSON: at %1 &apos;%2&apos; was not expected.</source>
        <translation>Die Datei ist kein JSON: Bei %1 war „%2“ nicht zu erwarten.</translation>
    </message>
    <message>
        <source>holds more than %1 values, the most that are accepted.</source>
        <translation>enthält mehr als die höchstens möglichen %1 Werte.</translation>
    </message>
    <message>
        <source>has lists or objects inside each other more than %1 deep, the most that is accepted.</source>
        <translation>schachtelt Listen oder Objekte tiefer als die höchstens möglichen %1.</translation>
    </message>
    <message>
        <source>The file has %1 bytes; up to %2 bytes are accepted.</source>
        <translation>Die Datei hat %1 Byte; möglich sind bis zu %2.</translation>
    </message>
    <message>
        <source>The file is empty.</source>
        <translation>Die Datei ist leer.</translation>
    </message>
    <message>
        <source>The file is not UTF-8 text: at %1 a byte has no meaning; save it as UTF-8.</source>
        <translation>Die Datei ist kein UTF-8-Text: Bei %1 hat ein Byte keine Bedeutung; als UTF-8 sichern.</translation>
    </message>
    <message>
        <source>%1 no. %2</source>
        <translation>%1 Nr. %2</translation>
    </message>
    <message>
        <source>The file</source>
        <translation>Die Datei</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>is %1 while from is %2; a later time of the same day is accepted.</source>
        <translation>ist %1, während from %2 ist; möglich ist eine spätere Zeit am selben Tag.</translation>
    </message>
    <message>
        <source>is blank; a name is accepted.</source>
        <translation>ist leer; nötig ist ein Name.</translation>
    </message>
    <message>
        <source>is &quot;%1&quot; again; a different name each is accepted.</source>
        <translation>ist noch einmal „%1“; nötig sind verschiedene Namen.</translation>
    </message>
    <message>
        <source>is %1 while the work starts at %2; %3 is never there.</source>
        <translation>ist %1, die Arbeit beginnt um %2; %3 ist nie da.</translation>
    </message>
    <message>
        <source>is set aside: a session has one %1 for all its quilts, beside &quot;jobs&quot;; it is kept but has no effect.</source>
        <translation>bleibt außer Acht: Ein Treffen hat ein %1 für alle Quilts, neben „jobs“; es bleibt erhalten, hat aber keine Wirkung.</translation>
    </message>
    <message>
        <source>is an empty list; 1 to %1 quilts are accepted.</source>
        <translation>ist eine leere Liste; möglich sind 1 bis %1 Quilts.</translation>
    </message>
    <message>
        <source>The file is %1; a basting plan as an object in {} is accepted.</source>
        <translation>Die Datei ist %1; möglich ist ein Heftplan als Objekt in {}.</translation>
    </message>
    <message>
        <source>The file could not be read: %1.</source>
        <translation>Die Datei war nicht lesbar: %1.</translation>
    </message>
    <message>
        <source>There is no file %1; give the path of a basting plan.</source>
        <translation>Es gibt keine Datei %1; nötig ist der Pfad eines Heftplans.</translation>
    </message>
    <message>
        <source>%1 is a folder; give the path of a basting plan.</source>
        <translation>%1 ist ein Ordner; nötig ist der Pfad eines Heftplans.</translation>
    </message>
    <message>
        <source>%1 is not an ordinary file; give the path of a basting plan.</source>
        <translation>%1 ist keine gewöhnliche Datei; nötig ist der Pfad eines Heftplans.</translation>
    </message>
    <message>
        <source>%1 has %2 bytes; up to %3 bytes are accepted.</source>
        <translation>%1 hat %2 Byte; möglich sind bis zu %3.</translation>
    </message>
    <message>
        <source>%1 cannot be read; check that you may open it.</source>
        <translation>%1 ist nicht lesbar; prüfen, ob das Öffnen erlaubt ist.</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>under a minute</source>
        <translation>unter einer Minute</translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation>%1 min</translation>
    </message>
    <message>
        <source>%1 h %2 min</source>
        <translation>%1 h %2 min</translation>
    </message>
    <message>
        <source>head</source>
        <translation>Kopf</translation>
    </message>
    <message>
        <source>foot</source>
        <translation>Fuß</translation>
    </message>
    <message>
        <source>left</source>
        <translation>links</translation>
    </message>
    <message>
        <source>right</source>
        <translation>rechts</translation>
    </message>
    <message>
        <source>%1 and others</source>
        <translation>%1 und weitere</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <translation>%1 und %2</translation>
    </message>
    <message>
        <source>The file is %1; a plan as an object in {} is accepted.</source>
        <translation>Die Datei ist %1; möglich ist ein Plan als Objekt in {}.</translation>
    </message>
    <message>
        <source>The plan could not be read: %1.</source>
        <translation>Der Plan war nicht lesbar: %1.</translation>
    </message>
    <message>
        <source>is less than x0; a rectangle&apos;s x1 is at least x0.</source>
        <translation>ist kleiner als x0; das x1 eines Rechtecks ist mindestens x0.</translation>
    </message>
    <message>
        <source>is less than y0; a rectangle&apos;s y1 is at least y0.</source>
        <translation>ist kleiner als y0; das y1 eines Rechtecks ist mindestens y0.</translation>
    </message>
    <message>
        <source>%1 more of %2</source>
        <translation>%1 mehr von %2</translation>
    </message>
    <message>
        <source>With %1 it can be made.</source>
        <translation>Mit %1 geht es.</translation>
    </message>
    <message>
        <source>%1.</source>
        <translation>%1.</translation>
    </message>
    <message>
        <source>The backing would be %1 × %2; a size above 0 each way is accepted.</source>
        <translation>Die Rückseite wäre %1 × %2; möglich sind Maße über 0.</translation>
    </message>
    <message>
        <source>The seam allowance is %1; 0 or more is accepted.</source>
        <translation>Die Nahtzugabe ist %1; möglich ist 0 oder mehr.</translation>
    </message>
    <message>
        <source>Shrinkage is %1 %; 0 to less than 50 is accepted.</source>
        <translation>Der Einlauf ist %1 %; möglich ist 0 bis unter 50.</translation>
    </message>
    <message>
        <source>Squaring takes %1; 0 or more is accepted.</source>
        <translation>Für das Begradigen sind %1 angegeben; möglich ist 0 oder mehr.</translation>
    </message>
    <message>
        <source>The repeat is %1; 0 or more is accepted.</source>
        <translation>Der Rapport ist %1; möglich ist 0 oder mehr.</translation>
    </message>
    <message>
        <source>Two cloths are called &apos;%1&apos;; a name of its own for each is accepted.</source>
        <translation>Zwei Stoffe heißen „%1“; jeder braucht einen eigenen Namen.</translation>
    </message>
    <message>
        <source>Name them apart, for example by color or by length.</source>
        <translation>Verschieden benennen, etwa nach Farbe oder Länge.</translation>
    </message>
    <message>
        <source>The usable width is %1; at least %2 is accepted with this seam allowance.</source>
        <translation>Die nutzbare Breite ist %1; bei dieser Nahtzugabe sind mindestens %2 nötig.</translation>
    </message>
    <message>
        <source>The overage of %1 a side is wider than the fabric of %2; enter less.</source>
        <translation>Der Überstand von %1 je Seite ist breiter als der Stoff von %2; bitte weniger eingeben.</translation>
    </message>
    <message>
        <source>The length we have is %1; enter 0 or more.</source>
        <translation>Die Länge, die wir haben, ist %1; bitte 0 oder mehr eingeben.</translation>
    </message>
    <message>
        <source>The price is below 0; 0 or more is accepted.</source>
        <translation>Der Preis liegt unter 0; möglich ist 0 oder mehr.</translation>
    </message>
    <message>
        <source>%1 less overage on every side, with a seam on the center line, would save %2.</source>
        <translation>%1 weniger Überstand je Seite und eine Naht in der Mitte würden sparen: %2.</translation>
    </message>
    <message>
        <source>A seam on the center line would save %1.</source>
        <translation>Eine Naht in der Mitte würde sparen: %1.</translation>
    </message>
    <message>
        <source>%1 %2 less overage on every side without one would save %3.</source>
        <translation>%1 %2 weniger Überstand je Seite ohne Mittelnaht würden sparen: %3.</translation>
    </message>
    <message>
        <source>%1 less overage on every side would save %2.</source>
        <translation>%1 weniger Überstand je Seite würden sparen: %2.</translation>
    </message>
    <message>
        <source>Seam allowances of %1 would save %2.</source>
        <translation>Nahtzugaben von %1 würden sparen: %2.</translation>
    </message>
    <message>
        <source>1 length of %1</source>
        <translation>1 Bahn von %1</translation>
    </message>
    <message>
        <source>%2 lengths of %1</source>
        <translation>%2 Bahnen von %1</translation>
    </message>
    <message>
        <source>1 length of %1 of %2</source>
        <translation>1 Bahn von %1 aus %2</translation>
    </message>
    <message>
        <source>%3 lengths of %1 of %2</source>
        <translation>%3 Bahnen von %1 aus %2</translation>
    </message>
    <message>
        <source>%1, with a panel %2 wide</source>
        <translation>%1, mit einer Bahn von %2 Breite</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>nothing to buy</source>
        <translation>nichts zu kaufen</translation>
    </message>
    <message>
        <source>%1 along the quilt</source>
        <translation>%1 längs zum Quilt</translation>
    </message>
    <message>
        <source>%1 across the quilt</source>
        <translation>%1 quer zum Quilt</translation>
    </message>
    <message>
        <source>%1; %2, no seam</source>
        <translation>%1; %2, keine Naht</translation>
    </message>
    <message>
        <source>%1; %2, 1 seam</source>
        <translation>%1; %2, 1 Naht</translation>
    </message>
    <message>
        <source>%1; %2, %3 seams</source>
        <translation>%1; %2, %3 Nähte</translation>
    </message>
    <message>
        <source>The %1 pack is smaller than the %2 needed, so pieces are joined to it.</source>
        <translation>Die Packung %1 ist kleiner als die nötigen %2; deshalb werden Stücke angesetzt.</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>The batting would be %1; a size above 0 is accepted.</source>
        <translation>Das Vlies wäre %1; möglich sind Maße über 0.</translation>
    </message>
    <message>
        <source>The trim is %1; 0 or more is accepted.</source>
        <translation>Der Beschnitt ist %1; möglich ist 0 oder mehr.</translation>
    </message>
    <message>
        <source>The overlap is %1; 0 or more is accepted.</source>
        <translation>Die Überlappung ist %1; möglich ist 0 oder mehr.</translation>
    </message>
    <message>
        <source>The overlap of %1 is as large as the batting; less than its shorter side is accepted.</source>
        <translation>Die Überlappung von %1 ist so groß wie das Vlies; möglich ist weniger als dessen kürzere Seite.</translation>
    </message>
    <message>
        <source>Piece %1 is %2; a size above 0 each way is accepted.</source>
        <translation>Stück %1 ist %2; möglich sind Maße über 0.</translation>
    </message>
    <message>
        <source>There are too many pieces to try all joins; there may be a way with fewer.</source>
        <translation>Für alle Möglichkeiten sind es zu viele Stücke; vielleicht geht es mit weniger.</translation>
    </message>
    <message>
        <source>Whole pieces do not suffice, so piece %1 is cut in two first, at %2 of its width.</source>
        <translation>Ganze Stücke reichen nicht; Stück %1 wird zuerst geteilt, bei %2 seiner Breite.</translation>
    </message>
    <message>
        <source>Whole pieces do not suffice, so piece %1 is cut in two first, at %2 of its length.</source>
        <translation>Ganze Stücke reichen nicht; Stück %1 wird zuerst geteilt, bei %2 seiner Länge.</translation>
    </message>
    <message>
        <source>One more piece of at least %1 would do; the smallest pack that holds it is %2.</source>
        <translation>Ein weiteres Stück von mindestens %1 würde reichen; die kleinste passende Packung ist %2.</translation>
    </message>
    <message>
        <source>One more piece of at least %1 would do.</source>
        <translation>Ein weiteres Stück von mindestens %1 würde reichen.</translation>
    </message>
    <message>
        <source>%1 A %2 pack holds all of it.</source>
        <translation>%1 Eine Packung %2 reicht für alles.</translation>
    </message>
    <message>
        <source>They suffice if pieces may be turned a quarter. Or: %1</source>
        <translation>Sie reichen, wenn Stücke gedreht werden dürfen. Oder: %1</translation>
    </message>
    <message>
        <source>The pieces cannot be joined by straight cuts to the %1 needed.</source>
        <translation>Die Stücke lassen sich mit geraden Schnitten nicht zu den nötigen %1 zusammensetzen.</translation>
    </message>
    <message>
        <source>The pieces cannot be joined by straight cuts to the %1 needed, as far as the search went.</source>
        <translation>Soweit gesucht wurde, lassen sich die Stücke mit geraden Schnitten nicht zu den nötigen %1 zusammensetzen.</translation>
    </message>
    <message>
        <source>Piece %1 of %2 is used up by trimming and one overlap, so it is left out.</source>
        <translation>Stück %1 von %2 geht für Beschnitt und eine Überlappung auf und bleibt weg.</translation>
    </message>
    <message>
        <source>Only the %1 largest of %2 pieces are looked at.</source>
        <translation>Nur die %1 größten von %2 Stücken werden betrachtet.</translation>
    </message>
    <message>
        <source>offcut of %1, %2</source>
        <translation>Reststück von %1, %2</translation>
    </message>
    <message>
        <source>pins</source>
        <translation>Sicherheitsnadeln</translation>
    </message>
    <message>
        <source>fuse squares, %1</source>
        <translation>Klebevlies-Quadrate, %1</translation>
    </message>
    <message>
        <source>heat-safe pads</source>
        <translation>hitzefeste Unterlagen</translation>
    </message>
    <message>
        <source>clips that hold %1</source>
        <translation>Clips für %1</translation>
    </message>
    <message>
        <source>clamps</source>
        <translation>Klemmen</translation>
    </message>
    <message>
        <source>center marks</source>
        <translation>Mittenmarken</translation>
    </message>
    <message>
        <source>tape</source>
        <translation>Klebeband</translation>
    </message>
    <message>
        <source>closing tools</source>
        <translation>Schließhilfen</translation>
    </message>
    <message>
        <source>backing: fabric</source>
        <translation>Rückseite: Stoff</translation>
    </message>
    <message>
        <source>backing: %1</source>
        <translation>Rückseite: %1</translation>
    </message>
    <message>
        <source>batting: %1</source>
        <translation>Vlies: %1</translation>
    </message>
    <message>
        <source>leftover batting pieces</source>
        <translation>Vlies-Reststücke</translation>
    </message>
    <message>
        <source>joining strip</source>
        <translation>Verbindungsstreifen</translation>
    </message>
    <message>
        <source>%1, pass %2: nobody reaches all of zone %3 from an open side.</source>
        <translation>%1, Durchgang %2: Niemand erreicht Zone %3 ganz von einer freien Seite.</translation>
    </message>
    <message>
        <source>A helper who reaches %1, or a table open on more sides.</source>
        <translation>Jemand mit %1 Reichweite oder ein Tisch mit mehr freien Seiten.</translation>
    </message>
    <message>
        <source>Move the table away from a wall: no side of it is open.</source>
        <translation>Den Tisch von der Wand rücken: Keine Seite ist frei.</translation>
    </message>
    <message>
        <source>%1, pass %2: nobody who closes pins reaches zone %3.</source>
        <translation>%1, Durchgang %2: Niemand, der Nadeln schließt, erreicht Zone %3.</translation>
    </message>
    <message>
        <source>Let somebody who reaches it close pins.</source>
        <translation>Jemanden Nadeln schließen lassen, der sie erreicht.</translation>
    </message>
    <message>
        <source>No helpers are named: planned for one, &apos;Helper 1&apos;.</source>
        <translation>Niemand ist angegeben: geplant für eine Person, „Helper 1“.</translation>
    </message>
    <message>
        <source>Name who comes.</source>
        <translation>Angeben, wer kommt.</translation>
    </message>
    <message>
        <source>%1 works alone: laying the layers takes longer than planned for two.</source>
        <translation>%1 arbeitet allein: Das Auflegen der Lagen dauert länger als zu zweit geplant.</translation>
    </message>
    <message>
        <source>A second pair of hands for laying the layers.</source>
        <translation>Ein zweites Paar Hände beim Auflegen der Lagen.</translation>
    </message>
    <message>
        <source>There is nothing to do at zone %1.</source>
        <translation>In Zone %1 ist nichts zu tun.</translation>
    </message>
    <message>
        <source>%1 does not close pins, and zone %2 has to be closed.</source>
        <translation>%1 schließt keine Nadeln, und in Zone %2 müssen sie geschlossen werden.</translation>
    </message>
    <message>
        <source>%1 does not iron, and zone %2 has to be pressed.</source>
        <translation>%1 bügelt nicht, und Zone %2 muss gebügelt werden.</translation>
    </message>
    <message>
        <source>Zone %1 belongs to no pass.</source>
        <translation>Zone %1 gehört zu keinem Durchgang.</translation>
    </message>
    <message>
        <source>%1 does not reach all of zone %2 from an open side: their reach is %3.</source>
        <translation>%1 erreicht Zone %2 von keiner freien Seite ganz: Reichweite %3.</translation>
    </message>
    <message>
        <source>Zone %1 of %2 was handed to %3, and this plan has no such zone.</source>
        <translation>Zone %1 von %2 ging an %3, und dieser Plan hat keine solche Zone.</translation>
    </message>
    <message>
        <source>Zone %1 of %2 was handed to %3, who is not among the helpers.</source>
        <translation>Zone %1 von %2 ging an %3 – nicht unter den Helfenden.</translation>
    </message>
    <message>
        <source>Hand it to somebody else; until then anybody who can works it.</source>
        <translation>Jemand anderem geben; bis dahin arbeitet daran, wer kann.</translation>
    </message>
    <message>
        <source>%1 (%2 longer)</source>
        <translation>%1 (%2 länger)</translation>
    </message>
    <message>
        <source>%1 until %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>The work takes longer than some can stay: %1.</source>
        <translation>Die Arbeit dauert länger, als manche bleiben können: %1.</translation>
    </message>
    <message>
        <source>Ask to stay: %1.</source>
        <translation>Um längeres Bleiben bitten: %1.</translation>
    </message>
    <message>
        <source>Dots have to be pressed, and there is no iron.</source>
        <translation>Klebepunkte müssen gebügelt werden, und es gibt kein Bügeleisen.</translation>
    </message>
    <message>
        <source>Bring one iron.</source>
        <translation>Ein Bügeleisen mitbringen.</translation>
    </message>
    <message>
        <source>Dots have to be pressed, and nobody may iron.</source>
        <translation>Klebepunkte müssen gebügelt werden, und niemand bügelt.</translation>
    </message>
    <message>
        <source>Let one helper iron.</source>
        <translation>Jemanden bügeln lassen.</translation>
    </message>
    <message>
        <source>%1, pass %2: nobody who may iron reaches zone %3.</source>
        <translation>%1, Durchgang %2: Niemand, der bügelt, erreicht Zone %3.</translation>
    </message>
    <message>
        <source>Let somebody who reaches it iron.</source>
        <translation>Jemanden bügeln lassen, der sie erreicht.</translation>
    </message>
    <message>
        <source>Let one helper who stands lift.</source>
        <translation>Jemanden heben lassen, der steht.</translation>
    </message>
    <message>
        <source>Ask for more hands when the quilt is moved, or slide it in short steps.</source>
        <translation>Für das Schieben um mehr Hände bitten oder in kurzen Schritten schieben.</translation>
    </message>
    <message>
        <source>%1 to the right</source>
        <translation>%1 nach rechts</translation>
    </message>
    <message>
        <source>%1 to the left</source>
        <translation>%1 nach links</translation>
    </message>
    <message>
        <source>%1 toward the foot</source>
        <translation>%1 zum Fuß hin</translation>
    </message>
    <message>
        <source>%1 toward the head</source>
        <translation>%1 zum Kopf hin</translation>
    </message>
    <message>
        <source>%1 across and %2 down</source>
        <translation>%1 von links und %2 vom Kopf</translation>
    </message>
    <message>
        <source>%1; %2</source>
        <translation>%1; %2</translation>
    </message>
    <message>
        <source>Allow pins nearer to the edge, or a shorter pin.</source>
        <translation>Nadeln näher am Rand zulassen oder kürzere nehmen.</translation>
    </message>
    <message>
        <source>Allow them nearer to the edge, or a wider spacing.</source>
        <translation>Sie näher am Rand oder weiteren Abstand zulassen.</translation>
    </message>
    <message>
        <source>Leave one out by eye, or allow pins nearer to seams.</source>
        <translation>Nach Augenmaß einen weglassen oder Nadeln näher an Nähten zulassen.</translation>
    </message>
    <message>
        <source>Some places are farther from a pin or dot than the spacing allows: %1.</source>
        <translation>Einige Stellen liegen weiter von Nadel oder Klebepunkt, als der Abstand erlaubt: %1.</translation>
    </message>
    <message>
        <source>Add one there by eye.</source>
        <translation>Dort nach Augenmaß hinzufügen.</translation>
    </message>
    <message>
        <source>%1: %2 too little.</source>
        <translation>%1: %2 zu wenig.</translation>
    </message>
    <message>
        <source>%1: only %2 of overage on each side, where %3 was asked for.</source>
        <translation>%1: nur %2 Überstand je Seite statt der gewünschten %3.</translation>
    </message>
    <message>
        <source>1 table</source>
        <translation>1 Tisch</translation>
    </message>
    <message>
        <source>%1 tables pushed together</source>
        <translation>%1 Tische zusammengeschoben</translation>
    </message>
    <message>
        <source>%1 tables end to end</source>
        <translation>%1 Tische hintereinander</translation>
    </message>
    <message>
        <source>%1 tables side by side</source>
        <translation>%1 Tische nebeneinander</translation>
    </message>
    <message>
        <source>%1 tables, %2 end to end by %3 side by side</source>
        <translation>%1 Tische, %2 hintereinander mal %3 nebeneinander</translation>
    </message>
    <message>
        <source>the floor</source>
        <translation>der Boden</translation>
    </message>
    <message>
        <source>The box allows a spacing of about %1, and the batting only %2.</source>
        <translation>Der Vorrat erlaubt etwa %1 Abstand, das Vlies nur %2.</translation>
    </message>
    <message>
        <source>In pass %1, %2 % of the quilt hangs from the table.</source>
        <translation>In Durchgang %1 hängen %2 % des Quilts vom Tisch.</translation>
    </message>
    <message>
        <source>Hold it up with chairs or a second table, so that its weight does not drag the layers.</source>
        <translation>Mit Stühlen oder einem zweiten Tisch stützen, damit das Gewicht die Lagen nicht verzieht.</translation>
    </message>
    <message>
        <source>Spacing %1 is wider than the %2 between quilting lines that the batting&apos;s label allows.</source>
        <translation>Der Abstand %1 ist weiter als die %2 zwischen Quiltlinien, die das Vlies-Etikett erlaubt.</translation>
    </message>
    <message>
        <source>Set the spacing to %1 or less.</source>
        <translation>Den Abstand auf %1 oder weniger setzen.</translation>
    </message>
    <message>
        <source>This batting can melt under an iron, and fuse dots are pressed on with one.</source>
        <translation>Dieses Vlies kann unter dem Bügeleisen schmelzen, und Klebepunkte werden aufgebügelt.</translation>
    </message>
    <message>
        <source>Baste with pins, or test on scraps at the setting both labels allow.</source>
        <translation>Mit Nadeln heften oder an Resten mit der Einstellung testen, die beide Etiketten erlauben.</translation>
    </message>
    <message>
        <source>Half of the quilt rolled is about %1 thick and does not pass the machine&apos;s throat of %2.</source>
        <translation>Der halbe Quilt ist gerollt etwa %1 dick und passt nicht durch den Durchlass der Maschine von %2.</translation>
    </message>
    <message>
        <source>Some parts of the quilt make a roll too thick for any clip we have: fold those on a chair or a second table so that they do not drag.</source>
        <translation>Manche Teile des Quilts ergeben eine Rolle, die für jeden Clip, den wir haben, zu dick ist: sie auf einem Stuhl oder zweiten Tisch falten, damit sie nicht ziehen.</translation>
    </message>
    <message>
        <source>The plan takes %1 pins and there are %2.</source>
        <translation>Der Plan braucht %1 Nadeln, vorhanden sind %2.</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>the only one that works</source>
        <translation>die einzige, die geht</translation>
    </message>
    <message>
        <source>quickest of %1 that work</source>
        <translation>die schnellste von %1 möglichen</translation>
    </message>
    <message>
        <source>quickest for all quilts here without moving the tables</source>
        <translation>die schnellste für alle Quilts, ohne Tische zu rücken</translation>
    </message>
    <message>
        <source>%1 longer</source>
        <translation>%1 länger</translation>
    </message>
    <message>
        <source>%1 shorter</source>
        <translation>%1 kürzer</translation>
    </message>
    <message>
        <source>as quick</source>
        <translation>gleich schnell</translation>
    </message>
    <message>
        <source>%1, 1 pass more</source>
        <translation>%1, 1 Durchgang mehr</translation>
    </message>
    <message>
        <source>%1, 1 pass fewer</source>
        <translation>%1, 1 Durchgang weniger</translation>
    </message>
    <message>
        <source>%1, %2 passes more</source>
        <translation>%1, %2 Durchgänge mehr</translation>
    </message>
    <message>
        <source>%1, %2 passes fewer</source>
        <translation>%1, %2 Durchgänge weniger</translation>
    </message>
    <message>
        <source>the quilt</source>
        <translation>der Quilt</translation>
    </message>
    <message>
        <source>None of the tables can hold %1 so that it can be shifted along: there is no table in the room.</source>
        <translation>Auf keinem der Tische lässt sich weiterschieben (%1): In diesem Raum gibt es keinen Tisch.</translation>
    </message>
    <message>
        <source>None of the tables can hold %1 so that it can be shifted along: on %2 %3.</source>
        <translation>Auf keinem der Tische lässt sich weiterschieben (%1): %2 – %3.</translation>
    </message>
    <message>
        <source>Use tables at least %1 wide with a long side to stand at, or list no tables and work on the floor.</source>
        <translation>Tische von mindestens %1 Breite mit einer freien Längsseite nehmen, oder keine Tische angeben und auf dem Boden arbeiten.</translation>
    </message>
    <message>
        <source>There is a %1 among the helpers already.</source>
        <translation>%1 gibt es unter den Helfenden schon.</translation>
    </message>
    <message>
        <source>There is no iron to take away.</source>
        <translation>Es gibt kein Bügeleisen, das fehlen könnte.</translation>
    </message>
    <message>
        <source>No pins more and no pins less change nothing.</source>
        <translation>Keine Nadel mehr und keine weniger ändert nichts.</translation>
    </message>
    <message>
        <source>%1 later than planned: finishes about %2, not %3.</source>
        <translation>%1 später als geplant: Ende etwa um %2 statt um %3.</translation>
    </message>
    <message>
        <source>%1 earlier than planned: finishes about %2, not %3.</source>
        <translation>%1 früher als geplant: Ende etwa um %2 statt um %3.</translation>
    </message>
    <message>
        <source>%1 was to leave at %2 and is not planned for.</source>
        <translation>%1 wollte um %2 gehen und ist nicht eingeplant.</translation>
    </message>
    <message>
        <source>%1 leaves at %2 as agreed.</source>
        <translation>%1 geht wie abgemacht um %2.</translation>
    </message>
    <message>
        <source>There is no such quilt.</source>
        <translation>Diesen Quilt gibt es nicht.</translation>
    </message>
    <message>
        <source>The session is not paused.</source>
        <translation>Das Treffen ist nicht unterbrochen.</translation>
    </message>
    <message>
        <source>Nobody called %1 is among the helpers.</source>
        <translation>%1 ist nicht unter den Helfenden.</translation>
    </message>
    <message>
        <source>%1 is at the table already.</source>
        <translation>%1 ist schon am Tisch.</translation>
    </message>
    <message>
        <source>%1 is not at the table.</source>
        <translation>%1 ist nicht am Tisch.</translation>
    </message>
    <message>
        <source>The quilt lies on the floor; there is no table to take away or to add to.</source>
        <translation>Der Quilt liegt auf dem Boden; es gibt keinen Tisch zum Wegnehmen oder Ergänzen.</translation>
    </message>
    <message>
        <source>There is no table to take away.</source>
        <translation>Es gibt keinen Tisch, der fehlen könnte.</translation>
    </message>
    <message>
        <source>The plan has no zone %1.</source>
        <translation>Der Plan hat keine Zone %1.</translation>
    </message>
    <message>
        <source>Zone %1 is done.</source>
        <translation>Zone %1 ist fertig.</translation>
    </message>
    <message>
        <source>%1 is not at the table; report them there first.</source>
        <translation>%1 ist nicht am Tisch; zuerst dort melden.</translation>
    </message>
    <message>
        <source>%1 places the pins of %2 at %3</source>
        <translation>%1 steckt die Nadeln von %2 um %3</translation>
    </message>
    <message>
        <source>%1 closes %2 at %3</source>
        <translation>%1 schließt %2 um %3</translation>
    </message>
    <message>
        <source>%1 presses %2 at %3</source>
        <translation>%1 bügelt %2 um %3</translation>
    </message>
    <message>
        <source>%1 dots %2 at %3</source>
        <translation>%1 klebt %2 um %3</translation>
    </message>
    <message>
        <source>%1 from the head side.</source>
        <translation>%1 von der Kopfseite.</translation>
    </message>
    <message>
        <source>%1 from the foot side.</source>
        <translation>%1 von der Fußseite.</translation>
    </message>
    <message>
        <source>%1 from the left side.</source>
        <translation>%1 von der linken Seite.</translation>
    </message>
    <message>
        <source>%1 from the right side.</source>
        <translation>%1 von der rechten Seite.</translation>
    </message>
    <message>
        <source>The %1 pins in the box do for all that is left.</source>
        <translation>Die %1 Nadeln im Vorrat reichen für alles Übrige.</translation>
    </message>
    <message>
        <source>The %1 pins in the box last until zone %2, at %3: fetch %4 more by then.</source>
        <translation>Die %1 Nadeln im Vorrat reichen bis Zone %2 um %3: bis dahin %4 mehr holen.</translation>
    </message>
    <message>
        <source>Pass %1 is released already.</source>
        <translation>Durchgang %1 ist schon freigegeben.</translation>
    </message>
    <message>
        <source>Close what is open first: %1.</source>
        <translation>Zuerst Offenes schließen: %1.</translation>
    </message>
    <message>
        <source>Nothing of pass %1 is left to be left out.</source>
        <translation>Von Durchgang %1 bleibt nichts zum Weglassen.</translation>
    </message>
    <message>
        <source>This is a fault of the program, not yours: change a size or the spacing a little and plan again, and report it with the file of the quilt.</source>
        <translation>Das ist ein Fehler des Programms: ein Maß oder den Abstand etwas ändern, neu planen und es mit der Datei des Quilts melden.</translation>
    </message>
    <message>
        <source>Event %1 is stored already.</source>
        <translation>Eintrag %1 ist schon gespeichert.</translation>
    </message>
    <message>
        <source>There is no event %1 to take back.</source>
        <translation>Es gibt keinen Eintrag %1 zum Zurücknehmen.</translation>
    </message>
    <message>
        <source>The start of a session cannot be taken back; end the session instead.</source>
        <translation>Der Beginn eines Treffens lässt sich nicht zurücknehmen; stattdessen das Treffen beenden.</translation>
    </message>
    <message>
        <source>Event %1 had no effect that could be taken back.</source>
        <translation>Eintrag %1 hatte keine Wirkung, die sich zurücknehmen ließe.</translation>
    </message>
    <message>
        <source>Event %1 is taken back already.</source>
        <translation>Eintrag %1 ist schon zurückgenommen.</translation>
    </message>
    <message>
        <source>it is empty.</source>
        <translation>Er ist leer.</translation>
    </message>
    <message>
        <source>Nothing can be reported before the session has started.</source>
        <translation>Vor dem Beginn des Treffens lässt sich nichts melden.</translation>
    </message>
    <message>
        <source>The session has ended; take the ending back to go on with it.</source>
        <translation>Das Treffen ist beendet; zum Fortsetzen das Ende zurücknehmen.</translation>
    </message>
    <message>
        <source>A number of pins found or missing cannot be %1.</source>
        <translation>Eine Zahl gefundener oder fehlender Nadeln kann nicht %1 sein.</translation>
    </message>
    <message>
        <source>A number of pins counted back in cannot be %1.</source>
        <translation>Eine Zahl zurückgezählter Nadeln kann nicht %1 sein.</translation>
    </message>
    <message>
        <source>The pins are counted already.</source>
        <translation>Die Nadeln sind schon gezählt.</translation>
    </message>
    <message>
        <source>The note is empty.</source>
        <translation>Die Notiz ist leer.</translation>
    </message>
    <message>
        <source>The session is paused already.</source>
        <translation>Das Treffen ist schon unterbrochen.</translation>
    </message>
    <message>
        <source>Not something that happens at the table.</source>
        <translation>So etwas geschieht am Tisch nicht.</translation>
    </message>
    <message>
        <source>The session has started already.</source>
        <translation>Das Treffen hat schon begonnen.</translation>
    </message>
    <message>
        <source>Nobody called %1 is among the helpers; add them first.</source>
        <translation>%1 ist nicht unter den Helfenden; zuerst hinzufügen.</translation>
    </message>
    <message>
        <source>There is no quilt %1.</source>
        <translation>Es gibt keinen Quilt %1.</translation>
    </message>
    <message>
        <source>Pass %1 is not on the table.</source>
        <translation>Durchgang %1 liegt nicht auf dem Tisch.</translation>
    </message>
    <message>
        <source>The new plan cannot be read: %1</source>
        <translation>Der neue Plan ist nicht lesbar: %1</translation>
    </message>
    <message>
        <source>The session of the new plan cannot be read.</source>
        <translation>Die Angaben zum neuen Plan sind nicht lesbar.</translation>
    </message>
    <message>
        <source>The new plan is for %1 quilts, not %2.</source>
        <translation>Der neue Plan gilt für %1 Quilts, nicht für %2.</translation>
    </message>
    <message>
        <source>The new plan leaves out zone %1, which is begun.</source>
        <translation>Der neue Plan lässt Zone %1 weg, die angefangen ist.</translation>
    </message>
    <message>
        <source>The changed setting cannot be read: %1</source>
        <translation>Die geänderten Angaben sind nicht lesbar: %1</translation>
    </message>
    <message>
        <source>The changed setting is for %1 quilts, not %2.</source>
        <translation>Die geänderten Angaben gelten für %1 Quilts, nicht für %2.</translation>
    </message>
    <message>
        <source>dotted</source>
        <translation>geklebt</translation>
    </message>
    <message>
        <source>opened</source>
        <translation>gesteckt</translation>
    </message>
    <message>
        <source>closed</source>
        <translation>geschlossen</translation>
    </message>
    <message>
        <source>pressed from the back</source>
        <translation>von hinten gebügelt</translation>
    </message>
    <message>
        <source>waiting</source>
        <translation>noch nicht begonnen</translation>
    </message>
    <message>
        <source>dotted at the lower face</source>
        <translation>unten geklebt</translation>
    </message>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>the palm does not glide</source>
        <translation>die Handfläche gleitet nicht</translation>
    </message>
    <message>
        <source>it does not lie flat underneath</source>
        <translation>unten liegt es nicht glatt</translation>
    </message>
    <message>
        <source>the overage is not as planned</source>
        <translation>der Überstand ist nicht wie geplant</translation>
    </message>
    <message>
        <source>%1 before %2 of pass %3 was ticked.</source>
        <translation>%1, bevor abgehakt war: %2 in Durchgang %3.</translation>
    </message>
    <message>
        <source>The plan has no task %1.</source>
        <translation>Der Plan hat keine Aufgabe %1.</translation>
    </message>
    <message>
        <source>Task %1 is work on zone %2; tick the zone.</source>
        <translation>Aufgabe %1 ist Arbeit an Zone %2; die Zone abhaken.</translation>
    </message>
    <message>
        <source>%1 of pass %2 is ticked already.</source>
        <translation>%1 in Durchgang %2 ist schon abgehakt.</translation>
    </message>
    <message>
        <source>%1 belongs to pass %2; pass %3 is on the table.</source>
        <translation>%1 gehört zu Durchgang %2; auf dem Tisch liegt Durchgang %3.</translation>
    </message>
    <message>
        <source>%1 of pass %2 is not done: %3. Put it right and answer again.</source>
        <translation>%1 in Durchgang %2 ist nicht fertig: %3. In Ordnung bringen und neu antworten.</translation>
    </message>
    <message>
        <source>%1 of pass %2 has to wait for the zones %3.</source>
        <translation>%1 in Durchgang %2 muss auf die Zonen %3 warten.</translation>
    </message>
    <message>
        <source>%1 was ticked</source>
        <translation>%1 wurde abgehakt</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not asked at %2.</source>
        <translation>„%1“ wird hier nicht gefragt: %2.</translation>
    </message>
    <message>
        <source>An answer is 1 for yes or 0 for no, not %1.</source>
        <translation>Eine Antwort ist 1 für Ja oder 0 für Nein, nicht %1.</translation>
    </message>
    <message>
        <source>The plan has no zone %1 in quilt %2.</source>
        <translation>Der Plan hat in Quilt %2 keine Zone %1.</translation>
    </message>
    <message>
        <source>Zone %1 is pinned, not dotted.</source>
        <translation>Zone %1 wird gesteckt, nicht geklebt.</translation>
    </message>
    <message>
        <source>Zone %1 was left out with its pass; take that back to work it.</source>
        <translation>Zone %1 wurde mit ihrem Durchgang weggelassen; das erst zurücknehmen.</translation>
    </message>
    <message>
        <source>Zone %1 is %2, so it cannot be %3 now.</source>
        <translation>Zone %1 ist %2 und kann jetzt nicht %3 werden.</translation>
    </message>
    <message>
        <source>Zone %1 belongs to pass %2, which is not on the table now.</source>
        <translation>Zone %1 gehört zu Durchgang %2, der jetzt nicht auf dem Tisch liegt.</translation>
    </message>
    <message>
        <source>Zone %1 is not pressed from the back in this plan.</source>
        <translation>Zone %1 wird in diesem Plan nicht von hinten gebügelt.</translation>
    </message>
    <message>
        <source>Zone %1 was %2</source>
        <translation>Zone %1 wurde %2</translation>
    </message>
    <message>
        <source>Pass %1 is not on the table; pass %2 is.</source>
        <translation>Durchgang %1 liegt nicht auf dem Tisch, sondern Durchgang %2.</translation>
    </message>
    <message>
        <source>One zone of pass %1 is not done: %2.</source>
        <translation>Eine Zone von Durchgang %1 ist nicht fertig: %2.</translation>
    </message>
    <message>
        <source>%3 zones of pass %1 are not done: %2.</source>
        <translation>%3 Zonen von Durchgang %1 sind nicht fertig: %2.</translation>
    </message>
    <message>
        <source>%1 of pass %2 has not been ticked.</source>
        <translation>%1 in Durchgang %2 ist nicht abgehakt.</translation>
    </message>
    <message>
        <source>It is %1 since the last break: five minutes off their feet do everybody good. Irons off first.</source>
        <translation>Die letzte Pause ist %1 her: Fünf Minuten Sitzen tun allen gut. Vorher Bügeleisen aus.</translation>
    </message>
    <message>
        <source>Zone %1 has been with %2 for %3 instead of %4: perhaps somebody can lend a hand, or it is done and not ticked.</source>
        <translation>Zone %1 ist bei %2 seit %3 statt %4: Vielleicht kann jemand helfen, oder sie ist fertig und nicht abgehakt.</translation>
    </message>
    <message>
        <source>At this pace the work ends %1 later than planned: planning the rest again may win some of it back.</source>
        <translation>Bei diesem Tempo endet die Arbeit %1 später als geplant: Den Rest neu zu planen holt vielleicht etwas auf.</translation>
    </message>
    <message>
        <source>%1 pins are still to be placed and %2 are left: fetch %3 more, or plan the rest with wider spacing.</source>
        <translation>%1 Nadeln sind noch zu stecken, %2 sind übrig: %3 mehr holen oder den Rest mit weiterem Abstand planen.</translation>
    </message>
    <message>
        <source>Run a flat palm lightly over both faces of the quilt, look into its folds, under the tables and in clothes, then sweep the floor with a magnet. A magnet is not for anybody with a pacemaker or another medical implant, and is kept away from phones and cards. Check the quilt again before it goes under a needle.</source>
        <translation>Mit flacher Hand leicht über beide Seiten des Quilts fahren, in Falten, unter den Tischen und in Kleidern nachsehen, dann den Boden mit einem Magneten absuchen. Ein Magnet ist nichts für Menschen mit Herzschrittmacher oder anderem Implantat und bleibt von Telefonen und Karten fern. Den Quilt noch einmal prüfen, bevor er unter eine Nadel kommt.</translation>
    </message>
    <message>
        <source>One pin is missing. Look before anybody sits down or walks barefoot, and keep children and pets out until it is found. %1</source>
        <translation>Eine Nadel fehlt. Suchen, bevor sich jemand setzt oder barfuß geht; Kinder und Tiere fernhalten, bis sie gefunden ist. %1</translation>
    </message>
    <message>
        <source>%1 pins are missing. Look before anybody sits down or walks barefoot, and keep children and pets out until they are found. %2</source>
        <translation>%1 Nadeln fehlen. Suchen, bevor sich jemand setzt oder barfuß geht; Kinder und Tiere fernhalten, bis sie gefunden sind. %2</translation>
    </message>
    <message>
        <source>%1 pins are still to be placed, and %2 are left.</source>
        <translation>%1 Nadeln sind noch zu stecken, und %2 sind übrig.</translation>
    </message>
    <message>
        <source>Fetch %1 more.</source>
        <translation>%1 mehr holen.</translation>
    </message>
    <message>
        <source>The plan stands on tables that are not in the room any more.</source>
        <translation>Der Plan steht auf Tischen, die nicht mehr im Raum sind.</translation>
    </message>
    <message>
        <source>the laying of the backing</source>
        <translation>das Auflegen der Rückseite</translation>
    </message>
    <message>
        <source>the laying of the batting</source>
        <translation>das Auflegen des Vlieses</translation>
    </message>
    <message>
        <source>the laying of the top</source>
        <translation>das Auflegen des Tops</translation>
    </message>
    <message>
        <source>the moving of the clamps to all three layers</source>
        <translation>das Umsetzen der Klemmen auf alle drei Lagen</translation>
    </message>
    <message>
        <source>the placing of the pins</source>
        <translation>das Stecken der Nadeln</translation>
    </message>
    <message>
        <source>the smoothing</source>
        <translation>das Glattstreichen</translation>
    </message>
    <message>
        <source>the closing of the pins</source>
        <translation>das Schließen der Nadeln</translation>
    </message>
    <message>
        <source>the check underneath</source>
        <translation>das Nachsehen unten</translation>
    </message>
    <message>
        <source>the shift</source>
        <translation>das Weiterschieben</translation>
    </message>
    <message>
        <source>the folding back</source>
        <translation>das Zurückschlagen</translation>
    </message>
    <message>
        <source>the dotting of the lower face</source>
        <translation>das Kleben unten</translation>
    </message>
    <message>
        <source>the folding forward</source>
        <translation>das Klappen nach vorn</translation>
    </message>
    <message>
        <source>the dotting of the upper face</source>
        <translation>das Kleben oben</translation>
    </message>
    <message>
        <source>the pressing</source>
        <translation>das Bügeln</translation>
    </message>
    <message>
        <source>the cooling</source>
        <translation>das Abkühlen</translation>
    </message>
    <message>
        <source>the turning over</source>
        <translation>das Wenden</translation>
    </message>
    <message>
        <source>The laying of the backing</source>
        <translation>Das Auflegen der Rückseite</translation>
    </message>
    <message>
        <source>The laying of the batting</source>
        <translation>Das Auflegen des Vlieses</translation>
    </message>
    <message>
        <source>The laying of the top</source>
        <translation>Das Auflegen des Tops</translation>
    </message>
    <message>
        <source>The moving of the clamps to all three layers</source>
        <translation>Das Umsetzen der Klemmen auf alle drei Lagen</translation>
    </message>
    <message>
        <source>The placing of the pins</source>
        <translation>Das Stecken der Nadeln</translation>
    </message>
    <message>
        <source>The smoothing</source>
        <translation>Das Glattstreichen</translation>
    </message>
    <message>
        <source>The closing of the pins</source>
        <translation>Das Schließen der Nadeln</translation>
    </message>
    <message>
        <source>The check underneath</source>
        <translation>Das Nachsehen unten</translation>
    </message>
    <message>
        <source>The shift</source>
        <translation>Das Weiterschieben</translation>
    </message>
    <message>
        <source>The folding back</source>
        <translation>Das Zurückschlagen</translation>
    </message>
    <message>
        <source>The dotting of the lower face</source>
        <translation>Das Kleben unten</translation>
    </message>
    <message>
        <source>The folding forward</source>
        <translation>Das Klappen nach vorn</translation>
    </message>
    <message>
        <source>The dotting of the upper face</source>
        <translation>Das Kleben oben</translation>
    </message>
    <message>
        <source>The pressing</source>
        <translation>Das Bügeln</translation>
    </message>
    <message>
        <source>The cooling</source>
        <translation>Das Abkühlen</translation>
    </message>
    <message>
        <source>The turning over</source>
        <translation>Das Wenden</translation>
    </message>
    <message>
        <source>placing of zone %1</source>
        <translation>das Stecken von Zone %1</translation>
    </message>
    <message>
        <source>placing of zones %1</source>
        <translation>das Stecken der Zonen %1</translation>
    </message>
    <message>
        <source>closing of zone %1</source>
        <translation>das Schließen von Zone %1</translation>
    </message>
    <message>
        <source>closing of zones %1</source>
        <translation>das Schließen der Zonen %1</translation>
    </message>
    <message>
        <source>pressing of zone %1</source>
        <translation>das Bügeln von Zone %1</translation>
    </message>
    <message>
        <source>pressing of zones %1</source>
        <translation>das Bügeln der Zonen %1</translation>
    </message>
    <message>
        <source>dotting of zone %1</source>
        <translation>das Kleben von Zone %1</translation>
    </message>
    <message>
        <source>dotting of zones %1</source>
        <translation>das Kleben der Zonen %1</translation>
    </message>
    <message>
        <source>Nobody has %1, which was with %2.</source>
        <translation>Niemand hat mehr, was bei %2 war: %1.</translation>
    </message>
    <message>
        <source>Nobody has %1, which were with %2.</source>
        <translation>Niemand hat mehr, was bei %2 war: %1.</translation>
    </message>
    <message>
        <source>%1 takes over %2.</source>
        <translation>%1 übernimmt %2.</translation>
    </message>
    <message>
        <source>%1 take over %2.</source>
        <translation>%1 übernehmen %2.</translation>
    </message>
    <message>
        <source>%1 takes over %2 from %3.</source>
        <translation>%1 übernimmt %2 von %3.</translation>
    </message>
    <message>
        <source>%1 take over %2 from %3.</source>
        <translation>%1 übernehmen %2 von %3.</translation>
    </message>
    <message>
        <source>%1 into pass %2</source>
        <translation>%1 zu Durchgang %2</translation>
    </message>
    <message>
        <source>%1 of pass %2</source>
        <translation>%1 in Durchgang %2</translation>
    </message>
    <message>
        <source>%1 is no longer in %2.</source>
        <translation>%1 ist nicht mehr dabei: %2.</translation>
    </message>
    <message>
        <source>%1 are no longer in %2.</source>
        <translation>%1 sind nicht mehr dabei: %2.</translation>
    </message>
    <message>
        <source>%1 is now in %2.</source>
        <translation>%1 ist jetzt dabei: %2.</translation>
    </message>
    <message>
        <source>%1 are now in %2.</source>
        <translation>%1 sind jetzt dabei: %2.</translation>
    </message>
    <message>
        <source>%1 is now in %2 instead of %3.</source>
        <translation>%1 ist jetzt statt %3 dabei: %2.</translation>
    </message>
    <message>
        <source>%1 are now in %2 instead of %3.</source>
        <translation>%1 sind jetzt statt %3 dabei: %2.</translation>
    </message>
    <message>
        <source>The work is planned to end %1 earlier.</source>
        <translation>Die Arbeit endet nach Plan %1 früher.</translation>
    </message>
    <message>
        <source>The work is planned to end %1 later.</source>
        <translation>Die Arbeit endet nach Plan %1 später.</translation>
    </message>
    <message>
        <source>1 join runs along a backing seam; no layout that was tried avoids it.</source>
        <translation>1 Stoß läuft auf einer Rückseitennaht; keine geprüfte Aufteilung vermeidet es.</translation>
    </message>
    <message>
        <source>%1 joins run along a backing seam; no layout that was tried avoids it.</source>
        <translation>%1 Stöße laufen auf einer Rückseitennaht; keine geprüfte Aufteilung vermeidet es.</translation>
    </message>
    <message>
        <source>%1 keeps to one side of the table and does not reach all of zone %2 from there.</source>
        <translation>%1 bleibt an einer Tischseite und erreicht Zone %2 von dort nicht ganz.</translation>
    </message>
    <message>
        <source>The batting is %1 wide</source>
        <translation>Das Vlies ist %1 breit</translation>
    </message>
    <message>
        <source>The batting is %1 long</source>
        <translation>Das Vlies ist %1 lang</translation>
    </message>
    <message>
        <source>The backing is %1 wide once it is washed</source>
        <translation>Die Rückseite ist gewaschen %1 breit</translation>
    </message>
    <message>
        <source>The backing is %1 long once it is washed</source>
        <translation>Die Rückseite ist gewaschen %1 lang</translation>
    </message>
    <message>
        <source>The backing is %1 wide</source>
        <translation>Die Rückseite ist %1 breit</translation>
    </message>
    <message>
        <source>The backing is %1 long</source>
        <translation>Die Rückseite ist %1 lang</translation>
    </message>
    <message>
        <source>the top, which is not square, takes up %1</source>
        <translation>das Top, das nicht rechtwinklig ist, braucht %1</translation>
    </message>
    <message>
        <source>the top %1</source>
        <translation>das Top %1</translation>
    </message>
    <message>
        <source>as was asked for</source>
        <translation>wie gewünscht</translation>
    </message>
    <message>
        <source>is %1 while length is %2; up to the length is accepted.</source>
        <translation>ist %1, während length %2 ist; möglich ist höchstens die Länge.</translation>
    </message>
    <message>
        <source>The quilt cannot lie along the tables as you chose; the plan turns it.</source>
        <translation>Der Quilt kann nicht so zum Tisch liegen wie gewählt; der Plan dreht ihn.</translation>
    </message>
    <message>
        <source>Let it lie the faster way.</source>
        <translation>Den Quilt so legen, wie es schneller geht.</translation>
    </message>
    <message>
        <source>The tables cannot be used pushed together to %1, as you chose; the plan uses %2.</source>
        <translation>Zu %1 zusammengeschoben, wie gewählt, gehen die Tische nicht; der Plan nimmt %2.</translation>
    </message>
    <message>
        <source>Let the tables stand as is quickest.</source>
        <translation>Die Tische so stellen, wie es am schnellsten geht.</translation>
    </message>
    <message>
        <source>a form and what stands in its places, as a list in [], of up to %1 bytes together is accepted</source>
        <translation>möglich ist eine Form mit dem, was in ihren Lücken steht, als Liste in [], zusammen bis %1 Bytes</translation>
    </message>
    <message>
        <source>No backup could be made</source>
        <translation>Eine Sicherung war nicht möglich</translation>
    </message>
    <message>
        <source>No backup could be made: %1.</source>
        <translation>Eine Sicherung war nicht möglich: %1.</translation>
    </message>
    <message>
        <source>There is no folder for the library: neither XDG_DATA_HOME nor HOME holds an absolute path. Set one of them.</source>
        <translation>Es gibt keinen Ordner für die Bibliothek: Weder XDG_DATA_HOME noch HOME enthält einen vollständigen Pfad. Eines davon setzen.</translation>
    </message>
    <message>
        <source>The quilts could not be listed</source>
        <translation>Die Quilts ließen sich nicht auflisten</translation>
    </message>
    <message>
        <source>There is no quilt number %1 in the library; list the quilts again.</source>
        <translation>In der Bibliothek ist kein Quilt Nummer %1; die Quilts neu auflisten.</translation>
    </message>
    <message>
        <source>The quilt could not be saved</source>
        <translation>Der Quilt ließ sich nicht speichern</translation>
    </message>
    <message>
        <source>The quilt could not be read</source>
        <translation>Der Quilt ließ sich nicht lesen</translation>
    </message>
    <message>
        <source>The quilt could not be removed</source>
        <translation>Der Quilt ließ sich nicht entfernen</translation>
    </message>
    <message>
        <source>The quilt could not be brought back</source>
        <translation>Der Quilt ließ sich nicht zurückholen</translation>
    </message>
    <message>
        <source>The setting %1 could not be read</source>
        <translation>Die Einstellung %1 ließ sich nicht lesen</translation>
    </message>
    <message>
        <source>The setting %1 could not be kept</source>
        <translation>Die Einstellung %1 ließ sich nicht speichern</translation>
    </message>
    <message>
        <source>The library %1 cannot be kept safely where it is: write-ahead logging stays &quot;%2&quot; there. Choose a folder on this machine&apos;s own disk.</source>
        <translation>Die Bibliothek %1 ist an diesem Ort nicht sicher: Das Vorausprotokoll bleibt dort „%2“. Einen Ordner auf der eigenen Platte dieses Geräts wählen.</translation>
    </message>
    <message>
        <source>The library %1 cannot be kept safely: this build of SQLite does not offer full synchronization and foreign keys.</source>
        <translation>Die Bibliothek %1 ist nicht sicher: Dieses SQLite bietet weder volle Synchronisation noch Fremdschlüssel.</translation>
    </message>
    <message>
        <source>The library %1 was written by a newer version of the program. Open it with that version.</source>
        <translation>Die Bibliothek %1 stammt von einer neueren Fassung des Programms. Mit dieser öffnen.</translation>
    </message>
    <message>
        <source>The file %1 is another program&apos;s database, not a library. Move it away or choose another folder.</source>
        <translation>Die Datei %1 ist die Datenbank eines anderen Programms, keine Bibliothek. Wegräumen oder einen anderen Ordner wählen.</translation>
    </message>
    <message>
        <source>The library %1 could not be opened</source>
        <translation>Die Bibliothek %1 ließ sich nicht öffnen</translation>
    </message>
    <message>
        <source>The library %1 is damaged, and another window of the program still has it open. Close every window and start again; what can be saved is then saved.</source>
        <translation>Die Bibliothek %1 ist beschädigt, und ein anderes Fenster des Programms hat sie noch offen. Alle Fenster schließen und neu starten; was zu retten ist, wird dann gerettet.</translation>
    </message>
    <message>
        <source>The folder %1 for the library could not be made: %2. Choose another folder or ask for the right to write there.</source>
        <translation>Der Ordner %1 für die Bibliothek ließ sich nicht anlegen: %2. Einen anderen Ordner wählen oder um das Recht bitten, dort zu schreiben.</translation>
    </message>
    <message>
        <source>There is a folder where the library %1 should be. Move it away.</source>
        <translation>Wo die Bibliothek %1 sein soll, ist ein Ordner. Wegräumen.</translation>
    </message>
    <message>
        <source>Another window of the program is mending the library %1. Try again in a moment.</source>
        <translation>Ein anderes Fenster des Programms repariert gerade die Bibliothek %1. Gleich noch einmal versuchen.</translation>
    </message>
    <message>
        <source>The library is damaged and no new one could be made</source>
        <translation>Die Bibliothek ist beschädigt, und eine neue ließ sich nicht anlegen</translation>
    </message>
    <message>
        <source>The library is damaged and no new one could be made: %1.</source>
        <translation>Die Bibliothek ist beschädigt, und eine neue ließ sich nicht anlegen: %1.</translation>
    </message>
    <message>
        <source>The library %1 is damaged and could not be mended: %2.</source>
        <translation>Die Bibliothek %1 ist beschädigt und ließ sich nicht reparieren: %2.</translation>
    </message>
    <message>
        <source>%1: another file has taken the place of the library %2 while the program used it. What the program still held is kept as %3. Close every window and start again.</source>
        <translation>%1: Am Ort der Bibliothek %2 ist jetzt eine andere Datei, obwohl das Programm sie noch brauchte. Was das Programm noch hatte, liegt als %3 daneben. Alle Fenster schließen und neu starten.</translation>
    </message>
    <message>
        <source>%1: the library %2 was removed while several windows of the program had it open. Close the other windows, then try again.</source>
        <translation>%1: Die Bibliothek %2 wurde entfernt, während mehrere Fenster des Programms sie offen hatten. Die anderen Fenster schließen, dann noch einmal versuchen.</translation>
    </message>
    <message>
        <source>%1: the library %2 had been removed while the program used it. It has been put back with everything in it; try again.</source>
        <translation>%1: Die Bibliothek %2 war entfernt worden, während das Programm sie brauchte. Sie ist mit allem, was darin war, wieder da; noch einmal versuchen.</translation>
    </message>
    <message>
        <source>%1: the library %2 was removed while the program used it, and it could not be put back: %3.</source>
        <translation>%1: Die Bibliothek %2 wurde entfernt, während das Programm sie brauchte, und ließ sich nicht zurücklegen: %3.</translation>
    </message>
    <message>
        <source>%1, %2 and %3</source>
        <translation>%1, %2 und %3</translation>
    </message>
    <message>
        <source>1 quilt</source>
        <translation>1 Quilt</translation>
    </message>
    <message>
        <source>%1 quilts</source>
        <translation>%1 Quilts</translation>
    </message>
    <message>
        <source>1 session</source>
        <translation>1 Treffen</translation>
    </message>
    <message>
        <source>%1 sessions</source>
        <translation>%1 Treffen</translation>
    </message>
    <message>
        <source>1 event</source>
        <translation>1 Ereignis</translation>
    </message>
    <message>
        <source>%1 events</source>
        <translation>%1 Ereignisse</translation>
    </message>
    <message>
        <source>There was no library where it should be; a new one has taken its place</source>
        <translation>Wo die Bibliothek sein soll, war keine; an ihrer Stelle ist jetzt eine neue</translation>
    </message>
    <message>
        <source>The library was damaged (%1) and was put aside as %2; a new one has taken its place</source>
        <translation>Die Bibliothek war beschädigt (%1) und liegt jetzt als %2 beiseite; an ihrer Stelle ist eine neue</translation>
    </message>
    <message>
        <source>%1, made from the last backup (%2) and what could still be read after it (%3).</source>
        <translation>%1, aus der letzten Sicherung (%2) und dem, was danach noch lesbar war (%3).</translation>
    </message>
    <message>
        <source>%1, made from the last backup (%2).</source>
        <translation>%1, aus der letzten Sicherung (%2).</translation>
    </message>
    <message>
        <source>%1, made from what could still be read (%2).</source>
        <translation>%1, aus dem, was noch lesbar war (%2).</translation>
    </message>
    <message>
        <source>%1, empty, because nothing could be read and there is no backup.</source>
        <translation>%1, leer, weil nichts lesbar war und es keine Sicherung gibt.</translation>
    </message>
    <message>
        <source>Compare the quilts and running sessions with what you remember before going on.</source>
        <translation>Vor dem Weitermachen die Quilts und laufenden Treffen mit der Erinnerung vergleichen.</translation>
    </message>
    <message>
        <source>There is no session number %1 in the library.</source>
        <translation>In der Bibliothek ist kein Treffen Nummer %1.</translation>
    </message>
    <message>
        <source>Event %1 of session %2 cannot be read: %3</source>
        <translation>Ereignis %1 des Treffens %2 ist nicht lesbar: %3</translation>
    </message>
    <message>
        <source>The sessions could not be listed</source>
        <translation>Die Treffen ließen sich nicht auflisten</translation>
    </message>
    <message>
        <source>The session could not be started</source>
        <translation>Das Treffen ließ sich nicht beginnen</translation>
    </message>
    <message>
        <source>The session could not be started: there is no quilt number %1 in the library.</source>
        <translation>Das Treffen ließ sich nicht beginnen: In der Bibliothek ist kein Quilt Nummer %1.</translation>
    </message>
    <message>
        <source>The session could not be read</source>
        <translation>Das Treffen ließ sich nicht lesen</translation>
    </message>
    <message>
        <source>An event without an id cannot be stored.</source>
        <translation>Ein Ereignis ohne Kennung lässt sich nicht speichern.</translation>
    </message>
    <message>
        <source>The tick could not be stored</source>
        <translation>Der Haken ließ sich nicht speichern</translation>
    </message>
    <message>
        <source>Another event is stored under the id %1; every event needs its own.</source>
        <translation>Unter der Kennung %1 ist ein anderes Ereignis gespeichert; jedes braucht seine eigene.</translation>
    </message>
    <message>
        <source>The session&apos;s events could not be read</source>
        <translation>Die Ereignisse des Treffens ließen sich nicht lesen</translation>
    </message>
    <message>
        <source>%1: the disk is full. Free some space and try again.</source>
        <translation>%1: Die Platte ist voll. Platz schaffen und noch einmal versuchen.</translation>
    </message>
    <message>
        <source>%1: the library or its folder cannot be written to. Check who may write there, then try again.</source>
        <translation>%1: In die Bibliothek oder ihren Ordner lässt sich nicht schreiben. Nachsehen, wer dort schreiben darf, dann noch einmal versuchen.</translation>
    </message>
    <message>
        <source>%1: another window of the program is writing to the library. Try again in a moment.</source>
        <translation>%1: Ein anderes Fenster des Programms schreibt gerade in die Bibliothek. Gleich noch einmal versuchen.</translation>
    </message>
    <message>
        <source>%1: the library is damaged. Close every window of the program and start it again; what can be saved is then saved.</source>
        <translation>%1: Die Bibliothek ist beschädigt. Alle Fenster des Programms schließen und neu starten; was zu retten ist, wird dann gerettet.</translation>
    </message>
    <message>
        <source>%1: the disk reported an error. Check that it is still there, then try again.</source>
        <translation>%1: Die Platte meldet einen Fehler. Nachsehen, ob sie noch da ist, dann noch einmal versuchen.</translation>
    </message>
    <message>
        <source>%1: the library reported &quot;%2&quot;.</source>
        <translation>%1: Die Bibliothek meldet „%2“.</translation>
    </message>
    <message>
        <source>it is empty</source>
        <translation>sie ist leer</translation>
    </message>
    <message>
        <source>it is gone</source>
        <translation>sie ist weg</translation>
    </message>
    <message>
        <source>Quilt</source>
        <translation>Quilt</translation>
    </message>
    <message>
        <source>cannot be right: the blocks alone need %1 across, and the top measures %2.</source>
        <translation>kann nicht stimmen: Die Blöcke allein brauchen %1 in der Breite, das Top misst %2.</translation>
    </message>
    <message>
        <source>cannot be right: the blocks alone need %1 from head to foot, and the top measures %2.</source>
        <translation>kann nicht stimmen: Die Blöcke allein brauchen %1 vom Kopf zum Fuß, das Top misst %2.</translation>
    </message>
    <message>
        <source>makes %1 across and the top measures %2, so the borders at left and right come out %3 wide, not %4.</source>
        <translation>ergibt %1 in der Breite, das Top misst %2; der Rand wird deshalb links und rechts %3 breit statt %4.</translation>
    </message>
    <message>
        <source>makes %1 from head to foot and the top measures %2, so the borders at head and foot come out %3 wide, not %4.</source>
        <translation>ergibt %1 vom Kopf zum Fuß, das Top misst %2; der Rand wird deshalb an Kopf und Fuß %3 breit statt %4.</translation>
    </message>
    <message>
        <source>asks for the size of a grid, and there is none.</source>
        <translation>verlangt die Größe eines Rasters, und es gibt keines.</translation>
    </message>
    <message>
        <source>Pieces narrower than %1 are sewn in; no layout of this fabric avoids it.</source>
        <translation>Es werden Teile eingenäht, die schmaler als %1 sind; mit diesem Stoff geht es nicht anders.</translation>
    </message>
    <message>
        <source>There is no way to piece a backing of %1 × %2 from the fabric we have, and none of it can be bought.</source>
        <translation>Aus dem Stoff, den wir haben, lässt sich keine Rückseite von %1 × %2 zusammensetzen, und nachkaufen lässt sich keiner.</translation>
    </message>
    <message>
        <source>A wider fabric is needed.</source>
        <translation>Es braucht einen breiteren Stoff.</translation>
    </message>
    <message>
        <source>The way chosen before, %1 with 1 seam, is not offered for these sizes and this fabric; the best way is taken.</source>
        <translation>Die früher gewählte Variante, %1 mit 1 Naht, gibt es bei diesen Maßen und diesem Stoff nicht; die beste wird genommen.</translation>
    </message>
    <message>
        <source>The way chosen before, %1 with %2 seams, is not offered for these sizes and this fabric; the best way is taken.</source>
        <translation>Die früher gewählte Variante, %1 mit %2 Nähten, gibt es bei diesen Maßen und diesem Stoff nicht; die beste wird genommen.</translation>
    </message>
    <message>
        <source>No backing fabric is listed, so one of %1 usable width is taken.</source>
        <translation>Es ist kein Rückseitenstoff eingetragen; angenommen wird einer von %1 nutzbarer Breite.</translation>
    </message>
    <message>
        <source>A backing seam lies within %1 of a table join or a batting join; no layout as good keeps away.</source>
        <translation>Eine Naht der Rückseite liegt näher als %1 an einer Tischfuge oder einem Stoß im Vlies; ebenso gut geht es nicht anders.</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1: %2.</translation>
    </message>
    <message>
        <source>The narrowest piece is %1; more than 0 is accepted.</source>
        <translation>Das schmalste Teil ist %1; möglich ist mehr als 0.</translation>
    </message>
    <message>
        <source>A seam is worth %1 of fabric; 0 or more is accepted.</source>
        <translation>Eine Naht zählt wie %1 Stoff; möglich ist 0 oder mehr.</translation>
    </message>
    <message>
        <source>Squaring off only %1 of each length would save %2.</source>
        <translation>Nur %1 je Bahn zum Begradigen würde %2 sparen.</translation>
    </message>
    <message>
        <source>Lengths that are square as they are cut would save %1.</source>
        <translation>Bahnen, die gerade geschnitten sind, würden %1 sparen.</translation>
    </message>
    <message>
        <source>%1, with a strip %2 wide</source>
        <translation>%1, mit einem Streifen von %2 Breite</translation>
    </message>
    <message>
        <source>%1 of another fabric</source>
        <translation>%1 aus einem anderen Stoff</translation>
    </message>
    <message>
        <source>%1, pieced from %2 lengths</source>
        <translation>%1, zusammengesetzt aus %2 Stücken</translation>
    </message>
    <message>
        <source>as many seams</source>
        <translation>ebenso viele Nähte</translation>
    </message>
    <message>
        <source>1 seam more</source>
        <translation>1 Naht mehr</translation>
    </message>
    <message>
        <source>1 seam fewer</source>
        <translation>1 Naht weniger</translation>
    </message>
    <message>
        <source>%1 seams more</source>
        <translation>%1 Nähte mehr</translation>
    </message>
    <message>
        <source>%1 seams fewer</source>
        <translation>%1 Nähte weniger</translation>
    </message>
    <message>
        <source>fabric %1 wide</source>
        <translation>Stoff von %1 Breite</translation>
    </message>
    <message>
        <source>a strip %1 × %2 of another fabric, in one piece or several</source>
        <translation>ein Streifen von %1 × %2 aus einem anderen Stoff, in einem oder mehreren Stücken</translation>
    </message>
    <message>
        <source>%1 for %2</source>
        <translation>%1 für %2</translation>
    </message>
    <message>
        <source>saves %1, %2</source>
        <translation>spart %1, %2</translation>
    </message>
    <message>
        <source>costs %1 more, %2</source>
        <translation>kostet %1 mehr, %2</translation>
    </message>
    <message>
        <source>as much fabric, %1</source>
        <translation>ebenso viel Stoff, %1</translation>
    </message>
    <message>
        <source>takes %1 more, %2</source>
        <translation>braucht %1 mehr, %2</translation>
    </message>
    <message>
        <source>%1 from what we have</source>
        <translation>%1 aus dem, was wir haben</translation>
    </message>
    <message>
        <source>%1, %2 wide without selvages</source>
        <translation>%1, %2 breit ohne Webkanten</translation>
    </message>
    <message>
        <source>%1, with %2 for squaring each cut end</source>
        <translation>%1, dazu je %2 zum Begradigen</translation>
    </message>
    <message>
        <source>%1 and %2 % for shrinking</source>
        <translation>%1 und %2 % fürs Einlaufen</translation>
    </message>
    <message>
        <source>%1, one cut lengthwise, half on each side</source>
        <translation>%1, eine längs halbiert, je eine Hälfte auf jeder Seite</translation>
    </message>
    <message>
        <source>What was asked for does not make the %1 needed, not even two joined, so the batting is planned otherwise.</source>
        <translation>Das Gewünschte ergibt die nötigen %1 nicht, auch nicht zwei aneinandergesetzt; das Vlies ist deshalb anders geplant.</translation>
    </message>
    <message>
        <source>No pack and no roll makes the %1 needed.</source>
        <translation>Keine Packung und keine Rolle ergibt die nötigen %1.</translation>
    </message>
    <message>
        <source>Enter a wider roll.</source>
        <translation>Eine breitere Rolle eintragen.</translation>
    </message>
    <message>
        <source>No pack is called &apos;%1&apos;; accepted are %2, or a size such as %3.</source>
        <translation>Keine Packung heißt „%1“; möglich sind %2 oder eine Größe wie %3.</translation>
    </message>
    <message>
        <source>%1 Or buy new: %2</source>
        <translation>%1 Oder neu kaufen: %2</translation>
    </message>
    <message>
        <source>The join takes %1 of joining strip and about %2.</source>
        <translation>Der Stoß braucht %1 Verbindungsband und etwa %2.</translation>
    </message>
    <message>
        <source>The %1 joins take %2 of joining strip and about %3.</source>
        <translation>Die %1 Stöße brauchen %2 Verbindungsband und etwa %3.</translation>
    </message>
    <message>
        <source>no join</source>
        <translation>kein Stoß</translation>
    </message>
    <message>
        <source>1 join, %1 of joining strip</source>
        <translation>1 Stoß, %1 Verbindungsband</translation>
    </message>
    <message>
        <source>%1 joins, %2 of joining strip</source>
        <translation>%1 Stöße, %2 Verbindungsband</translation>
    </message>
    <message>
        <source>%1 off a roll %2 wide</source>
        <translation>%1 von der Rolle, %2 breit</translation>
    </message>
    <message>
        <source>a %1 pack, %2</source>
        <translation>eine Packung „%1“, %2</translation>
    </message>
    <message>
        <source>a pack of %1</source>
        <translation>eine Packung von %1</translation>
    </message>
    <message>
        <source>%1 of these: %2.</source>
        <translation>%1-mal: %2.</translation>
    </message>
    <message>
        <source>two joined, each %1: %2.</source>
        <translation>zwei aneinandergesetzt, je %1: %2.</translation>
    </message>
    <message>
        <source>%1, with a strip %2 wide: %3.</source>
        <translation>%1, mit einem Streifen von %2 Breite: %3.</translation>
    </message>
    <message>
        <source>%1, with a strip %2 wide, pieced from %3 lengths: %4.</source>
        <translation>%1, mit einem Streifen von %2 Breite, zusammengesetzt aus %3 Stücken: %4.</translation>
    </message>
    <message>
        <source>%1, in %2 lengths: %3.</source>
        <translation>%1, in %2 Bahnen: %3.</translation>
    </message>
    <message>
        <source>batting off the roll, %1 wide</source>
        <translation>Vlies von der Rolle, %1 breit</translation>
    </message>
    <message>
        <source>%1 from the left and %2 from the head</source>
        <translation>%1 von links und %2 vom Kopf</translation>
    </message>
    <message>
        <source>1 single pin more: %1.</source>
        <translation>Dazu 1 einzelne Nadel: %1.</translation>
    </message>
    <message>
        <source>%1 single pins more: %2.</source>
        <translation>Dazu %1 einzelne Nadeln: %2.</translation>
    </message>
    <message>
        <source>1 single dot more: %1.</source>
        <translation>Dazu 1 einzelner Punkt: %1.</translation>
    </message>
    <message>
        <source>%1 single dots more: %2.</source>
        <translation>Dazu %1 einzelne Punkte: %2.</translation>
    </message>
    <message>
        <source>%1 × %2 (%3)</source>
        <translation>%1 × %2 (%3)</translation>
    </message>
    <message>
        <source>A mark is left out where its pin would come nearer than %1 to another.</source>
        <translation>Eine Marke fällt weg, wo ihre Nadel näher als %1 an eine andere käme.</translation>
    </message>
    <message>
        <source>A hand may be off by %1 before a place is too far from the nearest.</source>
        <translation>Jede darf um %1 danebenliegen, bevor eine Stelle zu weit von der nächsten entfernt ist.</translation>
    </message>
    <message>
        <source>One in the middle of every block</source>
        <translation>Eine in der Mitte jedes Blocks</translation>
    </message>
    <message>
        <source>Four in every block, two by two, %1 apart</source>
        <translation>Vier in jedem Block, zwei mal zwei, %1 voneinander</translation>
    </message>
    <message>
        <source>Four in every block, one toward each side, %1 from the middle</source>
        <translation>Vier in jedem Block, eine zu jeder Seite hin, %1 von der Mitte</translation>
    </message>
    <message>
        <source>Five in every block, as on a die, the four %1 from the middle each way</source>
        <translation>Fünf in jedem Block wie auf einem Würfel, die vier je %1 von der Mitte nach beiden Seiten</translation>
    </message>
    <message>
        <source>Five in every block, a cross with its arms %1 long</source>
        <translation>Fünf in jedem Block, ein Kreuz mit %1 langen Armen</translation>
    </message>
    <message>
        <source>Nine in every block, three by three, %1 apart</source>
        <translation>Neun in jedem Block, drei mal drei, %1 voneinander</translation>
    </message>
    <message>
        <source>Nine in every block: the middle, four on the cross %1 from it, four toward the corners %2 each way</source>
        <translation>Neun in jedem Block: die Mitte, vier im Kreuz %1 davon, vier zu den Ecken hin je %2 nach beiden Seiten</translation>
    </message>
    <message>
        <source>Eight in every block: four on the cross %1 from the middle, four toward the corners %2 each way</source>
        <translation>Acht in jedem Block: vier im Kreuz %1 von der Mitte, vier zu den Ecken hin je %2 nach beiden Seiten</translation>
    </message>
    <message>
        <source>%1 in every block, the same from every side (see the drawing)</source>
        <translation>%1 in jedem Block, von allen Seiten gleich (siehe Zeichnung)</translation>
    </message>
    <message>
        <source>one in every sashing strip</source>
        <translation>eine in jedem Zwischenstreifen</translation>
    </message>
    <message>
        <source>%1 in every sashing strip, evenly</source>
        <translation>%1 in jedem Zwischenstreifen, gleichmäßig verteilt</translation>
    </message>
    <message>
        <source>%1; %2, one where strips meet.</source>
        <translation>%1; %2, eine, wo Streifen sich treffen.</translation>
    </message>
    <message>
        <source>%1; one where sashing strips meet.</source>
        <translation>%1; eine, wo Zwischenstreifen sich treffen.</translation>
    </message>
    <message>
        <source>%1; %2.</source>
        <translation>%1; %2.</translation>
    </message>
    <message>
        <source>Along the %1, %2 in: one every %3, the first at %4.</source>
        <translation>An dieser Seite (%1), %2 vom Rand: alle %3 eine, die erste bei %4.</translation>
    </message>
    <message>
        <source>Left out, because a seam leaves no room there: %1.</source>
        <translation>Weggelassen, weil eine Naht dort keinen Platz lässt: %1.</translation>
    </message>
    <message>
        <source>No figure that is the same in every block covers this top with few enough; planned in rows.</source>
        <translation>Keine Figur, die in jedem Block gleich ist, kommt bei diesem Top mit wenig genug aus; geplant in Reihen.</translation>
    </message>
    <message>
        <source>Fewest pins, in no rows: %1 or fewer, not %2</source>
        <translation>So wenige Nadeln wie möglich, nicht in Reihen: %1 oder weniger statt %2</translation>
    </message>
    <message>
        <source>Fewest dots, in no rows: %1 or fewer, not %2</source>
        <translation>So wenige Punkte wie möglich, nicht in Reihen: %1 oder weniger statt %2</translation>
    </message>
    <message>
        <source>As few as possible, in no rows: %1 or fewer, not %2</source>
        <translation>So wenige wie möglich, nicht in Reihen: %1 oder weniger statt %2</translation>
    </message>
    <message>
        <source>no side of it is open</source>
        <translation>keine Seite davon ist frei</translation>
    </message>
    <message>
        <source>only the part within a reach of %1 can be worked, too little to shift the quilt along in %2 passes</source>
        <translation>nur der Teil innerhalb einer Reichweite von %1 lässt sich bearbeiten, zu wenig, um den Quilt in %2 Durchgängen weiterzuschieben</translation>
    </message>
    <message>
        <source>too little of it is inside the rim to shift the quilt along in %1 passes</source>
        <translation>zu wenig davon liegt innerhalb des Randes, um den Quilt in %1 Durchgängen weiterzuschieben</translation>
    </message>
    <message>
        <source>On the side at the wall nothing can hang or be clamped: in pass %1 the rest of the quilt on that side stays rolled up on top of the table.</source>
        <translation>An der Wandseite kann nichts hängen oder geklammert werden: In Durchgang %1 bleibt der Rest des Quilts dort aufgerollt auf dem Tisch liegen.</translation>
    </message>
    <message>
        <source>Pull the tables a foot away from the wall: then the quilt can hang down there.</source>
        <translation>Die Tische 30 cm von der Wand abrücken: Dann kann der Quilt dort hängen.</translation>
    </message>
    <message>
        <source>Nobody here works at the zones: everybody leads, walks round and checks.</source>
        <translation>Niemand hier arbeitet an den Zonen: Alle leiten an, gehen herum und prüfen.</translation>
    </message>
    <message>
        <source>Let one helper pin.</source>
        <translation>Jemanden Nadeln setzen lassen.</translation>
    </message>
    <message>
        <source>%1, pass %2: nobody is there for zone %3.</source>
        <translation>%1, Durchgang %2: Für Zone %3 ist niemand da.</translation>
    </message>
    <message>
        <source>Let somebody who reaches it stay.</source>
        <translation>Jemanden dabehalten, der sie erreicht.</translation>
    </message>
    <message>
        <source>The layers have to be laid and the quilt moved, and nobody lifts.</source>
        <translation>Die Lagen müssen aufgelegt und der Quilt bewegt werden, und niemand hebt.</translation>
    </message>
    <message>
        <source>In every pass somebody has to bend down and look underneath the table, and nobody here can.</source>
        <translation>In jedem Durchgang muss sich jemand bücken und unter dem Tisch nachsehen, und hier kann es niemand.</translation>
    </message>
    <message>
        <source>Zone %1 of %2 was handed to %3, who is not there for it or would stand in somebody&apos;s way.</source>
        <translation>Zone %1 von %2 war für %3 bestimmt: dafür nicht da oder jemandem im Weg.</translation>
    </message>
    <message>
        <source>the setting up</source>
        <translation>das Aufbauen</translation>
    </message>
    <message>
        <source>the clamping of the backing</source>
        <translation>das Festklemmen der Rückseite</translation>
    </message>
    <message>
        <source>the rolling up</source>
        <translation>das Aufrollen</translation>
    </message>
    <message>
        <source>The setting up</source>
        <translation>Das Aufbauen</translation>
    </message>
    <message>
        <source>The clamping of the backing</source>
        <translation>Das Festklemmen der Rückseite</translation>
    </message>
    <message>
        <source>The rolling up</source>
        <translation>Das Aufrollen</translation>
    </message>
    <message>
        <source>%1 works sitting and does not reach all of zone %2 from there.</source>
        <translation>%1 arbeitet im Sitzen und erreicht Zone %2 von dort nicht ganz.</translation>
    </message>
    <message>
        <source>Pull the tables away from the walls</source>
        <translation>Tische von den Wänden rücken</translation>
    </message>
    <message>
        <source>Bring one more iron</source>
        <translation>Ein Bügeleisen mehr mitbringen</translation>
    </message>
    <message>
        <source>Take the quickest start</source>
        <translation>Schnellsten Anfang nehmen</translation>
    </message>
    <message>
        <source>Space them %1 apart</source>
        <translation>Abstand %1 nehmen</translation>
    </message>
    <message>
        <source>Let the tables stand as is quickest</source>
        <translation>Tische stellen, wie es am schnellsten geht</translation>
    </message>
    <message>
        <source>Work on the floor</source>
        <translation>Auf dem Boden arbeiten</translation>
    </message>
    <message>
        <source>Let it lie as is quickest</source>
        <translation>Legen, wie es am schnellsten geht</translation>
    </message>
    <message>
        <source>Baste with pins</source>
        <translation>Mit Nadeln heften</translation>
    </message>
    <message>
        <source>Use fuse dots, which may lie on seams</source>
        <translation>Klebepunkte nehmen, sie dürfen auf Nähten liegen</translation>
    </message>
    <message>
        <source>Buy new batting</source>
        <translation>Neues Vlies kaufen</translation>
    </message>
    <message>
        <source>Buy more fabric</source>
        <translation>Mehr Stoff kaufen</translation>
    </message>
    <message>
        <source>Anyone may do it</source>
        <translation>Alle dürfen daran arbeiten</translation>
    </message>
    <message>
        <source>Bring %1 more pins</source>
        <translation>%1 Nadeln mehr mitbringen</translation>
    </message>
    <message>
        <source>Bring %1 clips that hold %2</source>
        <translation>%1 Clips für %2 mitbringen</translation>
    </message>
    <message>
        <source>Ask them to stay as long as it takes</source>
        <translation>Um Bleiben bitten, solange es dauert</translation>
    </message>
    <message>
        <source>Ask one more helper</source>
        <translation>Eine weitere Person fragen</translation>
    </message>
    <message>
        <source>Add a table of %1</source>
        <translation>Einen Tisch von %1 dazustellen</translation>
    </message>
    <message>
        <source>Ask everybody to stay an hour longer</source>
        <translation>Alle bitten, eine Stunde länger zu bleiben</translation>
    </message>
    <message>
        <source>Ask everybody to be there from start to end</source>
        <translation>Alle bitten, von Anfang bis Ende da zu sein</translation>
    </message>
    <message>
        <source>row %1</source>
        <translation>Reihe %1</translation>
    </message>
    <message>
        <source>rows %1–%2</source>
        <translation>Reihen %1–%2</translation>
    </message>
    <message>
        <source>%1, mark %2</source>
        <translation>%1, Marke %2</translation>
    </message>
    <message>
        <source>%1, marks %2–%3</source>
        <translation>%1, Marken %2–%3</translation>
    </message>
    <message>
        <source>%1 as far as mark %2</source>
        <translation>%1 bis Marke %2</translation>
    </message>
    <message>
        <source>%1 from mark %2 on</source>
        <translation>%1 ab Marke %2</translation>
    </message>
    <message>
        <source>%1 as far as mark %2 (even rows: mark %3)</source>
        <translation>%1 bis Marke %2 (gerade Reihen: Marke %3)</translation>
    </message>
    <message>
        <source>%1 from mark %2 on (even rows: from mark %3)</source>
        <translation>%1 ab Marke %2 (gerade Reihen: ab Marke %3)</translation>
    </message>
    <message>
        <source>%1, marks %2–%3 (even rows: %4–%5)</source>
        <translation>%1, Marken %2–%3 (gerade Reihen: %4–%5)</translation>
    </message>
    <message>
        <source>1 single pin</source>
        <translation>1 einzelne Nadel</translation>
    </message>
    <message>
        <source>%1 single pins</source>
        <translation>%1 einzelne Nadeln</translation>
    </message>
    <message>
        <source>1 single dot</source>
        <translation>1 einzelner Punkt</translation>
    </message>
    <message>
        <source>%1 single dots</source>
        <translation>%1 einzelne Punkte</translation>
    </message>
    <message>
        <source>%1 leaves at %2 already.</source>
        <translation>%1 geht schon um %2.</translation>
    </message>
    <message>
        <source>%1 stays to the end already.</source>
        <translation>%1 bleibt schon bis zum Ende.</translation>
    </message>
    <message>
        <source>%1 comes at %2: leaving is later than that.</source>
        <translation>%1 kommt um %2: das Gehen ist später.</translation>
    </message>
    <message>
        <source>A number of pins in the box cannot be %1.</source>
        <translation>Eine Zahl von Nadeln in der Dose kann nicht %1 sein.</translation>
    </message>
    <message>
        <source>the cautions are not read</source>
        <translation>die Vorsichtsregeln sind nicht vorgelesen</translation>
    </message>
    <message>
        <source>Zone %1 is %2, so there is nothing to redo.</source>
        <translation>Zone %1 ist %2, da ist nichts noch einmal zu machen.</translation>
    </message>
    <message>
        <source>%1 is pinned open</source>
        <translation>%1 offen gesteckt</translation>
    </message>
    <message>
        <source>%1 are pinned open</source>
        <translation>%1 offen gesteckt</translation>
    </message>
    <message>
        <source>%1 is closed</source>
        <translation>%1 geschlossen</translation>
    </message>
    <message>
        <source>%1 are closed</source>
        <translation>%1 geschlossen</translation>
    </message>
    <message>
        <source>%1 is dotted below</source>
        <translation>%1 unten geheftet</translation>
    </message>
    <message>
        <source>%1 are dotted below</source>
        <translation>%1 unten geheftet</translation>
    </message>
    <message>
        <source>%1 is dotted above</source>
        <translation>%1 oben geheftet</translation>
    </message>
    <message>
        <source>%1 are dotted above</source>
        <translation>%1 oben geheftet</translation>
    </message>
    <message>
        <source>%1 is pressed</source>
        <translation>%1 gebügelt</translation>
    </message>
    <message>
        <source>%1 are pressed</source>
        <translation>%1 gebügelt</translation>
    </message>
    <message>
        <source>Not yet: first pass %1 is released.</source>
        <translation>Noch nicht: zuerst wird Durchgang %1 freigegeben.</translation>
    </message>
    <message>
        <source>Not yet: first %1.</source>
        <translation>Noch nicht: zuerst %1.</translation>
    </message>
    <message>
        <source>Not yet: first %1 (%2).</source>
        <translation>Noch nicht: zuerst %1 (%2).</translation>
    </message>
    <message>
        <source>%1 zones left: %2</source>
        <translation>Noch %1 Zonen: %2</translation>
    </message>
    <message>
        <source>1 zone left: %1</source>
        <translation>Noch 1 Zone: %1</translation>
    </message>
    <message>
        <source>1 zone left: %1 (%2)</source>
        <translation>Noch 1 Zone: %1 (%2)</translation>
    </message>
    <message>
        <source>waits until pass %1 is released</source>
        <translation>wartet auf die Freigabe von Durchgang %1</translation>
    </message>
    <message>
        <source>waits for %1</source>
        <translation>wartet auf %1</translation>
    </message>
    <message>
        <source>waits for %1: %2</source>
        <translation>wartet auf %1: %2</translation>
    </message>
    <message>
        <source>The session has not begun.</source>
        <translation>Das Treffen hat noch nicht begonnen.</translation>
    </message>
    <message>
        <source>The session has ended. Take the ending back to go on with it.</source>
        <translation>Das Treffen ist beendet. Um weiterzumachen, das Beenden rückgängig machen.</translation>
    </message>
    <message>
        <source>It is a break. Resume first.</source>
        <translation>Es ist Pause. Erst weitermachen.</translation>
    </message>
    <message>
        <source>There is no zone %1.</source>
        <translation>Es gibt keine Zone %1.</translation>
    </message>
    <message>
        <source>%1 was left out with its pass.</source>
        <translation>%1 wurde mit ihrem Durchgang ausgelassen.</translation>
    </message>
    <message>
        <source>%1 is done. Hold it to take its last tick back.</source>
        <translation>%1 ist fertig. Gedrückt halten nimmt den letzten Haken zurück.</translation>
    </message>
    <message>
        <source>%1 is ticked already.</source>
        <translation>%1 ist schon abgehakt.</translation>
    </message>
    <message>
        <source>%1 is the work of %2. Tick it at the table.</source>
        <translation>%1 ist Arbeit von %2. Am Tisch abhaken.</translation>
    </message>
    <message>
        <source>The plan has no step %1.</source>
        <translation>Der Plan hat keinen Schritt %1.</translation>
    </message>
    <message>
        <source>One answer is &apos;not yet&apos;. Put it right and answer again.</source>
        <translation>Eine Antwort ist „noch nicht“. In Ordnung bringen und noch einmal antworten.</translation>
    </message>
    <message>
        <source>There is still work open.</source>
        <translation>Es ist noch Arbeit offen.</translation>
    </message>
    <message>
        <source>is blank; enter a name.</source>
        <translation>ist leer; bitte einen Namen eingeben.</translation>
    </message>
    <message>
        <source>up to %1 letters</source>
        <translation>bis zu %1 Zeichen</translation>
    </message>
    <message>
        <source>text without line breaks or tabs</source>
        <translation>Text ohne Zeilenumbrüche und Tabulatoren</translation>
    </message>
    <message>
        <source>a whole number from %1 to %2</source>
        <translation>eine ganze Zahl von %1 bis %2</translation>
    </message>
    <message>
        <source>a number from %1 to %2</source>
        <translation>eine Zahl von %1 bis %2</translation>
    </message>
    <message>
        <source>0 to %1</source>
        <translation>0 bis %1</translation>
    </message>
    <message>
        <source>a time of day from 00:00 to 23:59, such as 13:00</source>
        <translation>eine Uhrzeit von 00:00 bis 23:59, etwa 13:00</translation>
    </message>
    <message>
        <source>has the same entry twice.</source>
        <translation>hat denselben Eintrag zweimal.</translation>
    </message>
    <message>
        <source>Blocks across</source>
        <translation>Blöcke quer</translation>
    </message>
    <message>
        <source>Blocks down</source>
        <translation>Blöcke längs</translation>
    </message>
    <message>
        <source>Block</source>
        <translation>Block</translation>
    </message>
    <message>
        <source>Block, head to foot</source>
        <translation>Block, Kopf bis Fuß</translation>
    </message>
    <message>
        <source>Sashing</source>
        <translation>Zwischenstreifen</translation>
    </message>
    <message>
        <source>Border</source>
        <translation>Randstreifen</translation>
    </message>
    <message>
        <source>Border at head and foot (0: the same)</source>
        <translation>Rand an Kopf und Fuß (0: ebenso)</translation>
    </message>
    <message>
        <source>Width</source>
        <translation>Breite</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>Diagonals</source>
        <translation>Diagonalen</translation>
    </message>
    <message>
        <source>The grid of blocks</source>
        <translation>Das Raster der Blöcke</translation>
    </message>
    <message>
        <source>Size as the blocks make it</source>
        <translation>Größe, wie die Blöcke sie ergeben</translation>
    </message>
    <message>
        <source>Seams</source>
        <translation>Nähte</translation>
    </message>
    <message>
        <source>Spacing</source>
        <translation>Abstand</translation>
    </message>
    <message>
        <source>Length of a pin</source>
        <translation>Länge einer Nadel</translation>
    </message>
    <message>
        <source>Keep pins this far from seams to be quilted</source>
        <translation>Nadeln so weit von Nähten, die gequiltet werden</translation>
    </message>
    <message>
        <source>First row this far from the edge</source>
        <translation>Erste Reihe so weit vom Rand</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Start</translation>
    </message>
    <message>
        <source>The quilt’s length lies</source>
        <translation>Die Quiltlänge liegt</translation>
    </message>
    <message>
        <source>Where the pins go</source>
        <translation>Wohin die Nadeln kommen</translation>
    </message>
    <message>
        <source>Length of your measure</source>
        <translation>Länge des eigenen Maßes</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>How many</source>
        <translation>Wie viele</translation>
    </message>
    <message>
        <source>Leftover pieces</source>
        <translation>Reststücke</translation>
    </message>
    <message>
        <source>Overage on each side</source>
        <translation>Überstand auf jeder Seite</translation>
    </message>
    <message>
        <source>Thickness</source>
        <translation>Dicke</translation>
    </message>
    <message>
        <source>Melts under an iron</source>
        <translation>Schmilzt unter dem Eisen</translation>
    </message>
    <message>
        <source>Bought as</source>
        <translation>Gekauft als</translation>
    </message>
    <message>
        <source>Roll of another width</source>
        <translation>Rolle anderer Breite</translation>
    </message>
    <message>
        <source>A strip may be pieced to buy less</source>
        <translation>Ein Streifen darf gestückelt werden, um weniger zu kaufen</translation>
    </message>
    <message>
        <source>New batting shrinks by, percent</source>
        <translation>Neues Vlies läuft ein um, Prozent</translation>
    </message>
    <message>
        <source>Width as measured</source>
        <translation>Gemessene Breite</translation>
    </message>
    <message>
        <source>Length as measured</source>
        <translation>Gemessene Länge</translation>
    </message>
    <message>
        <source>Pieces may be turned</source>
        <translation>Stücke dürfen gedreht werden</translation>
    </message>
    <message>
        <source>Trim from every edge</source>
        <translation>An jeder Kante abschneiden</translation>
    </message>
    <message>
        <source>Overlap lost at each join</source>
        <translation>Verlust durch Überlappen je Stoß</translation>
    </message>
    <message>
        <source>Usable width</source>
        <translation>Nutzbare Breite</translation>
    </message>
    <message>
        <source>We have</source>
        <translation>Haben wir</translation>
    </message>
    <message>
        <source>More can be bought</source>
        <translation>Mehr ist zu kaufen</translation>
    </message>
    <message>
        <source>Price</source>
        <translation>Preis</translation>
    </message>
    <message>
        <source>Seam allowance</source>
        <translation>Nahtzugabe</translation>
    </message>
    <message>
        <source>Shrinks by, percent</source>
        <translation>Läuft ein, Prozent</translation>
    </message>
    <message>
        <source>Lost of every length to square it</source>
        <translation>Verlust je Bahn zum Begradigen</translation>
    </message>
    <message>
        <source>Fabric I would buy more to save a seam</source>
        <translation>Stoff, der für eine gesparte Naht mehr gekauft wird</translation>
    </message>
    <message>
        <source>Narrowest piece to sew in</source>
        <translation>Schmalstes Teil, das eingenäht wird</translation>
    </message>
    <message>
        <source>Repeat of the print</source>
        <translation>Rapport des Drucks</translation>
    </message>
    <message>
        <source>Print runs one way</source>
        <translation>Druck hat eine Richtung</translation>
    </message>
    <message>
        <source>A strip may be pieced</source>
        <translation>Ein Streifen darf gestückelt werden</translation>
    </message>
    <message>
        <source>Seam down the middle allowed</source>
        <translation>Mittelnaht erlaubt</translation>
    </message>
    <message>
        <source>Measured after washing</source>
        <translation>Nach dem Waschen gemessen</translation>
    </message>
    <message>
        <source>Zones given to somebody</source>
        <translation>Zonen, die jemandem gegeben sind</translation>
    </message>
    <message>
        <source>Shown in</source>
        <translation>Anzeige in</translation>
    </message>
    <message>
        <source>How it will be quilted</source>
        <translation>Wie gequiltet wird</translation>
    </message>
    <message>
        <source>Most the batting allows between quilting lines (see its label)</source>
        <translation>Größter Abstand der Quiltlinien, den das Vlies erlaubt (siehe Etikett)</translation>
    </message>
    <message>
        <source>Throat</source>
        <translation>Durchlass</translation>
    </message>
    <message>
        <source>Tables</source>
        <translation>Tische</translation>
    </message>
    <message>
        <source>Stands</source>
        <translation>Steht</translation>
    </message>
    <message>
        <source>Walls</source>
        <translation>Wände</translation>
    </message>
    <message>
        <source>Leave this much of the table’s edge free</source>
        <translation>So viel Tischrand frei lassen</translation>
    </message>
    <message>
        <source>Tables stand this far from the wall</source>
        <translation>Tische stehen so weit von der Wand</translation>
    </message>
    <message>
        <source>Irons</source>
        <translation>Bügeleisen</translation>
    </message>
    <message>
        <source>Groups of tables in use at once (0: automatic)</source>
        <translation>Tischgruppen zugleich (0: automatisch)</translation>
    </message>
    <message>
        <source>Tables pushed together</source>
        <translation>Tische zusammengeschoben</translation>
    </message>
    <message>
        <source>Break from</source>
        <translation>Pause von</translation>
    </message>
    <message>
        <source>Break until</source>
        <translation>Pause bis</translation>
    </message>
    <message>
        <source>Reach</source>
        <translation>Reichweite</translation>
    </message>
    <message>
        <source>Leans farther by</source>
        <translation>Beugt sich weiter vor um</translation>
    </message>
    <message>
        <source>Speed (1 is usual)</source>
        <translation>Tempo (1 ist üblich)</translation>
    </message>
    <message>
        <source>Comes at</source>
        <translation>Kommt um</translation>
    </message>
    <message>
        <source>Leaves at</source>
        <translation>Geht um</translation>
    </message>
    <message>
        <source>Breaks</source>
        <translation>Pausen</translation>
    </message>
    <message>
        <source>Can lift</source>
        <translation>Kann heben</translation>
    </message>
    <message>
        <source>Pins</source>
        <translation>Nadeln</translation>
    </message>
    <message>
        <source>Works sitting</source>
        <translation>Arbeitet im Sitzen</translation>
    </message>
    <message>
        <source>Works at</source>
        <translation>Arbeitet an</translation>
    </message>
    <message>
        <source>Clamps</source>
        <translation>Klemmen</translation>
    </message>
    <message>
        <source>Roll clips</source>
        <translation>Rollenclips</translation>
    </message>
    <message>
        <source>Hold a roll of</source>
        <translation>Halten eine Rolle von</translation>
    </message>
    <message>
        <source>Tape</source>
        <translation>Klebeband</translation>
    </message>
    <message>
        <source>The session starts at</source>
        <translation>Das Treffen beginnt um</translation>
    </message>
    <message>
        <source>People</source>
        <translation>Wer kommt</translation>
    </message>
    <message>
        <source>Plan breaks</source>
        <translation>Pausen einplanen</translation>
    </message>
    <message>
        <source>Supplies</source>
        <translation>Vorräte</translation>
    </message>
    <message>
        <source>Quilts</source>
        <translation>Quilts</translation>
    </message>
    <message>
        <source>Can iron</source>
        <translation>Kann bügeln</translation>
    </message>
    <message>
        <source>Can close pins</source>
        <translation>Kann Nadeln schließen</translation>
    </message>
    <message>
        <source>Can pin</source>
        <translation>Kann Nadeln setzen</translation>
    </message>
    <message>
        <source>Can look underneath</source>
        <translation>Kann darunter nachsehen</translation>
    </message>
    <message>
        <source>%1: enter %2, not %3.</source>
        <translation>%1: bitte %2 eingeben, nicht %3.</translation>
    </message>
    <message>
        <source>%1 dots %2</source>
        <translation>%1 klebt %2</translation>
    </message>
    <message>
        <source>%1 dot %2</source>
        <translation>%1 kleben %2</translation>
    </message>
    <message>
        <source>Flat on the layer, none folded, none at the edge.</source>
        <translation>Flach auf die Lage, keiner geknickt, keiner am Rand.</translation>
    </message>
    <message>
        <source>Dots on the backing</source>
        <translation>Punkte auf die Rückseite</translation>
    </message>
    <message>
        <source>dots below</source>
        <translation>unten kleben</translation>
    </message>
    <message>
        <source>%1: %2 on the backing</source>
        <translation>%1: %2 auf die Rückseite</translation>
    </message>
    <message>
        <source>Dots under the top</source>
        <translation>Punkte unters Top</translation>
    </message>
    <message>
        <source>dots above</source>
        <translation>oben kleben</translation>
    </message>
    <message>
        <source>Dots on the batting</source>
        <translation>Punkte auf das Vlies</translation>
    </message>
    <message>
        <source>%1: %2 on the batting</source>
        <translation>%1: %2 auf das Vlies</translation>
    </message>
    <message>
        <source>Press the dots</source>
        <translation>Punkte bügeln</translation>
    </message>
    <message>
        <source>press</source>
        <translation>bügeln</translation>
    </message>
    <message>
        <source>Press</source>
        <translation>Bügeln</translation>
    </message>
    <message>
        <source>Lower the iron and lift it again, do not slide. Follow the labels of web and batting.</source>
        <translation>Eisen aufsetzen und abheben, nicht schieben. Angaben auf Klebevlies und Vlies befolgen.</translation>
    </message>
    <message>
        <source>One pair of hands on the iron; cord off the walkway.</source>
        <translation>Nur ein Paar Hände am Eisen; Kabel nicht im Laufweg.</translation>
    </message>
    <message>
        <source>%1: press %2</source>
        <translation>%1: %2 bügeln</translation>
    </message>
    <message>
        <source>%1 presses %2</source>
        <translation>%1 bügelt %2</translation>
    </message>
    <message>
        <source>%1 press %2</source>
        <translation>%1 bügeln %2</translation>
    </message>
    <message>
        <source>Fuse dots</source>
        <translation>Klebepunkte</translation>
    </message>
    <message>
        <source>Dots</source>
        <translation>Klebepunkte</translation>
    </message>
    <message>
        <source>Where the dots go</source>
        <translation>Wohin die Punkte kommen</translation>
    </message>
    <message>
        <source>No pleat below? Do the dots hold?</source>
        <translation>Keine Falte darunter? Halten die Punkte?</translation>
    </message>
    <message>
        <source>Every dot holds; irons off and cold.</source>
        <translation>Jeder Punkt hält; Eisen aus und kalt.</translation>
    </message>
    <message>
        <source>Irons off and cold.</source>
        <translation>Bügeleisen aus und kalt.</translation>
    </message>
    <message>
        <source>One person holds an iron and minds it: up on its heel, off at breaks; try it on a scrap.</source>
        <translation>Eine Person hält und hütet das Eisen: auf die Ferse, in Pausen aus; an einem Rest probieren.</translation>
    </message>
    <message>
        <source>One pair of hands on the iron, its cord off the walkway, off and upright at breaks.</source>
        <translation>Das Bügeleisen hat eine einzige Person in der Hand; das Kabel liegt nicht im Weg, in Pausen ist es aus und steht.</translation>
    </message>
    <message>
        <source>Follow the label of web and batting: some melt.</source>
        <translation>Das Etikett von Klebevlies und Vlies beachten: manches schmilzt.</translation>
    </message>
    <message>
        <source>1 dot</source>
        <translation>1 Klebepunkt</translation>
    </message>
    <message>
        <source>%1 dots</source>
        <translation>%1 Klebepunkte</translation>
    </message>
    <message>
        <source>dots every %1</source>
        <translation>Klebepunkte alle %1</translation>
    </message>
    <message>
        <source>lay your dots ready, the paper still on.</source>
        <translation>die Klebepunkte bereitlegen, noch mit Papier.</translation>
    </message>
    <message>
        <source>Put pins in, open</source>
        <translation>Nadeln offen stecken</translation>
    </message>
    <message>
        <source>pins in</source>
        <translation>stecken</translation>
    </message>
    <message>
        <source>Place pins open</source>
        <translation>Nadeln offen stecken</translation>
    </message>
    <message>
        <source>Through all three layers, left open. Lean, do not climb.</source>
        <translation>Durch alle drei Lagen, offen lassen. Lehnen, nicht steigen.</translation>
    </message>
    <message>
        <source>Pins stay in the dish, never in the mouth.</source>
        <translation>Nadeln bleiben in der Schale, nie im Mund.</translation>
    </message>
    <message>
        <source>%1: place %2, open</source>
        <translation>%1: %2 stecken, offen</translation>
    </message>
    <message>
        <source>%1 pins %2</source>
        <translation>%1 steckt %2</translation>
    </message>
    <message>
        <source>%1 pin %2</source>
        <translation>%1 stecken %2</translation>
    </message>
    <message>
        <source>Close the pins</source>
        <translation>Nadeln schließen</translation>
    </message>
    <message>
        <source>close</source>
        <translation>schließen</translation>
    </message>
    <message>
        <source>Close pins</source>
        <translation>Nadeln schließen</translation>
    </message>
    <message>
        <source>From the middle outwards. The zone&apos;s count must come out.</source>
        <translation>Von der Mitte nach außen. Die Anzahl der Zone muss stimmen.</translation>
    </message>
    <message>
        <source>%1: close %2</source>
        <translation>%1: %2 schließen</translation>
    </message>
    <message>
        <source>%1 closes %2</source>
        <translation>%1 schließt %2</translation>
    </message>
    <message>
        <source>%1 close %2</source>
        <translation>%1 schließen %2</translation>
    </message>
    <message>
        <source>No pleat below? Do pins turned up reach the back?</source>
        <translation>Keine Falte darunter? Fassen umgedrehte Nadeln die Rückseite?</translation>
    </message>
    <message>
        <source>Pins counted; table and floor swept with a magnet.</source>
        <translation>Nadeln gezählt; Tisch und Boden mit einem Magneten abgesucht.</translation>
    </message>
    <message>
        <source>No pins in the mouth; open ones point away from hands.</source>
        <translation>Keine Nadeln in den Mund; offene zeigen von Händen weg.</translation>
    </message>
    <message>
        <source>Pins stay in the dish, never in the mouth. What falls is picked up at once.</source>
        <translation>Sicherheitsnadeln bleiben in der Schale, nie im Mund. Was herunterfällt, wird gleich aufgehoben.</translation>
    </message>
    <message>
        <source>The magnet for sweeping is kept away from medical implants and electronics.</source>
        <translation>Der Magnet zum Auflesen bleibt fern von medizinischen Implantaten und Elektronik.</translation>
    </message>
    <message>
        <source>1 pin</source>
        <translation>1 Nadel</translation>
    </message>
    <message>
        <source>%1 pins</source>
        <translation>%1 Nadeln</translation>
    </message>
    <message>
        <source>pins every %1</source>
        <translation>Nadeln alle %1</translation>
    </message>
    <message>
        <source>count %1 into your bowl and open them.</source>
        <translation>%1 in die eigene Schale zählen und öffnen.</translation>
    </message>
    <message>
        <source>Wait.</source>
        <translation>Warten.</translation>
    </message>
    <message>
        <source>Dot below</source>
        <translation>Punkte unten</translation>
    </message>
    <message>
        <source>Top and batting back. Dots on the backing.</source>
        <translation>Top und Vlies zurück. Punkte auf die Rückseite.</translation>
    </message>
    <message>
        <source>Top and batting lie back: your dots on the backing.</source>
        <translation>Top und Vlies liegen zurück: die eigenen Punkte auf die Rückseite.</translation>
    </message>
    <message>
        <source>Dot above</source>
        <translation>Punkte oben</translation>
    </message>
    <message>
        <source>Batting forward. Dots on the batting.</source>
        <translation>Vlies nach vorn. Punkte auf das Vlies.</translation>
    </message>
    <message>
        <source>Batting forward: your dots on the batting.</source>
        <translation>Vlies nach vorn: die eigenen Punkte auf das Vlies.</translation>
    </message>
    <message>
        <source>Top forward. Lower the iron and lift it, never slide.</source>
        <translation>Top nach vorn. Eisen aufsetzen und abheben, nie schieben.</translation>
    </message>
    <message>
        <source>Lower the iron and lift it, never slide; the label&apos;s setting.</source>
        <translation>Eisen aufsetzen und abheben, nie schieben; Einstellung nach Etikett.</translation>
    </message>
    <message>
        <source>Hold it in one hand only, yours; up on its heel.</source>
        <translation>Nur eine Person hält es; abstellen auf der Ferse.</translation>
    </message>
    <message>
        <source>The iron is hot: up on its heel, off at breaks.</source>
        <translation>Das Eisen ist heiß: auf die Ferse stellen, in Pausen aus.</translation>
    </message>
    <message>
        <source>Pin</source>
        <translation>Stecken</translation>
    </message>
    <message>
        <source>Leave every pin open.</source>
        <translation>Jede Nadel offen lassen.</translation>
    </message>
    <message>
        <source>No pins for you: see that everybody has some.</source>
        <translation>Keine eigenen Nadeln: dafür sorgen, dass alle welche haben.</translation>
    </message>
    <message>
        <source>No pins in the mouth.</source>
        <translation>Keine Nadeln in den Mund.</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Never before this call.</source>
        <translation>Nie vor diesem Ruf.</translation>
    </message>
    <message>
        <source>Wait until all are closed.</source>
        <translation>Warten, bis alle geschlossen sind.</translation>
    </message>
    <message>
        <source>Lay a towel over the joints between the tables, or they leave a crease.</source>
        <translation>Ein Handtuch über die Fugen zwischen den Tischen legen, sonst bleibt eine Falte.</translation>
    </message>
    <message>
        <source>a color as &quot;#rrggbb&quot;, such as &quot;#27365c&quot;, is accepted</source>
        <translation>angenommen wird eine Farbe als &quot;#rrggbb&quot;, etwa &quot;#27365c&quot;</translation>
    </message>
    <message>
        <source>a baseline JPEG of up to %1 bytes and up to %2 pixels a side, as base64 text, is accepted</source>
        <translation>angenommen wird ein Baseline-JPEG bis %1 Byte und bis %2 Pixel je Seite, als Base64-Text</translation>
    </message>
    <message>
        <source>has %1 entry; none, or %2 and more, are accepted.</source>
        <translation>hat %1 Eintrag; angenommen werden keiner oder mindestens %2.</translation>
    </message>
    <message>
        <source>Fabrics of the top</source>
        <translation>Stoffe des Tops</translation>
    </message>
    <message>
        <source>Photo of the top</source>
        <translation>Foto des Tops</translation>
    </message>
    <message>
        <source>Name of the room</source>
        <translation>Name des Raums</translation>
    </message>
    <message>
        <source>Name of the box</source>
        <translation>Name der Kiste</translation>
    </message>
    <message>
        <source>is missing in the file; the plan has %1.</source>
        <translation>fehlt in der Datei; im Plan steht %1.</translation>
    </message>
    <message>
        <source>has %1 elements in the file; the plan has %2.</source>
        <translation>hat in der Datei %1 Einträge, im Plan %2.</translation>
    </message>
    <message>
        <source>is %1 in the file; the plan has %2.</source>
        <translation>ist in der Datei %1; im Plan steht %2.</translation>
    </message>
    <message>
        <source>%1 more places of the file differ from the plan.</source>
        <translation>%1 weitere Stellen der Datei weichen vom Plan ab.</translation>
    </message>
    <message>
        <source>is &apos;%1&apos;, which this is not counted in.</source>
        <translation>ist „%1“; darin wird es nicht gezählt.</translation>
    </message>
    <message>
        <source>is empty, though this is bought.</source>
        <translation>ist leer, obwohl es gekauft wird.</translation>
    </message>
    <message>
        <source>is not the sentence for what is bought.</source>
        <translation>ist nicht der Satz zu dem, was gekauft wird.</translation>
    </message>
    <message>
        <source>is there twice.</source>
        <translation>steht doppelt da.</translation>
    </message>
    <message>
        <source>is that of a finding of another kind.</source>
        <translation>ist der eines Hinweises anderer Art.</translation>
    </message>
    <message>
        <source>One more table, or a side away from the wall, makes room.</source>
        <translation>Ein Tisch mehr oder eine Seite ohne Wand schafft Platz.</translation>
    </message>
    <message>
        <source>Pass %1 is finished where it lies; keep its tables until then.</source>
        <translation>Durchgang %1 wird beendet, wo er liegt; seine Tische bleiben so lange stehen.</translation>
    </message>
    <message>
        <source>The passes stay as they are: with it they would not be fewer.</source>
        <translation>Die Durchgänge bleiben, wie sie sind: Damit würden es nicht weniger.</translation>
    </message>
    <message>
        <source>The quilt lies on other tables: the passes stay as they are.</source>
        <translation>Der Quilt liegt auf anderen Tischen: Die Durchgänge bleiben, wie sie sind.</translation>
    </message>
    <message>
        <source>What is left is basted on %1.</source>
        <translation>Der Rest wird geheftet auf: %1.</translation>
    </message>
    <message>
        <source>%1 passes are left instead of %2.</source>
        <translation>Durchgänge übrig: %1 statt %2.</translation>
    </message>
    <message>
        <source>%1 pins are still to be placed instead of %2.</source>
        <translation>Noch zu setzen: %1 Nadeln statt %2.</translation>
    </message>
    <message>
        <source>Zones are cut anew: look at who has which before going on.</source>
        <translation>Die Zonen sind neu geschnitten: vor dem Weitermachen nachsehen, wer welches hat.</translation>
    </message>
    <message>
        <source>Zone %1 is begun or left out already.</source>
        <translation>Zone %1 ist schon begonnen oder ausgelassen.</translation>
    </message>
    <message>
        <source>What is left cannot be basted on these tables: none of them, alone or pushed together, holds a pass with what is basted beside it. Add a table, or keep those the quilt lies on.</source>
        <translation>Der Rest lässt sich auf diesen Tischen nicht heften: Keiner, allein oder zusammengeschoben, fasst einen Durchgang mit dem Gehefteten daneben. Einen Tisch dazustellen oder die behalten, auf denen der Quilt liegt.</translation>
    </message>
    <message>
        <source>No pass is left to be planned otherwise.</source>
        <translation>Es ist kein Durchgang mehr übrig, der anders geplant werden könnte.</translation>
    </message>
    <message>
        <source>Finish pass %1 first: its rows are marked on the ribbons. Then the rows of what is left can be wider.</source>
        <translation>Erst Durchgang %1 beenden: Seine Reihen stehen auf den Bändern. Danach können die übrigen Reihen weiter werden.</translation>
    </message>
    <message>
        <source>The pins do for all that is left.</source>
        <translation>Die Nadeln reichen für alles, was übrig ist.</translation>
    </message>
    <message>
        <source>Rows as wide as these pins allow are wider than the batting takes (%1). Fetch %2 more pins.</source>
        <translation>So weit, wie die Nadeln reichen, dürfen die Reihen bei diesem Vlies nicht werden (%1). %2 weitere Nadeln holen.</translation>
    </message>
    <message>
        <source>Rows as wide as these pins allow would not hold the layers. Fetch %1 more pins.</source>
        <translation>Mit so weiten Reihen, wie die Nadeln reichen, hielten die Lagen nicht. %1 weitere Nadeln holen.</translation>
    </message>
    <message>
        <source>Put them back, or plan the rest on the tables that are there.</source>
        <translation>Zurückstellen oder den Rest auf den vorhandenen Tischen planen.</translation>
    </message>
    <message>
        <source>Fuse dots want an iron, and there is none.</source>
        <translation>Für Klebepunkte braucht es ein Bügeleisen, und es ist keins da.</translation>
    </message>
    <message>
        <source>Fuse dots in place of pins: %1, %2 dots. Press them before the quilt is moved on.</source>
        <translation>Klebepunkte statt Nadeln: %1, %2 Punkte. Aufbügeln, bevor der Quilt weitergeschoben wird.</translation>
    </message>
    <message>
        <source>The pins last for today&apos;s part: 1 zone is left for another day, with %1 pins more.</source>
        <translation>Die Nadeln reichen für heute: 1 Zone bleibt für einen anderen Tag, mit %1 Nadeln mehr.</translation>
    </message>
    <message>
        <source>The pins last for today&apos;s part: %1 zones are left for another day, with %2 pins more.</source>
        <translation>Die Nadeln reichen für heute: %1 Zonen bleiben für einen anderen Tag, mit %2 Nadeln mehr.</translation>
    </message>
    <message>
        <source>What is kept could not be listed</source>
        <translation>Was behalten wird, konnte nicht aufgelistet werden</translation>
    </message>
    <message>
        <source>%1 could not be kept</source>
        <translation>%1 konnte nicht behalten werden</translation>
    </message>
    <message>
        <source>%1 could not be renamed</source>
        <translation>%1 konnte nicht umbenannt werden</translation>
    </message>
    <message>
        <source>%1 is kept already; enter another name.</source>
        <translation>%1 gibt es schon; einen anderen Namen eingeben.</translation>
    </message>
    <message>
        <source>%1 could not be forgotten</source>
        <translation>%1 konnte nicht vergessen werden</translation>
    </message>
    <message>
        <source>Or widen the spacing from %1 to about %2, which the batting allows.</source>
        <translation>Oder den Abstand von %1 auf etwa %2 erweitern, was das Vlies zulässt.</translation>
    </message>
    <message>
        <source>Or widen the spacing from %1 to about %2 if the batting&apos;s label allows it.</source>
        <translation>Oder den Abstand von %1 auf etwa %2 erweitern, wenn das Etikett des Vlieses es zulässt.</translation>
    </message>
    <message>
        <source>All pins stay open.</source>
        <translation>Alle Nadeln bleiben offen.</translation>
    </message>
    <message>
        <source>Now, never earlier.</source>
        <translation>Jetzt, nie früher.</translation>
    </message>
    <message>
        <source>Your rows at your marks, from the middle outward; on a seam, beside it.</source>
        <translation>Eigene Reihen an eigenen Marken, von der Mitte aus; auf Nähten daneben.</translation>
    </message>
    <message>
        <source>Close from the middle outward.</source>
        <translation>Von der Mitte aus schließen.</translation>
    </message>
    <message>
        <source>%1, move into pass %2: it weighs %3 and must stay flat, so %4 people should slide it, and only one here can lift.</source>
        <translation>%1, Weiterrücken zu Durchgang %2: Er wiegt %3 und muss glatt bleiben, darum sollten ihn %4 Leute schieben, und nur eine Person hier kann heben.</translation>
    </message>
    <message>
        <source>%1, move into pass %2: it weighs %3 and must stay flat, so %4 people should slide it, and only %5 here can lift.</source>
        <translation>%1, Weiterrücken zu Durchgang %2: Er wiegt %3 und muss glatt bleiben, darum sollten ihn %4 Leute schieben, und nur %5 hier können heben.</translation>
    </message>
    <message>
        <source>Ask somebody to come for the end of each pass, or feel underneath with a palm from every side.</source>
        <translation>Bitten Sie jemanden, zum Ende jedes Durchgangs zu kommen, oder fühlen Sie von jeder Seite mit der flachen Hand darunter.</translation>
    </message>
    <message>
        <source>from one end: the layers are rolled on boards or tubes and unrolled as the work goes; good for small tables and for people who sit, but all the slack is smoothed to one end</source>
        <translation>von einem Ende aus: Die Lagen sind auf Brettern oder Rohren aufgerollt und werden nach und nach abgerollt; gut für kleine Tische und für alle, die sitzen, doch alles Lose wird zu einem Ende gestrichen</translation>
    </message>
    <message>
        <source>nobody reaches the middle of the table: each pass bastes along its sides only, until all of the quilt has been there</source>
        <translation>niemand reicht bis zur Mitte des Tisches: Geheftet wird nur an seinen Seiten, bis der ganze Quilt dort gelegen hat</translation>
    </message>
    <message>
        <source>what nobody reaches is basted after the quilt has been pulled across the table as it is held</source>
        <translation>was niemand erreicht, wird geheftet, nachdem der Quilt so, wie er gehalten wird, über den Tisch gezogen ist</translation>
    </message>
    <message>
        <source>1 pin lies nearer than %1 to a seam that is quilted along, for want of room: %2. It is %3 from the seam.</source>
        <translation>1 Nadel liegt näher als %1 an einer Naht, an der gequiltet wird, weil sonst kein Platz ist: %2. Sie liegt %3 von der Naht.</translation>
    </message>
    <message>
        <source>%4 pins lie nearer than %1 to a seam that is quilted along, for want of room: %2. The nearest is %3 from a seam.</source>
        <translation>%4 Nadeln liegen näher als %1 an einer Naht, an der gequiltet wird, weil sonst kein Platz ist: %2. Die nächste liegt %3 von einer Naht.</translation>
    </message>
    <message>
        <source>%1 lying %2 inside the edge cannot hold the corners at a spacing of %3; they lie from %4 inside it.</source>
        <translation>%1 in %2 Abstand vom Rand halten bei %3 Abstand untereinander die Ecken nicht; sie liegen ab %4 innerhalb.</translation>
    </message>
    <message>
        <source>There is little room between seams, so some pins or dots stand closer together than half the spacing: %1. It does no harm.</source>
        <translation>Zwischen den Nähten ist wenig Platz, darum sitzen einige Nadeln oder Punkte enger als der halbe Abstand: %1. Das schadet nicht.</translation>
    </message>
    <message>
        <source>Make it %1 wider (%2). It just does with %3 more, which leaves half of the overage.</source>
        <translation>Machen Sie sie %1 breiter (%2). Mit %3 mehr reicht es eben, dann bleibt der halbe Überstand.</translation>
    </message>
    <message>
        <source>Make it %1 longer (%2). It just does with %3 more, which leaves half of the overage.</source>
        <translation>Machen Sie sie %1 länger (%2). Mit %3 mehr reicht es eben, dann bleibt der halbe Überstand.</translation>
    </message>
    <message>
        <source>Fold it instead of rolling, begin to quilt at one end so that less is in the throat, or use a machine with a larger throat.</source>
        <translation>Falten statt rollen, an einem Ende mit dem Quilten beginnen, damit weniger im Durchlass liegt, oder eine Maschine mit größerem Durchlass nehmen.</translation>
    </message>
    <message>
        <source>Bring %1 more, better %2 so that some are spare. %3</source>
        <translation>%1 mehr mitbringen, besser %2, damit einige übrig sind. %3</translation>
    </message>
    <message>
        <source>at the middle of the table</source>
        <translation>in der Mitte des Tisches</translation>
    </message>
    <message>
        <source>beside the middle of the table</source>
        <translation>neben der Mitte des Tisches</translation>
    </message>
    <message>
        <source>at one end of the quilt</source>
        <translation>an einem Ende des Quilts</translation>
    </message>
    <message>
        <source>where it is quickest</source>
        <translation>dort, wo es am schnellsten geht</translation>
    </message>
    <message>
        <source>Basting cannot begin %1 on these tables, as you chose; the plan begins %2.</source>
        <translation>Das Heften kann auf diesen Tischen nicht %1 beginnen, wie Sie es gewählt haben; der Plan beginnt %2.</translation>
    </message>
    <message>
        <source>Pass %1 of %2 is finished where it lies; keep its tables until then.</source>
        <translation>Durchgang %1 von %2 wird fertig geheftet, wo er liegt; seine Tische so lange stehen lassen.</translation>
    </message>
    <message>
        <source>quilt %1</source>
        <translation>Quilt %1</translation>
    </message>
    <message>
        <source>What is left of %1 is basted on %2.</source>
        <translation>Was von %1 übrig ist, wird so geheftet: %2.</translation>
    </message>
    <message>
        <source>There is no pass %1.</source>
        <translation>Es gibt keinen Durchgang %1.</translation>
    </message>
    <message>
        <source>There is no step %1.</source>
        <translation>Es gibt keinen Schritt %1.</translation>
    </message>
    <message>
        <source>Nothing is asked that is called %1.</source>
        <translation>Nach %1 wird nirgends gefragt.</translation>
    </message>
    <message>
        <source>One of the %1 things noted in this session cannot be and is left out of account; nothing is lost. %2</source>
        <translation>Einer von %1 Einträgen dieses Treffens kann nicht stimmen und zählt nicht; verloren ist nichts. %2</translation>
    </message>
    <message>
        <source>%1 of the %2 things noted in this session cannot be and are left out of account; nothing is lost. The first: %3</source>
        <translation>%1 von %2 Einträgen dieses Treffens können nicht stimmen und zählen nicht; verloren ist nichts. Der erste: %3</translation>
    </message>
    <message>
        <source>The plan of this session breaks a rule: %1 Tap More, then What has changed, then Plan the rest again.</source>
        <translation>Der Plan dieses Treffens verletzt eine Regel: %1 Auf Mehr tippen, dann Was hat sich geändert, dann Rest neu planen.</translation>
    </message>
    <message>
        <source>There are no tables for what is left of all quilts. Finish %1 first, or add a table: then the others go on.</source>
        <translation>Für den Rest aller Quilts sind nicht genug Tische da. Erst %1 fertig heften oder einen Tisch dazustellen: Dann geht es mit den anderen weiter.</translation>
    </message>
    <message>
        <source>The new plan is not offered, because it breaks a rule: %1</source>
        <translation>Der neue Plan wird nicht angeboten, weil er eine Regel verletzt: %1</translation>
    </message>
    <message>
        <source>With several quilts at once the rows stay as they are. Fetch %1 more pins, or let fuse dots or fewer zones do.</source>
        <translation>Bei mehreren Quilts zugleich bleiben die Reihen, wie sie sind. %1 Nadeln mehr holen, oder Klebepunkte oder weniger Zonen nehmen.</translation>
    </message>
    <message>
        <source>dotted above</source>
        <translation>oben geklebt</translation>
    </message>
    <message>
        <source>pressed</source>
        <translation>gebügelt</translation>
    </message>
    <message>
        <source>Dot at the ribbons&apos; marks.</source>
        <translation>An den Marken der Bänder kleben.</translation>
    </message>
    <message>
        <source>All dots pressed, irons off, nothing half done.</source>
        <translation>Alle Klebepunkte gebügelt, Bügeleisen aus, nichts halb fertig.</translation>
    </message>
    <message>
        <source>You leave. Finish your zone first; say which row you have reached.</source>
        <translation>Aufbruch. Vorher die Zone fertig machen; sagen, bis zu welcher Reihe.</translation>
    </message>
    <message>
        <source>How close together do dots go?</source>
        <translation>Wie dicht kommen die Klebepunkte?</translation>
    </message>
    <message>
        <source>Lay your fist on the quilt: wherever it lies, it touches a dot.</source>
        <translation>Die Faust auf den Quilt legen: Wo sie auch liegt, berührt sie einen Klebepunkt.</translation>
    </message>
    <message>
        <source>No spot of the quilt is farther than %1 from a dot, so the layers are held together everywhere.</source>
        <translation>Keine Stelle des Quilts ist weiter als %1 von einem Klebepunkt entfernt; so werden die Lagen überall zusammengehalten.</translation>
    </message>
    <message>
        <source>A fist or a palm between them holds the layers so that nothing creeps under the needle. Rows with every second one half a step over are the thinnest covering there is, and two marked ribbons place them.</source>
        <translation>Eine Faust oder eine Handbreite dazwischen hält die Lagen so, dass unter der Nadel nichts wandert. Reihen, jede zweite um einen halben Schritt versetzt, kommen mit den wenigsten aus, und zwei Bänder mit Marken geben die Stellen an.</translation>
    </message>
    <message>
        <source>Only then are pins closed.</source>
        <translation>Erst dann werden Nadeln geschlossen.</translation>
    </message>
    <message>
        <source>Pin at the ribbons&apos; marks.</source>
        <translation>An den Marken der Bänder stecken.</translation>
    </message>
    <message>
        <source>All pins closed, nothing half done.</source>
        <translation>Alle Nadeln geschlossen, nichts halb fertig.</translation>
    </message>
    <message>
        <source>You leave. Close your open pins first; say which row you have reached.</source>
        <translation>Aufbruch. Vorher offene Nadeln schließen; sagen, bis zu welcher Reihe.</translation>
    </message>
    <message>
        <source>How close together do pins go?</source>
        <translation>Wie dicht kommen die Sicherheitsnadeln?</translation>
    </message>
    <message>
        <source>Lay your fist on the quilt: wherever it lies, it touches a pin.</source>
        <translation>Die Faust auf den Quilt legen: Wo sie auch liegt, berührt sie eine Nadel.</translation>
    </message>
    <message>
        <source>No spot of the quilt is farther than %1 from a pin, so the layers are held together everywhere.</source>
        <translation>Keine Stelle des Quilts ist weiter als %1 von einer Nadel entfernt; so werden die Lagen überall zusammengehalten.</translation>
    </message>
    <message>
        <source>Stitch</source>
        <translation>Heften</translation>
    </message>
    <message>
        <source>From the middle outward; nobody pulls a thread tight.</source>
        <translation>Von der Mitte nach außen; niemand zieht den Faden straff.</translation>
    </message>
    <message>
        <source>Your rows, from the middle outward, through all three layers.</source>
        <translation>Die eigenen Reihen, von der Mitte nach außen, durch alle drei Lagen.</translation>
    </message>
    <message>
        <source>Never pull the thread tight.</source>
        <translation>Den Faden nie straff ziehen.</translation>
    </message>
    <message>
        <source>Thread needles for the others.</source>
        <translation>Für die anderen Nähnadeln einfädeln.</translation>
    </message>
    <message>
        <source>Sew the rows</source>
        <translation>Reihen heften</translation>
    </message>
    <message>
        <source>stitch</source>
        <translation>heften</translation>
    </message>
    <message>
        <source>Long stitches through all three layers, the thread lying loose. At the end of your part of a row one stitch back, and a hand&apos;s breadth of thread left.</source>
        <translation>Lange Stiche durch alle drei Lagen, der Faden liegt locker. Am Ende des eigenen Stücks einer Reihe ein Stich zurück, eine Handbreit Faden bleibt stehen.</translation>
    </message>
    <message>
        <source>Needles are counted before the pass is moved.</source>
        <translation>Vor dem Weiterschieben werden die Nähnadeln gezählt.</translation>
    </message>
    <message>
        <source>the stitching</source>
        <translation>das Heften der Reihen</translation>
    </message>
    <message>
        <source>The stitching</source>
        <translation>Das Heften der Reihen</translation>
    </message>
    <message>
        <source>stitched</source>
        <translation>geheftet</translation>
    </message>
    <message>
        <source>%1: sew %2</source>
        <translation>%1: %2 heften</translation>
    </message>
    <message>
        <source>%1 stitches %2</source>
        <translation>%1 heftet %2</translation>
    </message>
    <message>
        <source>%1 stitch %2</source>
        <translation>%1 heften %2</translation>
    </message>
    <message>
        <source>%1 stitches %2 at %3</source>
        <translation>%1 heftet %2 um %3</translation>
    </message>
    <message>
        <source>%1 is stitched</source>
        <translation>%1 ist geheftet</translation>
    </message>
    <message>
        <source>%1 are stitched</source>
        <translation>%1 sind geheftet</translation>
    </message>
    <message>
        <source>stitching of zone %1</source>
        <translation>Heften von Zone %1</translation>
    </message>
    <message>
        <source>stitching of zones %1</source>
        <translation>Heften der Zonen %1</translation>
    </message>
    <message>
        <source>Thread</source>
        <translation>Faden</translation>
    </message>
    <message>
        <source>Stitches</source>
        <translation>Stiche</translation>
    </message>
    <message>
        <source>Where the rows of stitches go</source>
        <translation>Wo die Heftreihen liegen</translation>
    </message>
    <message>
        <source>Baste with thread, which may cross seams</source>
        <translation>Mit Faden heften, der über Nähte laufen darf</translation>
    </message>
    <message>
        <source>Only then is it sewn.</source>
        <translation>Erst dann wird geheftet.</translation>
    </message>
    <message>
        <source>A row at every mark of the side ribbon.</source>
        <translation>Eine Reihe an jeder Marke des seitlichen Bandes.</translation>
    </message>
    <message>
        <source>Every thread fastened, nothing half done.</source>
        <translation>Jeder Faden vernäht, nichts halb fertig.</translation>
    </message>
    <message>
        <source>You leave. Fasten your thread first; say which row you have reached.</source>
        <translation>Aufbruch. Vorher den Faden vernähen; sagen, bis zu welcher Reihe.</translation>
    </message>
    <message>
        <source>No pleat below? Does every stitch reach the back?</source>
        <translation>Keine Falte darunter? Fasst jeder Stich die Rückseite?</translation>
    </message>
    <message>
        <source>Needles counted; ends of thread picked up.</source>
        <translation>Nähnadeln gezählt; Fadenenden aufgelesen.</translation>
    </message>
    <message>
        <source>Needles counted. The thread stays in until it is quilted; one person then draws it out in about 1 minute.</source>
        <translation>Nähnadeln gezählt. Der Faden bleibt bis zum Quilten drin; danach zieht ihn eine Person in etwa 1 Minute heraus.</translation>
    </message>
    <message>
        <source>Needles counted. The thread stays in until it is quilted; one person then draws it out in about %1 minutes.</source>
        <translation>Nähnadeln gezählt. Der Faden bleibt bis zum Quilten drin; danach zieht ihn eine Person in etwa %1 Minuten heraus.</translation>
    </message>
    <message>
        <source>Every needle is counted out and counted back.</source>
        <translation>Jede Nähnadel wird ausgegeben und wieder gezählt.</translation>
    </message>
    <message>
        <source>Needles are counted out and counted back, and never held in the mouth. What falls is picked up at once.</source>
        <translation>Nähnadeln werden ausgegeben und wieder gezählt und nie in den Mund genommen. Was fällt, wird sofort aufgehoben.</translation>
    </message>
    <message>
        <source>How far apart do the rows go?</source>
        <translation>Wie weit liegen die Reihen auseinander?</translation>
    </message>
    <message>
        <source>Lay your fist on the quilt: wherever it lies, it touches a row.</source>
        <translation>Die Faust auf den Quilt legen: Wo sie auch liegt, berührt sie eine Reihe.</translation>
    </message>
    <message>
        <source>1 stitch</source>
        <translation>1 Stich</translation>
    </message>
    <message>
        <source>%1 stitches</source>
        <translation>%1 Stiche</translation>
    </message>
    <message>
        <source>rows every %1</source>
        <translation>Reihen alle %1</translation>
    </message>
    <message>
        <source>No spot of the quilt is farther than %1 from a stitch, so the layers are held together everywhere.</source>
        <translation>Keine Stelle des Quilts ist weiter als %1 von einem Stich entfernt; so werden die Lagen überall zusammengehalten.</translation>
    </message>
    <message>
        <source>A palm between rows of long stitches holds the layers so that nothing creeps under the needle; thread may cross seams and is drawn out afterwards.</source>
        <translation>Eine Handbreit zwischen Reihen langer Stiche hält die Lagen so, dass unter der Nadel nichts wandert; der Faden darf über Nähte laufen und wird danach herausgezogen.</translation>
    </message>
    <message>
        <source>1 single stitch</source>
        <translation>1 einzelner Stich</translation>
    </message>
    <message>
        <source>%1 single stitches</source>
        <translation>%1 einzelne Stiche</translation>
    </message>
    <message>
        <source>1 single stitch more: %1.</source>
        <translation>1 einzelner Stich dazu: %1.</translation>
    </message>
    <message>
        <source>%1 single stitches more: %2.</source>
        <translation>%1 einzelne Stiche dazu: %2.</translation>
    </message>
    <message>
        <source>Fewest stitches: %1 or fewer, not %2</source>
        <translation>Am wenigsten Stiche: %1 oder weniger statt %2</translation>
    </message>
    <message>
        <source>thread your needles, each with twice the length of a row.</source>
        <translation>Nähnadeln einfädeln, jede mit der doppelten Länge einer Reihe.</translation>
    </message>
    <message>
        <source>Zone %1 is sewn in one step.</source>
        <translation>Zone %1 wird in einem Schritt geheftet.</translation>
    </message>
    <message>
        <source>basting thread</source>
        <translation>Heftfaden</translation>
    </message>
    <message>
        <source>long needles</source>
        <translation>lange Nähnadeln</translation>
    </message>
    <message>
        <source>Remove these pins before the needle comes to them, or use shorter pins.</source>
        <translation>Nehmen Sie diese Nadeln heraus, bevor die Nähnadel zu ihnen kommt, oder nehmen Sie kürzere.</translation>
    </message>
    <message>
        <source>One needle each, never in the mouth or in the quilt.</source>
        <translation>Jede hat eine Nähnadel, nie im Mund und nie im Stoff abgelegt.</translation>
    </message>
    <message>
        <source>%1 has no zones in this plan: there is no room for one more place, or no time for it. %1 lays, lifts and hands things on.</source>
        <translation>%1 hat in diesem Plan keine Zonen: Für noch einen Platz fehlt der Raum oder die Zeit. %1 legt, hebt und reicht zu.</translation>
    </message>
    <message>
        <source>The edge of the top cannot be held from %1 inside it; %2 lies nearer: %3.</source>
        <translation>Der Rand des Tops lässt sich aus %1 Abstand nicht halten; %2 liegt näher: %3.</translation>
    </message>
    <message>
        <source>The edge of the top cannot be held from %1 inside it; %2 lie nearer: %3.</source>
        <translation>Der Rand des Tops lässt sich aus %1 Abstand nicht halten; %2 liegen näher: %3.</translation>
    </message>
    <message>
        <source>Allow them nearer to the edge.</source>
        <translation>Sie näher am Rand zulassen.</translation>
    </message>
    <message>
        <source>Pins, dots, thread or spray</source>
        <translation>Nadeln, Klebepunkte, Faden oder Spray</translation>
    </message>
    <message>
        <source>Outdoors, or windows and doors are open</source>
        <translation>Im Freien, oder Fenster und Türen sind offen</translation>
    </message>
    <message>
        <source>Has trouble breathing</source>
        <translation>Bekommt schwer Luft</translation>
    </message>
    <message>
        <source>is &apos;%1&apos;, which no sentence of the file says.</source>
        <translation>ist „%1“; das sagt kein Satz der Datei.</translation>
    </message>
    <message>
        <source>is &apos;%1&apos;; tables of that size are called &apos;%2&apos; elsewhere.</source>
        <translation>ist „%1“; Tische dieser Größe heißen sonst „%2“.</translation>
    </message>
    <message>
        <source>Go outdoors, or open windows and doors</source>
        <translation>Ins Freie gehen oder Fenster und Türen öffnen</translation>
    </message>
    <message>
        <source>the waiting</source>
        <translation>das Warten</translation>
    </message>
    <message>
        <source>The waiting</source>
        <translation>Das Warten</translation>
    </message>
    <message>
        <source>Fuse dots are pressed with an iron, and basting spray, which catches fire at one, is used on another quilt of this session.</source>
        <translation>Klebepunkte werden mit einem Eisen gepresst, und bei diesem Treffen wird an einem anderen Quilt Heftspray benutzt, das daran Feuer fängt.</translation>
    </message>
    <message>
        <source>Baste one of the two otherwise, or on another day.</source>
        <translation>Einen der beiden anders heften oder an einem anderen Tag.</translation>
    </message>
    <message>
        <source>Spray</source>
        <translation>Sprühen</translation>
    </message>
    <message>
        <source>Top and batting back: one half, then the other; from pass 2 on, onto what is basted.</source>
        <translation>Top und Vlies zurück: erst die eine Hälfte, dann die andere; ab Durchgang 2 auf das schon Geheftete.</translation>
    </message>
    <message>
        <source>Top and batting lie back. From the fold outward, band by band: spray the batting below and smooth it down, spray it above and smooth the top down.</source>
        <translation>Top und Vlies liegen zurück. Von der Falte nach außen, Streifen für Streifen: Vlies unten besprühen und glatt streichen, oben besprühen und das Top glatt streichen.</translation>
    </message>
    <message>
        <source>Never spray toward a face.</source>
        <translation>Nie zu einem Gesicht hin sprühen.</translation>
    </message>
    <message>
        <source>Hold up what is folded back.</source>
        <translation>Das Zurückgeklappte hochhalten.</translation>
    </message>
    <message>
        <source>Wash your hands afterwards; the can&apos;s label decides.</source>
        <translation>Danach Hände waschen; es gilt, was auf der Dose steht.</translation>
    </message>
    <message>
        <source>Spray and smooth down</source>
        <translation>Sprühen und glatt streichen</translation>
    </message>
    <message>
        <source>spray</source>
        <translation>sprühen</translation>
    </message>
    <message>
        <source>A light, even mist from as far off as the can says. Every band is smoothed from the fold outward before the next.</source>
        <translation>Leicht und gleichmäßig, aus dem Abstand, der auf der Dose steht. Jeder Streifen wird von der Falte nach außen glatt gestrichen, bevor der nächste kommt.</translation>
    </message>
    <message>
        <source>Plenty of air, no iron, no flame; never spray toward a face.</source>
        <translation>Viel Luft, kein Eisen, keine Flamme; nie zu einem Gesicht hin sprühen.</translation>
    </message>
    <message>
        <source>the spraying</source>
        <translation>das Sprühen</translation>
    </message>
    <message>
        <source>The spraying</source>
        <translation>Das Sprühen</translation>
    </message>
    <message>
        <source>sprayed</source>
        <translation>besprüht</translation>
    </message>
    <message>
        <source>%1: spray %2</source>
        <translation>%1: %2 besprühen</translation>
    </message>
    <message>
        <source>%1 sprays %2</source>
        <translation>%1 besprüht %2</translation>
    </message>
    <message>
        <source>%1 spray %2</source>
        <translation>%1 besprühen %2</translation>
    </message>
    <message>
        <source>%1 sprays %2 at %3</source>
        <translation>%1 besprüht %2 um %3</translation>
    </message>
    <message>
        <source>%1 is sprayed</source>
        <translation>%1 ist besprüht</translation>
    </message>
    <message>
        <source>%1 are sprayed</source>
        <translation>%1 sind besprüht</translation>
    </message>
    <message>
        <source>spraying of zone %1</source>
        <translation>das Sprühen von Zone %1</translation>
    </message>
    <message>
        <source>spraying of zones %1</source>
        <translation>das Sprühen der Zonen %1</translation>
    </message>
    <message>
        <source>Sprayed patches</source>
        <translation>Besprühte Felder</translation>
    </message>
    <message>
        <source>Where the bands go</source>
        <translation>Wo die Streifen liegen</translation>
    </message>
    <message>
        <source>Baste with spray, which may lie on seams</source>
        <translation>Mit Spray heften, das auf Nähten liegen darf</translation>
    </message>
    <message>
        <source>A ripple is lifted from the nearest edge and smoothed down again.</source>
        <translation>Eine Welle wird vom nächsten Rand her gelöst und noch einmal glatt gestrichen.</translation>
    </message>
    <message>
        <source>A band at every mark of the side ribbon.</source>
        <translation>Ein Streifen an jeder Marke des seitlichen Bandes.</translation>
    </message>
    <message>
        <source>Every band smoothed down, cans closed, nothing half done.</source>
        <translation>Jeder Streifen glatt gestrichen, Dosen zu, nichts halb fertig.</translation>
    </message>
    <message>
        <source>You leave. Smooth your band down first; say which one you have reached.</source>
        <translation>Aufbruch. Erst den eigenen Streifen glatt streichen und sagen, bei welchem Schluss ist.</translation>
    </message>
    <message>
        <source>No pleat below? Does the backing hold?</source>
        <translation>Unten keine Falte? Hält die Rückseite?</translation>
    </message>
    <message>
        <source>Cans closed, away from heat; covers folded inward; hands washed.</source>
        <translation>Dosen zu und fern von Wärme; Abdeckungen nach innen gefaltet; Hände gewaschen.</translation>
    </message>
    <message>
        <source>Cans closed, covers off, hands washed.</source>
        <translation>Dosen zu, Abdeckungen weg, Hände gewaschen.</translation>
    </message>
    <message>
        <source>Spray only outdoors or with windows and doors open, away from irons and flames and from anybody who has trouble breathing.</source>
        <translation>Nur im Freien oder bei offenen Fenstern und Türen sprühen, fern von Eisen und Flammen und von allen, die schwer Luft bekommen.</translation>
    </message>
    <message>
        <source>Table and floor are covered. Never spray toward a face; wash your hands afterwards. The can&apos;s label decides.</source>
        <translation>Tisch und Boden sind abgedeckt. Nie zu einem Gesicht hin sprühen; danach Hände waschen. Es gilt, was auf der Dose steht.</translation>
    </message>
    <message>
        <source>How deep is a band of spray?</source>
        <translation>Wie tief ist ein Sprühstreifen?</translation>
    </message>
    <message>
        <source>A band is sprayed and smoothed down in one go; a forearm and a hand are about 18 in.</source>
        <translation>Ein Streifen wird in einem Zug besprüht und glatt gestrichen; Unterarm und Hand sind etwa 45 cm.</translation>
    </message>
    <message>
        <source>1 patch</source>
        <translation>1 Feld</translation>
    </message>
    <message>
        <source>%1 patches</source>
        <translation>%1 Felder</translation>
    </message>
    <message>
        <source>bands of %1</source>
        <translation>Streifen von %1</translation>
    </message>
    <message>
        <source>The patches lie side by side, no spot farther than %1 from the middle of one, so the layers are held together everywhere.</source>
        <translation>Die Felder liegen dicht an dicht, keine Stelle weiter als %1 von der Mitte eines Feldes, so sind die Lagen überall verbunden.</translation>
    </message>
    <message>
        <source>A band no deeper than two hands smooth in one go does not set before it lies flat. A patch is a stretch of a band as wide as the band is deep; zones and shares are counted in them.</source>
        <translation>Ein Streifen, nicht tiefer, als zwei Hände in einem Zug glatt streichen, bindet nicht ab, bevor er flach liegt. Ein Feld ist ein Stück Streifen, so breit wie der Streifen tief; Zonen und Anteile werden in Feldern gezählt.</translation>
    </message>
    <message>
        <source>1 single patch</source>
        <translation>1 einzelnes Feld</translation>
    </message>
    <message>
        <source>%1 single patches</source>
        <translation>%1 einzelne Felder</translation>
    </message>
    <message>
        <source>1 single patch more: %1.</source>
        <translation>1 einzelnes Feld mehr: %1.</translation>
    </message>
    <message>
        <source>%1 single patches more: %2.</source>
        <translation>%1 einzelne Felder mehr: %2.</translation>
    </message>
    <message>
        <source>Fewest patches: %1 or fewer, not %2</source>
        <translation>Wenigste Felder: %1 oder weniger, nicht %2</translation>
    </message>
    <message>
        <source>shake the can and try it on scraps, as its label says.</source>
        <translation>die Dose schütteln und an Resten probieren, wie es auf ihr steht.</translation>
    </message>
    <message>
        <source>Zone %1 is sprayed in one step.</source>
        <translation>Zone %1 wird in einem Schritt besprüht.</translation>
    </message>
    <message>
        <source>Go outdoors or open them, and say so of the room; or baste otherwise.</source>
        <translation>Ins Freie gehen oder sie öffnen und das beim Raum angeben; oder anders heften.</translation>
    </message>
    <message>
        <source>%1 has trouble breathing, and basting is not sprayed where such a person is.</source>
        <translation>%1 bekommt schwer Luft; wo so jemand ist, wird nicht gesprüht.</translation>
    </message>
    <message>
        <source>Baste otherwise, or spray when %1 is not there.</source>
        <translation>Anders heften oder sprühen, wenn %1 nicht da ist.</translation>
    </message>
    <message>
        <source>Basting spray catches fire at an iron, and another quilt&apos;s dots are pressed in this session.</source>
        <translation>Heftspray fängt an einem Eisen Feuer, und bei diesem Treffen werden Klebepunkte eines anderen Quilts gepresst.</translation>
    </message>
    <message>
        <source>basting spray, 150 to 200 square feet a can</source>
        <translation>Heftspray, 14 bis 18 m² je Dose</translation>
    </message>
    <message>
        <source>basting spray, 14 to 18 m² a can</source>
        <translation>Heftspray, 14 bis 18 m² je Dose</translation>
    </message>
    <message>
        <source>can</source>
        <translation>Dose</translation>
    </message>
    <message>
        <source>cans</source>
        <translation>Dosen</translation>
    </message>
    <message>
        <source>old sheet to cover the floor</source>
        <translation>altes Laken zum Abdecken des Bodens</translation>
    </message>
    <message>
        <source>old sheets to cover table and floor</source>
        <translation>alte Laken zum Abdecken von Tisch und Boden</translation>
    </message>
    <message>
        <source>the middle %1 of the table is far to reach: lean over</source>
        <translation>die mittleren %1 des Tisches sind weit zu greifen: sich darüberbeugen</translation>
    </message>
    <message>
        <source>Let it begin wherever it is faster.</source>
        <translation>Dort beginnen lassen, wo es schneller geht.</translation>
    </message>
    <message>
        <source>Nobody is at the table, and nobody is still to come. Say first who is there.</source>
        <translation>Am Tisch ist niemand, und niemand kommt noch. Zuerst angeben, wer da ist.</translation>
    </message>
    <message>
        <source>Plenty of air; no iron, no flame; table and floor covered; never spray toward a face; wash your hands; the can&apos;s label decides.</source>
        <translation>Viel Luft; kein Eisen, keine Flamme; Tisch und Boden abgedeckt; nie zu einem Gesicht hin sprühen; Hände waschen; es gilt, was auf der Dose steht.</translation>
    </message>
    <message>
        <source>Spray is only for outdoors or for a room with windows and doors open, and nothing says that this is one.</source>
        <translation>Heftspray ist nur etwas für draußen oder für einen Raum mit offenen Fenstern und Türen, und davon ist nichts gesagt.</translation>
    </message>
    <message>
        <source>In what is left of %1 some zones get fuse dots or are left out. Take that back first, then its passes can be planned anew.</source>
        <translation>Im Rest von %1 bekommen einige Zonen Klebepunkte oder sind ausgelassen. Das zuerst zurücknehmen, dann lassen sich die Durchgänge neu planen.</translation>
    </message>
    <message>
        <source>Where the pins run short</source>
        <translation>Wo die Nadeln nicht reichen</translation>
    </message>
    <message>
        <source>Pins run short: zone %1 gets %2.</source>
        <translation>Die Nadeln reichen nicht: Zone %1 bekommt %2.</translation>
    </message>
    <message>
        <source>Pins run short: zones %1 get %2.</source>
        <translation>Die Nadeln reichen nicht: Die Zonen %1 bekommen %2.</translation>
    </message>
    <message>
        <source>Pins run short: zones %1 and all of pass %2 get %3.</source>
        <translation>Die Nadeln reichen nicht: Die Zonen %1 und alles von Durchgang %2 bekommen %3.</translation>
    </message>
    <message>
        <source>Fuse dots cannot stand in here: the batting does not take an iron, or nobody here may use one.</source>
        <translation>Klebepunkte gehen hier nicht: Das Vlies verträgt kein Bügeleisen, oder niemand hier darf bügeln.</translation>
    </message>
    <message>
        <source>%1 They lie at the same marks.</source>
        <translation>%1 Sie liegen an denselben Marken.</translation>
    </message>
    <message>
        <source>Hands off. At the iron: %1.</source>
        <translation>Hände weg. Am Bügeleisen: %1.</translation>
    </message>
    <message>
        <source>iron</source>
        <translation>Bügeleisen</translation>
    </message>
    <message>
        <source>One strip along the edge of the backing will be wholly or nearly trimmed away, however this fabric is cut. Sew it on all the same: the clamps grip it.</source>
        <translation>Ein Streifen am Rand der Rückseite wird ganz oder fast ganz abgeschnitten, wie dieser Stoff auch geteilt wird. Trotzdem annähen: Daran halten die Klemmen.</translation>
    </message>
    <message>
        <source>first lay the quilt&apos;s middle %1 of the table&apos;s middle, seen from the foot</source>
        <translation>zuerst die Mitte des Quilts neben die des Tisches legen, %1, vom Fuß aus gesehen</translation>
    </message>
    <message>
        <source>Pins run short: all of pass %1 gets %2.</source>
        <translation>Die Nadeln reichen nicht: Der ganze Durchgang %1 bekommt %2.</translation>
    </message>
    <message>
        <source>Pins run short: all of passes %1 gets %2.</source>
        <translation>Die Nadeln reichen nicht: Die ganzen Durchgänge %1 bekommen %2.</translation>
    </message>
    <message>
        <source>Or bring 1 pin more.</source>
        <translation>Oder 1 Nadel mehr mitbringen.</translation>
    </message>
    <message>
        <source>Or bring %1 pins more.</source>
        <translation>Oder %1 Nadeln mehr mitbringen.</translation>
    </message>
    <message>
        <source>Use fuse dots where the pins run short, with an iron</source>
        <translation>Klebepunkte nehmen, wo die Nadeln nicht reichen, mit einem Bügeleisen</translation>
    </message>
    <message>
        <source>Use fuse dots where the pins run short</source>
        <translation>Klebepunkte nehmen, wo die Nadeln nicht reichen</translation>
    </message>
    <message>
        <source>Rows across the quilt, about %1 apart, a dot about every %2, every second row half a step over.</source>
        <translation>Reihen quer über den Quilt, etwa %1 voneinander, etwa alle %2 ein Punkt, jede zweite Reihe um einen halben Schritt versetzt.</translation>
    </message>
    <message>
        <source>Rows from head to foot, about %1 apart, a dot about every %2, every second row half a step over.</source>
        <translation>Reihen vom Kopf zum Fuß, etwa %1 voneinander, etwa alle %2 ein Punkt, jede zweite Reihe um einen halben Schritt versetzt.</translation>
    </message>
    <message>
        <source>Rows across the quilt, about %1 apart, a pin about every %2, every second row half a step over.</source>
        <translation>Reihen quer über den Quilt, etwa %1 voneinander, etwa alle %2 eine Nadel, jede zweite Reihe um einen halben Schritt versetzt.</translation>
    </message>
    <message>
        <source>Rows from head to foot, about %1 apart, a pin about every %2, every second row half a step over.</source>
        <translation>Reihen vom Kopf zum Fuß, etwa %1 voneinander, etwa alle %2 eine Nadel, jede zweite Reihe um einen halben Schritt versetzt.</translation>
    </message>
    <message>
        <source>Where a pin at its mark would be nearer than %1 to a seam, it goes to the nearest place where all of the pin is that far from seams.</source>
        <translation>Läge eine Nadel an ihrer Marke näher als %1 an einer Naht, kommt sie an die nächste Stelle, wo sie ganz so weit von Nähten entfernt ist.</translation>
    </message>
    <message>
        <source>Bands across the quilt, about %1 deep, in patches about %2 wide.</source>
        <translation>Streifen quer über den Quilt, etwa %1 tief, in Feldern von etwa %2 Breite.</translation>
    </message>
    <message>
        <source>Bands from head to foot, about %1 deep, in patches about %2 wide.</source>
        <translation>Streifen von Kopf bis Fuß, etwa %1 tief, in Feldern von etwa %2 Breite.</translation>
    </message>
    <message>
        <source>Rows of stitches across the quilt, about %1 apart: the needle down about every %2, and up again halfway.</source>
        <translation>Heftreihen quer über den Quilt, etwa %1 voneinander: Einstich etwa alle %2, in der Mitte wieder nach oben.</translation>
    </message>
    <message>
        <source>Rows of stitches from head to foot, about %1 apart: the needle down about every %2, and up again halfway.</source>
        <translation>Heftreihen vom Kopf zum Fuß, etwa %1 voneinander: Einstich etwa alle %2, in der Mitte wieder nach oben.</translation>
    </message>
    <message>
        <source>Bring %1 more, better %2 so that some are spare. Or use fuse dots, which are pressed with an iron, where the pins run short. %3</source>
        <translation>Noch %1 mitbringen, besser %2, damit einige übrig sind. Oder dort, wo die Nadeln nicht reichen, Klebepunkte nehmen, die mit dem Bügeleisen angedrückt werden. %3</translation>
    </message>
</context>
<context>
    <name>fields</name>
    <message>
        <source>No</source>
        <translation>Nein</translation>
    </message>
    <message>
        <source>Yes</source>
        <translation>Ja</translation>
    </message>
    <message>
        <source>%1: choose one of those shown.</source>
        <translation>%1: eines der gezeigten wählen.</translation>
    </message>
    <message>
        <source>Basted with</source>
        <translation>Geheftet mit</translation>
    </message>
    <message>
        <source>Way of working</source>
        <translation>Arbeitsweise</translation>
    </message>
    <message>
        <source>The same in every block</source>
        <translation>In jedem Block gleich</translation>
    </message>
    <message>
        <source>As few as can be</source>
        <translation>So wenige wie möglich</translation>
    </message>
    <message>
        <source>We have</source>
        <translation>Haben wir</translation>
    </message>
    <message>
        <source>Roll clips, size %1</source>
        <translation>Rollenclips, Größe %1</translation>
    </message>
    <message>
        <source>Remove this size of clip</source>
        <translation>Diese Clipgröße entfernen</translation>
    </message>
    <message>
        <source>More clips</source>
        <translation>Mehr Clips</translation>
    </message>
    <message>
        <source>Add a size of roll clip</source>
        <translation>Eine Clipgröße hinzufügen</translation>
    </message>
    <message>
        <source>Batting</source>
        <translation>Vlies</translation>
    </message>
    <message>
        <source>Backing</source>
        <translation>Rückseite</translation>
    </message>
    <message>
        <source>Sewing machine</source>
        <translation>Nähmaschine</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Somebody else</source>
        <translation>Noch jemand</translation>
    </message>
    <message>
        <source>Add a person</source>
        <translation>Person hinzufügen</translation>
    </message>
    <message>
        <source>Size as measured</source>
        <translation>Gemessene Größe</translation>
    </message>
    <message>
        <source>Name of the quilt</source>
        <translation>Name des Quilts</translation>
    </message>
    <message>
        <source>Width, reading %1</source>
        <translation>Breite, Messung %1</translation>
    </message>
    <message>
        <source>Length, reading %1</source>
        <translation>Länge, Messung %1</translation>
    </message>
    <message>
        <source>Add a reading each way</source>
        <translation>Je eine Messung hinzufügen</translation>
    </message>
    <message>
        <source>Keep one reading each way</source>
        <translation>Nur je eine Messung behalten</translation>
    </message>
    <message>
        <source>Blocks</source>
        <translation>Blöcke</translation>
    </message>
    <message>
        <source>This top has no block grid</source>
        <translation>Dieses Top hat kein Blockraster</translation>
    </message>
    <message>
        <source>Describe a block grid</source>
        <translation>Blockraster beschreiben</translation>
    </message>
    <message>
        <source>Quilting</source>
        <translation>Quilten</translation>
    </message>
    <message>
        <source>Measures</source>
        <translation>Maße</translation>
    </message>
    <message>
        <source>Inches</source>
        <translation>Zoll</translation>
    </message>
    <message>
        <source>Centimeters</source>
        <translation>Zentimeter</translation>
    </message>
    <message>
        <source>Millimeters</source>
        <translation>Millimeter</translation>
    </message>
    <message>
        <source>Tables</source>
        <translation>Tische</translation>
    </message>
    <message>
        <source>Tables, kind %1</source>
        <translation>Tische, Art %1</translation>
    </message>
    <message>
        <source>No table: work on the floor</source>
        <translation>Kein Tisch: auf dem Boden arbeiten</translation>
    </message>
    <message>
        <source>Remove this kind of table</source>
        <translation>Diese Art Tisch entfernen</translation>
    </message>
    <message>
        <source>On the floor</source>
        <translation>Auf dem Boden</translation>
    </message>
    <message>
        <source>More tables</source>
        <translation>Mehr Tische</translation>
    </message>
    <message>
        <source>Add tables</source>
        <translation>Tische hinzufügen</translation>
    </message>
    <message>
        <source>Add another kind of table</source>
        <translation>Andere Art Tisch hinzufügen</translation>
    </message>
    <message>
        <source>Surfaces</source>
        <translation>Flächen</translation>
    </message>
    <message>
        <source>Leftover piece %1</source>
        <translation>Reststück %1</translation>
    </message>
    <message>
        <source>Remove this piece</source>
        <translation>Dieses Stück entfernen</translation>
    </message>
    <message>
        <source>Leftovers</source>
        <translation>Reststücke</translation>
    </message>
    <message>
        <source>Add a leftover piece of batting</source>
        <translation>Vlies-Reststück hinzufügen</translation>
    </message>
    <message>
        <source>Backing fabric %1</source>
        <translation>Rückseitenstoff %1</translation>
    </message>
    <message>
        <source>Remove this fabric</source>
        <translation>Diesen Stoff entfernen</translation>
    </message>
    <message>
        <source>Backing fabrics</source>
        <translation>Rückseitenstoffe</translation>
    </message>
    <message>
        <source>Add a backing fabric</source>
        <translation>Rückseitenstoff hinzufügen</translation>
    </message>
    <message>
        <source>Wall along the upper side of the drawing</source>
        <translation>Wand an der oberen Seite der Zeichnung</translation>
    </message>
    <message>
        <source>Wall along the lower side of the drawing</source>
        <translation>Wand an der unteren Seite der Zeichnung</translation>
    </message>
    <message>
        <source>Wall at the left end</source>
        <translation>Wand am linken Ende</translation>
    </message>
    <message>
        <source>Wall at the right end</source>
        <translation>Wand am rechten Ende</translation>
    </message>
    <message>
        <source>Walls</source>
        <translation>Wände</translation>
    </message>
    <message>
        <source>Helper %1</source>
        <translation>Person %1</translation>
    </message>
    <message>
        <source>Along the tables</source>
        <translation>Längs zu den Tischen</translation>
    </message>
    <message>
        <source>Across the tables</source>
        <translation>Quer zu den Tischen</translation>
    </message>
    <message>
        <source>Craft, %1</source>
        <translation>Craft, %1</translation>
    </message>
    <message>
        <source>Crib, %1</source>
        <translation>Crib, %1</translation>
    </message>
    <message>
        <source>Throw, %1</source>
        <translation>Throw, %1</translation>
    </message>
    <message>
        <source>Twin, %1</source>
        <translation>Twin, %1</translation>
    </message>
    <message>
        <source>Full, %1</source>
        <translation>Full, %1</translation>
    </message>
    <message>
        <source>Queen, %1</source>
        <translation>Queen, %1</translation>
    </message>
    <message>
        <source>King, %1</source>
        <translation>King, %1</translation>
    </message>
    <message>
        <source>Wherever there is work</source>
        <translation>Wo Arbeit ist</translation>
    </message>
    <message>
        <source>The upper side of the drawing</source>
        <translation>Die obere Seite der Zeichnung</translation>
    </message>
    <message>
        <source>The lower side of the drawing</source>
        <translation>Die untere Seite der Zeichnung</translation>
    </message>
    <message>
        <source>The left end</source>
        <translation>Linkes Ende</translation>
    </message>
    <message>
        <source>The right end</source>
        <translation>Rechtes Ende</translation>
    </message>
    <message>
        <source>Width at the head</source>
        <translation>Breite am Kopf</translation>
    </message>
    <message>
        <source>Width at the foot</source>
        <translation>Breite am Fuß</translation>
    </message>
    <message>
        <source>Width in the middle</source>
        <translation>Breite in der Mitte</translation>
    </message>
    <message>
        <source>Length at the left</source>
        <translation>Länge links</translation>
    </message>
    <message>
        <source>Length at the right</source>
        <translation>Länge rechts</translation>
    </message>
    <message>
        <source>Length in the middle</source>
        <translation>Länge in der Mitte</translation>
    </message>
    <message>
        <source>Corners</source>
        <translation>Ecken</translation>
    </message>
    <message>
        <source>Measure the diagonals</source>
        <translation>Diagonalen messen</translation>
    </message>
    <message>
        <source>From head left to foot right</source>
        <translation>Von Kopf links nach Fuß rechts</translation>
    </message>
    <message>
        <source>From head right to foot left</source>
        <translation>Von Kopf rechts nach Fuß links</translation>
    </message>
    <message>
        <source>Further seam %1</source>
        <translation>Weitere Naht %1</translation>
    </message>
    <message>
        <source>Begins, from the left</source>
        <translation>Beginnt, von links</translation>
    </message>
    <message>
        <source>Begins, from the head</source>
        <translation>Beginnt, vom Kopf</translation>
    </message>
    <message>
        <source>Ends, from the left</source>
        <translation>Endet, von links</translation>
    </message>
    <message>
        <source>Ends, from the head</source>
        <translation>Endet, vom Kopf</translation>
    </message>
    <message>
        <source>Seams</source>
        <translation>Nähte</translation>
    </message>
    <message>
        <source>Add a seam</source>
        <translation>Naht hinzufügen</translation>
    </message>
    <message>
        <source>Pack of %1</source>
        <translation>Packung, %1</translation>
    </message>
    <message>
        <source>Fewest joins</source>
        <translation>Wenigste Stöße</translation>
    </message>
    <message>
        <source>Off a roll, %1 wide</source>
        <translation>Von der Rolle, %1 breit</translation>
    </message>
    <message>
        <source>Pack of another size</source>
        <translation>Packung anderer Größe</translation>
    </message>
    <message>
        <source>Pack of another size: enter its width and length, such as %1.</source>
        <translation>Packung anderer Größe: Breite und Länge eintragen, etwa %1.</translation>
    </message>
    <message>
        <source>Fabric %1</source>
        <translation>Stoff %1</translation>
    </message>
    <message>
        <source>Leftover %1</source>
        <translation>Rest %1</translation>
    </message>
    <message>
        <source>Not square? Measure its diagonals</source>
        <translation>Nicht rechtwinklig? Diagonalen messen</translation>
    </message>
    <message>
        <source>One diagonal</source>
        <translation>Eine Diagonale</translation>
    </message>
    <message>
        <source>The other diagonal</source>
        <translation>Die andere Diagonale</translation>
    </message>
    <message>
        <source>We have, in yards</source>
        <translation>Haben wir, in Yards</translation>
    </message>
    <message>
        <source>We have, in meters</source>
        <translation>Haben wir, in Metern</translation>
    </message>
    <message>
        <source>Price of a yard (0: not known)</source>
        <translation>Preis je Yard (0: unbekannt)</translation>
    </message>
    <message>
        <source>Price of a meter (0: not known)</source>
        <translation>Preis je Meter (0: unbekannt)</translation>
    </message>
    <message>
        <source>Size of the top</source>
        <translation>Größe des Tops</translation>
    </message>
    <message>
        <source>As measured</source>
        <translation>Wie gemessen</translation>
    </message>
    <message>
        <source>As the blocks make it</source>
        <translation>Wie die Blöcke sie ergeben</translation>
    </message>
    <message>
        <source>Set the borders by the measured size</source>
        <translation>Rand nach dem gemessenen Maß setzen</translation>
    </message>
    <message>
        <source>The easier one</source>
        <translation>Was einfacher ist</translation>
    </message>
    <message>
        <source>In rows, by ribbons</source>
        <translation>In Reihen, mit Bändern</translation>
    </message>
    <message>
        <source>With the others</source>
        <translation>Bei den anderen</translation>
    </message>
    <message>
        <source>Apart, in group %1</source>
        <translation>Für sich, in Gruppe %1</translation>
    </message>
    <message>
        <source>%1: “%2” is not a length; enter one such as 12 1/2, 12.5 in, 317.5 mm, 31.75 cm or 2 yd.</source>
        <translation>%1: „%2“ ist keine Länge; bitte eine eingeben wie 12 1/2, 12,5 in, 317,5 mm, 31,75 cm oder 2 yd.</translation>
    </message>
    <message>
        <source>%1: “%2” is not a count; enter a whole number, such as 4.</source>
        <translation>%1: „%2“ ist keine Anzahl; bitte eine ganze Zahl eingeben, etwa 4.</translation>
    </message>
    <message>
        <source>%1: “%2” is not a number; enter one such as 1.2.</source>
        <translation>%1: „%2“ ist keine Zahl; bitte eine eingeben, etwa 1,2.</translation>
    </message>
    <message>
        <source>As is fastest</source>
        <translation>Wie es am schnellsten geht</translation>
    </message>
    <message>
        <source>Remove break</source>
        <translation>Pause entfernen</translation>
    </message>
    <message>
        <source>Add a break</source>
        <translation>Pause hinzufügen</translation>
    </message>
    <message>
        <source>Remove %1</source>
        <translation>%1 entfernen</translation>
    </message>
    <message>
        <source>Remove the diagonals</source>
        <translation>Diagonalen entfernen</translation>
    </message>
    <message>
        <source>Remove this seam</source>
        <translation>Diese Naht entfernen</translation>
    </message>
    <message>
        <source>%1: “%2” is not a time of day; enter one such as 13:00 or 1:00 pm.</source>
        <translation>%1: „%2“ ist keine Uhrzeit; bitte etwa 13:00 eingeben.</translation>
    </message>
    <message>
        <source>Kept for other quilts</source>
        <translation>Behalten für andere Quilts</translation>
    </message>
    <message>
        <source>Depth of a band</source>
        <translation>Tiefe eines Streifens</translation>
    </message>
    <message>
        <source>Air</source>
        <translation>Luft</translation>
    </message>
    <message>
        <source>Bring more</source>
        <translation>Mehr mitbringen</translation>
    </message>
</context>
<context>
    <name>photo</name>
    <message>
        <source>There is no file %1: choose a photo.</source>
        <translation>Die Datei %1 gibt es nicht: bitte ein Foto wählen.</translation>
    </message>
    <message>
        <source>%1 is not a file: choose a photo.</source>
        <translation>%1 ist keine Datei: bitte ein Foto wählen.</translation>
    </message>
    <message>
        <source>%1 is too large: choose a photo of up to %2 MB.</source>
        <translation>%1 ist zu groß: bitte ein Foto bis %2 MB wählen.</translation>
    </message>
    <message>
        <source>%1 cannot be read: check that you may open it.</source>
        <translation>%1 lässt sich nicht lesen: Zugriffsrechte prüfen.</translation>
    </message>
    <message>
        <source>%1 is not a photo: choose a JPEG or PNG picture.</source>
        <translation>%1 ist kein Foto: bitte ein Bild als JPEG oder PNG wählen.</translation>
    </message>
    <message>
        <source>%1 is damaged: choose another photo.</source>
        <translation>%1 ist beschädigt: bitte ein anderes Foto wählen.</translation>
    </message>
    <message>
        <source>%1 is too small to show a quilt: choose a larger photo.</source>
        <translation>%1 ist zu klein, um einen Quilt zu zeigen: bitte ein größeres Foto wählen.</translation>
    </message>
    <message>
        <source>%1 has too many pixels (%2 × %3): choose a smaller photo.</source>
        <translation>%1 hat zu viele Pixel (%2 × %3): bitte ein kleineres Foto wählen.</translation>
    </message>
</context>
<context>
    <name>rows</name>
    <message>
        <source>Nothing to buy</source>
        <translation>Nichts zu kaufen</translation>
    </message>
    <message>
        <source>%1 sq ft left over</source>
        <translation>%1 sq ft übrig</translation>
    </message>
    <message>
        <source>%1 m² left over</source>
        <translation>%1 m² übrig</translation>
    </message>
    <message>
        <source>no seam</source>
        <translation>keine Naht</translation>
    </message>
    <message>
        <source>1 seam</source>
        <translation>1 Naht</translation>
    </message>
    <message>
        <source>%1 seams</source>
        <translation>%1 Nähte</translation>
    </message>
    <message>
        <source>Needs %1.</source>
        <translation>Braucht %1.</translation>
    </message>
    <message>
        <source>%1, from one piece.</source>
        <translation>%1, aus einem Stück.</translation>
    </message>
    <message>
        <source>First cut %1 in two, at %2 of its %3.</source>
        <translation>Zuerst %1 teilen, bei %2 der %3.</translation>
    </message>
    <message>
        <source>width</source>
        <translation>Breite</translation>
    </message>
    <message>
        <source>length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>Left over: %1.</source>
        <translation>Übrig: %1.</translation>
    </message>
    <message>
        <source>as measured</source>
        <translation>wie gemessen</translation>
    </message>
    <message>
        <source>as planned, from washed fabric</source>
        <translation>wie geplant, aus gewaschenem Stoff</translation>
    </message>
    <message>
        <source>Nothing to lift</source>
        <translation>Nichts zu heben</translation>
    </message>
    <message>
        <source>1 lift</source>
        <translation>1-mal heben</translation>
    </message>
    <message>
        <source>%1 lifts</source>
        <translation>%1-mal heben</translation>
    </message>
    <message>
        <source>1 person</source>
        <translation>1 Person</translation>
    </message>
    <message>
        <source>%1 people</source>
        <translation>%1 Personen</translation>
    </message>
    <message>
        <source>Nothing is out of reach</source>
        <translation>Nichts ist außer Reichweite</translation>
    </message>
    <message>
        <source>%1 deep</source>
        <translation>%1 tief</translation>
    </message>
    <message>
        <source>%1: everybody reaches it</source>
        <translation>%1: alle erreichen es</translation>
    </message>
    <message>
        <source>%1: %2 of %3 reach all of it</source>
        <translation>%1: %2 von %3 erreichen alles</translation>
    </message>
    <message>
        <source>%1 of shifts</source>
        <translation>%1 Schübe</translation>
    </message>
    <message>
        <source>quilt along the table</source>
        <translation>Quilt längs zum Tisch</translation>
    </message>
    <message>
        <source>quilt across the table</source>
        <translation>Quilt quer zum Tisch</translation>
    </message>
    <message>
        <source>cannot be reached</source>
        <translation>nicht erreichbar</translation>
    </message>
    <message>
        <source>nothing to do</source>
        <translation>nichts zu tun</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>%1 at work</source>
        <translation>%1 bei der Arbeit</translation>
    </message>
    <message>
        <source>saves %1</source>
        <translation>spart %1</translation>
    </message>
    <message>
        <source>Pass %1</source>
        <translation>Durchgang %1</translation>
    </message>
    <message>
        <source>%1.</source>
        <translation>%1.</translation>
    </message>
    <message>
        <source>Top %1, by its largest readings. Batting %2. Backing %3, %4. Each is centered under the top.</source>
        <translation>Top %1 nach den größten Messungen. Vlies %2. Rückseite %3, %4. Alle liegen mittig unter dem Top.</translation>
    </message>
    <message>
        <source>%1, as measured</source>
        <translation>%1, wie gemessen</translation>
    </message>
    <message>
        <source>saves %1 and one pass</source>
        <translation>spart %1 und einen Durchgang</translation>
    </message>
    <message>
        <source>saves %1 and %2 passes</source>
        <translation>spart %1 und %2 Durchgänge</translation>
    </message>
    <message>
        <source>%1 of overage on every side, in every pass</source>
        <translation>%1 Überstand auf jeder Seite, in jedem Durchgang</translation>
    </message>
    <message>
        <source>%1 of overage at head and foot, %2 at the sides, in every pass</source>
        <translation>%1 Überstand an Kopf und Fuß, %2 an den Seiten, in jedem Durchgang</translation>
    </message>
    <message>
        <source>The top leans and takes %1 of it, and layers creep up to %2 while they are basted: %3 are left to trim square.</source>
        <translation>Das Top steht schief und nimmt %1 davon, und die Lagen wandern beim Heften bis zu %2: %3 bleiben zum Begradigen.</translation>
    </message>
    <message>
        <source>Layers creep up to %1 while they are basted: %2 are left to trim square.</source>
        <translation>Die Lagen wandern beim Heften bis zu %1: %2 bleiben zum Begradigen.</translation>
    </message>
    <message>
        <source>Backing</source>
        <translation>Rückseite</translation>
    </message>
    <message>
        <source>Batting</source>
        <translation>Vlies</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>%1. To buy: %2</source>
        <translation>%1. Zu kaufen: %2</translation>
    </message>
    <message>
        <source>%1, joined from %2 leftovers.</source>
        <translation>%1, aus %2 Resten zusammengesetzt.</translation>
    </message>
    <message>
        <source>no lift</source>
        <translation>kein Anheben</translation>
    </message>
    <message>
        <source>%1 of %2 by %3</source>
        <translation>%1, je %2, durch %3</translation>
    </message>
</context>
<context>
    <name>why</name>
    <message>
        <source>Passes</source>
        <translation>Durchgänge</translation>
    </message>
    <message>
        <source>1 pass</source>
        <translation>1 Durchgang</translation>
    </message>
    <message>
        <source>%1 passes</source>
        <translation>%1 Durchgänge</translation>
    </message>
    <message>
        <source>Top</source>
        <translation>Top</translation>
    </message>
    <message>
        <source>Tables pushed together</source>
        <translation>Tische zusammengeschoben</translation>
    </message>
    <message>
        <source>Rim kept free</source>
        <translation>Freier Rand</translation>
    </message>
    <message>
        <source>Anchor strip</source>
        <translation>Ankerstreifen</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Start</translation>
    </message>
    <message>
        <source>Way of all shifts</source>
        <translation>Strecke, die der Quilt geschoben wird</translation>
    </message>
    <message>
        <source>No arrangement on these tables takes fewer than 1 pass.</source>
        <translation>Keine Anordnung auf diesen Tischen braucht weniger als 1 Durchgang.</translation>
    </message>
    <message>
        <source>No arrangement on these tables takes fewer than %1 passes.</source>
        <translation>Keine Anordnung auf diesen Tischen braucht weniger als %1 Durchgänge.</translation>
    </message>
    <message>
        <source>Every shift can move the layers against each other, and costs lifting and clamping. Working outward from the middle lets fullness go to an open edge instead of being caught between two basted areas.</source>
        <translation>Jedes Weiterschieben kann die Lagen gegeneinander bewegen und kostet Heben und Klemmen. Von der Mitte nach außen kann Mehrweite zu einem offenen Rand weichen, statt zwischen zwei gehefteten Flächen gefangen zu sein.</translation>
    </message>
    <message>
        <source>Geometry, exact. Anchor strip of 6 in: from memory, practice 4 to 12 in.</source>
        <translation>Geometrie, exakt. Ankerstreifen von 6 in: aus dem Gedächtnis, üblich sind 4 bis 12 in.</translation>
    </message>
    <message>
        <source>Spacing</source>
        <translation>Abstand</translation>
    </message>
    <message>
        <source>In from the edge</source>
        <translation>Abstand vom Rand</translation>
    </message>
    <message>
        <source>Clear of sewn seams</source>
        <translation>Abstand zu Nähten</translation>
    </message>
    <message>
        <source>seams are not sewn</source>
        <translation>Nähte werden nicht benäht</translation>
    </message>
    <message>
        <source>Without any seam or edge to keep clear of, no fewer than %1 could do it.</source>
        <translation>Ganz ohne Nähte und Ränder ginge es nicht mit weniger als %1.</translation>
    </message>
    <message>
        <source>Finish</source>
        <translation>Ende</translation>
    </message>
    <message>
        <source>Every task takes the trade’s time at the person’s pace. Nobody is in two places, one person takes 24 in of an edge, and pins are closed only after the whole pass has been smoothed.</source>
        <translation>Jede Aufgabe dauert die übliche Zeit im Tempo der Person. Niemand ist an zwei Orten, eine Person braucht 24 in Kante, und Nadeln werden erst geschlossen, wenn der ganze Durchgang glattgestrichen ist.</translation>
    </message>
    <message>
        <source>People</source>
        <translation>Wer kommt</translation>
    </message>
    <message>
        <source>Tasks</source>
        <translation>Aufgaben</translation>
    </message>
    <message>
        <source>Work of all together</source>
        <translation>Arbeit aller zusammen</translation>
    </message>
    <message>
        <source>No schedule of the same tasks ends before %1.</source>
        <translation>Kein Ablauf derselben Aufgaben endet vor %1.</translation>
    </message>
    <message>
        <source>The first hour tells the true pace: at the table the times follow what is ticked.</source>
        <translation>Die erste Stunde zeigt das wahre Tempo: Am Tisch folgen die Zeiten dem, was abgehakt ist.</translation>
    </message>
    <message>
        <source>Times of the tasks: common practice. Bound: proven for this plan.</source>
        <translation>Zeiten der Aufgaben: üblich. Schranke: für diesen Plan bewiesen.</translation>
    </message>
    <message>
        <source>Backing</source>
        <translation>Rückseite</translation>
    </message>
    <message>
        <source>Overage on each side</source>
        <translation>Überstand je Seite</translation>
    </message>
    <message>
        <source>%1 to buy</source>
        <translation>%1 zu kaufen</translation>
    </message>
    <message>
        <source>Seam allowance</source>
        <translation>Nahtzugabe</translation>
    </message>
    <message>
        <source>Shrinks by</source>
        <translation>Läuft ein um</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>Pieces</source>
        <translation>Stücke</translation>
    </message>
    <message>
        <source>Usable width</source>
        <translation>Nutzbare Breite</translation>
    </message>
    <message>
        <source>Quilting draws the layers in, and clamps need something to hold. A seam on the middle line wears and shows, one over a joint of the tables will not lie flat.</source>
        <translation>Quilten zieht die Lagen ein, und Klemmen brauchen etwas zum Halten. Eine Naht in der Mitte nutzt ab und fällt auf, eine über einer Tischfuge liegt nicht glatt.</translation>
    </message>
    <message>
        <source>Batting</source>
        <translation>Vlies</translation>
    </message>
    <message>
        <source>Thickness</source>
        <translation>Dicke</translation>
    </message>
    <message>
        <source>Joining strip</source>
        <translation>Verbindungsstreifen</translation>
    </message>
    <message>
        <source>As measured.</source>
        <translation>Wie gemessen.</translation>
    </message>
    <message>
        <source>Batting that ends short leaves a border with nothing in it; joins kept away from the backing’s seams do not show as ridges.</source>
        <translation>Zu kurzes Vlies lässt einen leeren Rand; Stöße abseits der Rückseitennähte zeichnen sich nicht als Grate ab.</translation>
    </message>
    <message>
        <source>backing %1, batting %2</source>
        <translation>Rückseite %1, Vlies %2</translation>
    </message>
    <message>
        <source>Roll clips</source>
        <translation>Rollenclips</translation>
    </message>
    <message>
        <source>none we have holds a roll of %1</source>
        <translation>keiner, den wir haben, hält eine Rolle von %1</translation>
    </message>
    <message>
        <source>%1 that hold %2</source>
        <translation>%1 für %2</translation>
    </message>
    <message>
        <source>A roll of length L and thickness t fills a ring: D² = 4·L·t / (π·packing). The smallest clip that holds D, one every 15 in of the roll and at least two.</source>
        <translation>Eine Rolle der Länge L und Dicke t füllt einen Ring: D² = 4·L·t / (π·Packung). Der kleinste Clip, der D hält, einer je 15 in Rolle und mindestens zwei.</translation>
    </message>
    <message>
        <source>Quilt in the roll</source>
        <translation>Quilt in der Rolle</translation>
    </message>
    <message>
        <source>Thickness of the layers</source>
        <translation>Dicke der Lagen</translation>
    </message>
    <message>
        <source>Packing, by hand</source>
        <translation>Packung, von Hand</translation>
    </message>
    <message>
        <source>Roll is across</source>
        <translation>Rolle ist dick</translation>
    </message>
    <message>
        <source>Roll is long</source>
        <translation>Rolle ist lang</translation>
    </message>
    <message>
        <source>What hangs drags the layers out of place; a clip that is too small springs off, one that is too large lets the roll open.</source>
        <translation>Was hängt, verzieht die Lagen; ein zu kleiner Clip springt ab, ein zu großer lässt die Rolle aufgehen.</translation>
    </message>
    <message>
        <source>Area rule of wound rolls. Packing and fabric thickness: from memory. One clip every 12 to 18 in: common practice.</source>
        <translation>Flächenregel gewickelter Rollen. Packung und Stoffdicke: aus dem Gedächtnis. Ein Clip je 12 bis 18 in: üblich.</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>Gewicht</translation>
    </message>
    <message>
        <source>Area of the backing times the batting and two layers of fabric, carried in equal parts. Each part stays within the recommended limit for leaning over a table’s edge; a quilt wider than a pair of arms takes two people whatever it weighs.</source>
        <translation>Fläche der Rückseite mal Vlies und zwei Lagen Stoff, zu gleichen Teilen getragen. Jeder Teil bleibt in der empfohlenen Grenze für das Beugen über eine Tischkante; ein Quilt, breiter als ein Paar Arme, braucht zwei Personen, was er auch wiegt.</translation>
    </message>
    <message>
        <source>%1 g/m²</source>
        <translation>%1 g/m²</translation>
    </message>
    <message>
        <source>Fabric, each layer</source>
        <translation>Stoff, je Lage</translation>
    </message>
    <message>
        <source>Limit for a person</source>
        <translation>Grenze je Person</translation>
    </message>
    <message>
        <source>Slide, do not lift, and nobody who was told not to lift does, whatever the figure says.</source>
        <translation>Schieben statt heben; und wer nicht heben soll, hebt nicht, was die Zahl auch sagt.</translation>
    </message>
    <message>
        <source>Revised NIOSH lifting equation, Publication 94-110 (1994); the posture is our assumption. Weight of fabric: from memory.</source>
        <translation>Überarbeitete NIOSH-Hebegleichung, Publikation 94-110 (1994); die Haltung ist angenommen. Stoffgewicht: aus dem Gedächtnis.</translation>
    </message>
    <message>
        <source>Overage of 2 to 4 in, 4 to 6 for a frame, squaring of 4 in a length: common practice. The worth of a seam and the narrowest piece: from memory.</source>
        <translation>Überstand von 5 bis 10 cm, 10 bis 15 im Rahmen, 10 cm je Bahn zum Begradigen: übliche Praxis. Wert einer Naht und schmalstes Teil: aus der Erinnerung.</translation>
    </message>
    <message>
        <source>Overlap lost at each join</source>
        <translation>Verlust durch Überlappen je Stoß</translation>
    </message>
    <message>
        <source>The smallest pack that covers the top with its overage on every side, or a length off the roll; where none is large enough, two packs or lengths off one roll are joined: the fewest joins, then the shortest, then the least bought.</source>
        <translation>Die kleinste Packung, die das Top mit seinem Überstand auf jeder Seite bedeckt, oder ein Stück von der Rolle; wo nichts groß genug ist, werden zwei Packungen oder Bahnen einer Rolle aneinandergesetzt: erst die wenigsten Stöße, dann die kürzesten, dann am wenigsten gekauft.</translation>
    </message>
    <message>
        <source>Leftovers are cut square, trimmed and joined by straight cuts across what is already joined: the fewest joins, then the shortest.</source>
        <translation>Reste werden rechtwinklig geschnitten, begradigt und durch gerade Schnitte über das schon Zusammengesetzte verbunden: erst die wenigsten Stöße, dann die kürzesten.</translation>
    </message>
    <message>
        <source>Overage of 2 to 4 in, sizes of packs and widths of rolls: common practice.</source>
        <translation>Überstand von 5 bis 10 cm, Größen der Packungen und Breiten der Rollen: übliche Praxis.</translation>
    </message>
    <message>
        <source>Half of what a layer is larger than the top, each layer centered under it, less what a top that leans takes once it is laid straight, less %1 for creep: for each side, never for the sum.</source>
        <translation>Die Hälfte dessen, was eine Lage größer ist als das Top, jede mittig darunter, abzüglich dessen, was ein schiefes Top gerade gelegt braucht, und %1 fürs Wandern: für jede Seite, nie in der Summe.</translation>
    </message>
    <message>
        <source>All the overage on one side helps nobody on the other. The four sides are compared before each pass is let go, because a layer that has crept can still be moved then.</source>
        <translation>Der ganze Überstand auf einer Seite nützt der anderen nichts. Die vier Seiten werden vor jedem Weiterschieben verglichen, weil eine gewanderte Lage dann noch verschoben werden kann.</translation>
    </message>
    <message>
        <source>Geometry, exact. Creep: common practice.</source>
        <translation>Geometrie, genau. Wandern: übliche Praxis.</translation>
    </message>
    <message>
        <source>Rows</source>
        <translation>Reihen</translation>
    </message>
    <message>
        <source>Bound and rows: Kershner, American Journal of Mathematics 61 (1939). Spacing: common practice, 3 to 6 in; the batting’s label goes first.</source>
        <translation>Schranke und Reihen: Kershner, American Journal of Mathematics 61 (1939). Abstand: übliche Praxis, 3 bis 6 Zoll; die Angabe auf dem Vlies geht vor.</translation>
    </message>
    <message>
        <source>A pass bastes what lies on the tables and is not basted yet; where the top goes on past the table&apos;s edge, a rim stays free. A strip of basted quilt stays on them as an anchor when the quilt is shifted, so each pass after the first gains the tables&apos; size less rim and strip.</source>
        <translation>Ein Durchgang heftet, was auf den Tischen liegt und noch nicht geheftet ist; wo das Top über die Tischkante hinausgeht, bleibt ein Streifen frei. Beim Weiterschieben bleibt ein gehefteter Streifen als Anker liegen; jeder weitere Durchgang gewinnt deshalb das Maß der Tische ohne freien Streifen und Anker.</translation>
    </message>
    <message>
        <source>%1, finishes at %2</source>
        <translation>%1, fertig um %2</translation>
    </message>
    <message>
        <source>Only what lies on the tables can be basted, so the quilt is moved until every part of it has been on them.</source>
        <translation>Heften lässt sich nur, was auf den Tischen liegt; darum wird der Quilt weitergeschoben, bis jeder Teil dort war.</translation>
    </message>
    <message>
        <source>No place of the top is farther from the middle of one than on a square grid of the spacing: the spacing divided by the root of two.</source>
        <translation>Keine Stelle des Tops liegt weiter von der nächsten Mitte als bei einem quadratischen Raster mit diesem Abstand: Abstand geteilt durch Wurzel zwei.</translation>
    </message>
    <message>
        <source>Farthest from one</source>
        <translation>Größte Entfernung</translation>
    </message>
    <message>
        <source>The backing must be larger than the top on all four sides; this is the least fabric that people would sew it from.</source>
        <translation>Die Rückseite muss auf allen vier Seiten größer sein als das Top; weniger Stoff ginge nur mit Nähten, die niemand nähen würde.</translation>
    </message>
    <message>
        <source>The batting must lie under all of the top and a little more, in as few pieces as can be.</source>
        <translation>Das Vlies muss unter dem ganzen Top liegen und etwas darüber hinaus, in so wenigen Stücken wie möglich.</translation>
    </message>
    <message>
        <source>A clip must be wide enough to go round the roll and tight enough to hold it.</source>
        <translation>Ein Clip muss weit genug sein für die Rolle und eng genug, um sie zu halten.</translation>
    </message>
    <message>
        <source>%1, 1 person by weight</source>
        <translation>%1, nach Gewicht 1 Person</translation>
    </message>
    <message>
        <source>%1, %2 people by weight</source>
        <translation>%1, nach Gewicht %2 Personen</translation>
    </message>
    <message>
        <source>All work at the same time, and we finish when the last of us does.</source>
        <translation>Alle arbeiten gleichzeitig, und fertig sind wir, wenn die Letzte fertig ist.</translation>
    </message>
    <message>
        <source>Every way to piece the backing was tried; this one needs the least fabric to be bought. Seams are work: to save one, up to %1 more is bought. No piece is narrower than %2, none lies wholly in what is trimmed away at the end, and %3 of every length is cut off to square it. Fabric is bought by the eighth of a yard, or 5 cm, upwards.</source>
        <translation>Jede Art, die Rückseite zusammenzusetzen, wurde probiert; für diese muss am wenigsten Stoff gekauft werden. Nähte sind Arbeit: Um eine zu sparen, werden bis zu %1 mehr gekauft. Kein Stück ist schmaler als %2, keines liegt ganz in dem, was am Ende abgeschnitten wird, und von jeder Länge gehen %3 zum Begradigen ab. Stoff wird in Achtelyards oder 5 cm gekauft, aufgerundet.</translation>
    </message>
    <message>
        <source>If a layer slips to one side by no more than this, it still lies under every edge of the top.</source>
        <translation>Verrutscht eine Lage um nicht mehr als so viel, liegt sie noch unter jeder Kante des Tops.</translation>
    </message>
    <message>
        <source>Overage that remains on each side</source>
        <translation>Überstand, der auf jeder Seite bleibt</translation>
    </message>
    <message>
        <source>Bound: Kershner, American Journal of Mathematics 61 (1939). Depth of a band: common practice, 12 to 18 in; the can’s label goes first.</source>
        <translation>Schranke: Kershner, American Journal of Mathematics 61 (1939). Tiefe eines Streifens: allgemeine Praxis, 30 bis 45 cm; die Angabe auf der Dose geht vor.</translation>
    </message>
    <message>
        <source>As many move the quilt as keep each person’s share under %1.</source>
        <translation>So viele bewegen den Quilt, dass auf niemanden mehr als %1 kommt.</translation>
    </message>
</context>
<context>
    <name>words</name>
    <message>
        <source>%1 toward the %2</source>
        <translation>%1 Richtung %2</translation>
    </message>
    <message>
        <source>%1 lays the backing</source>
        <translation>%1 legt die Rückseite auf</translation>
    </message>
    <message>
        <source>%1 lay the backing</source>
        <translation>%1 legen die Rückseite auf</translation>
    </message>
    <message>
        <source>%1 lays the batting</source>
        <translation>%1 legt das Vlies auf</translation>
    </message>
    <message>
        <source>%1 lay the batting</source>
        <translation>%1 legen das Vlies auf</translation>
    </message>
    <message>
        <source>%1 lays the top</source>
        <translation>%1 legt das Top auf</translation>
    </message>
    <message>
        <source>%1 lay the top</source>
        <translation>%1 legen das Top auf</translation>
    </message>
    <message>
        <source>%1 smooths</source>
        <translation>%1 streicht glatt</translation>
    </message>
    <message>
        <source>%1 smooth</source>
        <translation>%1 streichen glatt</translation>
    </message>
    <message>
        <source>%1 checks underneath</source>
        <translation>%1 prüft unten</translation>
    </message>
    <message>
        <source>%1 check underneath</source>
        <translation>%1 prüfen unten</translation>
    </message>
    <message>
        <source>%1 slides the quilt %2</source>
        <translation>%1 schiebt den Quilt %2</translation>
    </message>
    <message>
        <source>%1 slide the quilt %2</source>
        <translation>%1 schieben den Quilt %2</translation>
    </message>
    <message>
        <source>%1 folds batting and top back</source>
        <translation>%1 schlägt Vlies und Top zurück</translation>
    </message>
    <message>
        <source>%1 fold batting and top back</source>
        <translation>%1 schlagen Vlies und Top zurück</translation>
    </message>
    <message>
        <source>%1 folds them forward</source>
        <translation>%1 schlägt sie vor</translation>
    </message>
    <message>
        <source>%1 fold them forward</source>
        <translation>%1 schlagen sie vor</translation>
    </message>
    <message>
        <source>The quilt cools; nobody touches it</source>
        <translation>Der Quilt kühlt ab; niemand fasst ihn an</translation>
    </message>
    <message>
        <source>%1 turns the quilt over</source>
        <translation>%1 wendet den Quilt</translation>
    </message>
    <message>
        <source>%1 turn the quilt over</source>
        <translation>%1 wenden den Quilt</translation>
    </message>
    <message>
        <source>Nobody yet</source>
        <translation>Noch niemand</translation>
    </message>
    <message>
        <source>; </source>
        <translation>; </translation>
    </message>
    <message>
        <source>Everything is basted.</source>
        <translation>Alles ist geheftet.</translation>
    </message>
    <message>
        <source>Waiting until %1.</source>
        <translation>Warten bis %1.</translation>
    </message>
    <message>
        <source>This quilt is done.</source>
        <translation>Dieser Quilt ist fertig.</translation>
    </message>
    <message>
        <source>In the ditch</source>
        <translation>Im Nahtschatten</translation>
    </message>
    <message>
        <source>Free motion</source>
        <translation>Freihand</translation>
    </message>
    <message>
        <source>Not decided yet</source>
        <translation>Noch offen</translation>
    </message>
    <message>
        <source>From the center</source>
        <translation>Von der Mitte</translation>
    </message>
    <message>
        <source>The faster one</source>
        <translation>Was schneller ist</translation>
    </message>
    <message>
        <source>Lay the batting</source>
        <translation>Vlies auflegen</translation>
    </message>
    <message>
        <source>Lay the top</source>
        <translation>Top auflegen</translation>
    </message>
    <message>
        <source>Palm over it: no ripple</source>
        <translation>Glattstreichen: keine Welle</translation>
    </message>
    <message>
        <source>Check underneath</source>
        <translation>Unten prüfen</translation>
    </message>
    <message>
        <source>Shift the quilt</source>
        <translation>Quilt weiterschieben</translation>
    </message>
    <message>
        <source>Fold batting and top back</source>
        <translation>Vlies und Top zurück</translation>
    </message>
    <message>
        <source>Fold forward</source>
        <translation>Nach vorn klappen</translation>
    </message>
    <message>
        <source>Let it cool</source>
        <translation>Abkühlen lassen</translation>
    </message>
    <message>
        <source>Turn the quilt over</source>
        <translation>Quilt wenden</translation>
    </message>
    <message>
        <source>check underneath</source>
        <translation>unten nachsehen</translation>
    </message>
    <message>
        <source>shift</source>
        <translation>schieben</translation>
    </message>
    <message>
        <source>fold back</source>
        <translation>zurück</translation>
    </message>
    <message>
        <source>fold forward</source>
        <translation>vor</translation>
    </message>
    <message>
        <source>cool</source>
        <translation>abkühlen</translation>
    </message>
    <message>
        <source>turn over</source>
        <translation>wenden</translation>
    </message>
    <message>
        <source>roll up</source>
        <translation>aufrollen</translation>
    </message>
    <message>
        <source>Lift together, on one person&apos;s count. Nobody climbs on a table.</source>
        <translation>Gemeinsam auf Kommando heben. Niemand steigt auf einen Tisch.</translation>
    </message>
    <message>
        <source>Check that the table legs are locked.</source>
        <translation>Prüfen, dass die Tischbeine eingerastet sind.</translation>
    </message>
    <message>
        <source>Hot: nobody touches it yet. Iron off and upright.</source>
        <translation>Heiß: noch niemand fasst es an. Eisen aus und aufrecht.</translation>
    </message>
    <message>
        <source>Lift together, on one person&apos;s count.</source>
        <translation>Gemeinsam auf Kommando heben.</translation>
    </message>
    <message>
        <source>Sweep with a magnet last; keep it away from medical implants and electronics.</source>
        <translation>Zuletzt mit einem Magneten absuchen; von Implantaten und Elektronik fernhalten.</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <translation>%1 und %2</translation>
    </message>
    <message>
        <source>Beside the middle</source>
        <translation>Neben der Mitte</translation>
    </message>
    <message>
        <source>about %1</source>
        <translation>etwa %1</translation>
    </message>
    <message>
        <source>From one end</source>
        <translation>Von einem Ende aus</translation>
    </message>
    <message>
        <source>%1 sets up</source>
        <translation>%1 baut auf</translation>
    </message>
    <message>
        <source>%1 set up</source>
        <translation>%1 bauen auf</translation>
    </message>
    <message>
        <source>%1 clamps the backing</source>
        <translation>%1 klemmt die Rückseite fest</translation>
    </message>
    <message>
        <source>%1 clamp the backing</source>
        <translation>%1 klemmen die Rückseite fest</translation>
    </message>
    <message>
        <source>%1 moves the clamps to all three layers</source>
        <translation>%1 setzt die Klemmen auf alle drei Lagen um</translation>
    </message>
    <message>
        <source>%1 move the clamps to all three layers</source>
        <translation>%1 setzen die Klemmen auf alle drei Lagen um</translation>
    </message>
    <message>
        <source>Set up the tables</source>
        <translation>Tische aufstellen</translation>
    </message>
    <message>
        <source>Clamp the backing</source>
        <translation>Rückseite festklemmen</translation>
    </message>
    <message>
        <source>Lay the backing</source>
        <translation>Rückseite auflegen</translation>
    </message>
    <message>
        <source>Move the clamps to all three layers</source>
        <translation>Klemmen auf alle drei Lagen umsetzen</translation>
    </message>
    <message>
        <source>set up</source>
        <translation>aufbauen</translation>
    </message>
    <message>
        <source>clamp</source>
        <translation>klemmen</translation>
    </message>
    <message>
        <source>move the clamps</source>
        <translation>Klemmen umsetzen</translation>
    </message>
    <message>
        <source>hands off</source>
        <translation>Hände weg</translation>
    </message>
    <message>
        <source>Set up</source>
        <translation>Aufbauen</translation>
    </message>
    <message>
        <source>Lay</source>
        <translation>Auflegen</translation>
    </message>
    <message>
        <source>Clamp</source>
        <translation>Klammern</translation>
    </message>
    <message>
        <source>Hands off</source>
        <translation>Hände weg</translation>
    </message>
    <message>
        <source>Cool</source>
        <translation>Abkühlen</translation>
    </message>
    <message>
        <source>Check</source>
        <translation>Prüfen</translation>
    </message>
    <message>
        <source>Move</source>
        <translation>Weiterschieben</translation>
    </message>
    <message>
        <source>Roll up</source>
        <translation>Aufrollen</translation>
    </message>
    <message>
        <source>press back</source>
        <translation>hinten bügeln</translation>
    </message>
    <message>
        <source>All over</source>
        <translation>Allover</translation>
    </message>
    <message>
        <source>Tied or tacked</source>
        <translation>Geknüpft</translation>
    </message>
    <message>
        <source>Roll up for quilting</source>
        <translation>Zum Quilten aufrollen</translation>
    </message>
    <message>
        <source>%1 rolls it up for quilting</source>
        <translation>%1 rollt ihn zum Quilten auf</translation>
    </message>
    <message>
        <source>%1 roll it up for quilting</source>
        <translation>%1 rollen ihn zum Quilten auf</translation>
    </message>
    <message>
        <source>Leave it to set</source>
        <translation>Abbinden lassen</translation>
    </message>
    <message>
        <source>wait</source>
        <translation>warten</translation>
    </message>
    <message>
        <source>Wait</source>
        <translation>Warten</translation>
    </message>
    <message>
        <source>Nobody touches it yet; the can says for how long.</source>
        <translation>Noch fasst es niemand an; wie lange, steht auf der Dose.</translation>
    </message>
    <message>
        <source>The spray sets; nobody touches it</source>
        <translation>Das Spray bindet ab; niemand fasst es an</translation>
    </message>
    <message>
        <source>lay backing</source>
        <translation>Rückseite legen</translation>
    </message>
    <message>
        <source>lay batting</source>
        <translation>Vlies legen</translation>
    </message>
    <message>
        <source>lay top</source>
        <translation>Top legen</translation>
    </message>
</context>
</TS>
