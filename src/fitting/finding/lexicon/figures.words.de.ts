/** What she says of her figure: kept apart from the cloth, and never said back as a fault. */
import type { FIGURES as English } from './figures.words.ts'

export const FIGURES: typeof English = {
  slopingShoulders: {
    said: 'Schultern fallen mehr ab als gezeichnet',
    words:
      'abfallende Schultern, abfallende Schulter, hängende Schultern, Hängeschultern, Schultern hängen, Schultern fallen ab, meine Schultern fallen, Schulterpolster, Schulterpolstern, Schultern abfallend, Flaschenhals, Weinflasche, Champagnerflasche, herabhängende Schultern, steile Schultern, schräge Schultern, Schultern sind abfallend, Schultern sind schräg, stark abfallend, Schultern tiefer als, Taschentuch unter der Schulter, Schultern mehr abfallen, abfallendere Schultern, Polster, hängige Schultern, Polster einlegen, abschüssig, Schultern steiler, gehen steiler nach unten, Taschentuch drunterlege, Taschentuch, schlanke Flasche, Schultern fallen',
  },
  squareShoulders: {
    said: 'Schultern fallen weniger ab als gezeichnet',
    words:
      'gerade Schultern, gerade Schulter, Kleiderbügel, wie ein Kleiderbügel, eckige Schultern, hohe Schultern, Schultern gerade, waagerechte Schultern, waagrechte Schultern, Schultern fallen kaum ab, fallen viel steiler ab, Schulterschräge zu steil, Schulter zu schräg, Schulternaht zu schräg, kerzengerade Schultern, Schultern weniger schräg, Schultern sind gerade, Schulterschräge, fällt zu stark ab, Schulter zu stark abfallend, Schultern fast waagerecht, kantige Schultern, Schultern wie ein Schrank, Schultern hoch, zu steil, weniger Gefälle, Schultern sind hoch, gerader als, zu schräg geschnitten, hochgezogene Schultern, viel steiler, Kleiderschrank, weniger abfallend, Schultern weniger, springt auf, springt sie auf',
  },
  narrowShoulders: {
    said: 'Schultern schmaler als gezeichnet',
    words:
      'schmale Schultern, schmale Schulter, zierliche Schultern, schmal gebaut, kleine Schultern, zierlich, schmächtig, schmale Statur, zartgliedrig, schmalschultrig, schmalbrüstig gebaut, zart gebaut, schmaler gebaut, zierlich gebaut, feingliedrig, schmal in den Schultern, kleine Person, Kinderschultern, schmalen Schultern, zierliche Person',
  },
  broadShoulders: {
    said: 'Schultern breiter als gezeichnet',
    words:
      'breite Schultern, breite Schulter, breites Kreuz oben, Schwimmerin, Schwimmerschultern, breitschultrig, Schultern sind breiter, kräftige Schultern, starke Schultern, Sportlerschultern, breit gebaut, Kreuz wie eine Schwimmerin, breite Statur, Schultern breiter als, Ruderschultern, Handballerin, breit in den Schultern, breiter als die Bluse, breiter als der Schnitt, Rudern, schwimme viel, Schwimmerkreuz',
  },
  forwardShoulders: {
    said: 'Schultergelenk weiter vorn',
    words:
      'vorstehende Schultern, vorgezogene Schultern, nach vorn gezogene Schultern, Schultern nach vorn, Schultern vorn, Schultern kommen nach vorn, nach vorn fallende Schultern, Bürohaltung, Computerhaltung, Computersitzen, Schreibtischhaltung, Bildschirmarbeit, Schultern hängen nach vorn, vorgeneigte Schultern, nach vorn geneigte Schultern, Schultern rollen nach vorn, sitze am Computer, Handyhaltung, Schulter nach vorn, vorgerollte Schultern, krumm am Schreibtisch, nach vorn gerollt, eingerollte Schultern, vorgeschobene Schultern, Schultergelenk vorn, Schultern vorgeneigt',
  },
  oneShoulderLow: {
    said: 'eine Schulter tiefer',
    words:
      'eine Schulter tiefer, Schulter ist tiefer, Schulter tiefer, eine Schulter höher, Schulter höher, Schulter niedriger, ungleiche Schultern, Schultern ungleich, Schultern nicht gleich hoch, Schultern unterschiedlich hoch, schiefe Schultern, Schultern schief, Skoliose, tiefere Schulter, hängt die Schulter, eine Schulter hängt, tiefe Schulter, rechte Schulter tiefer, linke Schulter tiefer, linke Schulter hängt, rechte Schulter hängt, trag die Tasche, trage die Tasche, Schultern nicht gleich, Schulter hängt tiefer, Schultern sind verschieden, Schultern ned gleich, Physiotherapeutin, Physio, Orthopäde, eine Schulter niedriger, auf einer Seite tiefer',
  },
  roundBack: {
    said: 'oberer Rücken runder als gezeichnet',
    words:
      'Rundrücken, runder Rücken, gerundeter Rücken, Rücken rund, Rücken ist rund, oberer Rücken rund, krummer Rücken, Buckel, gebeugter Rücken, gebeugte Haltung, krumme Haltung, Kyphose, Rücken krumm, schlechte Haltung, runden Rücken, buckelig, krumm, Rücken gewölbt, gewölbter Rücken, Rundung am Rücken, runde Schultern, Katzenbuckel, oben rund, vornübergebeugt, gebeugt gehe, buckle, geh gebeugt, Schildkröte, Rundbuckel, rundlicher Rücken, gebeugt, gehe gebeugt, etwas gebeugt, Rücken oben rund, oben runden Rücken',
  },
  erect: {
    said: 'Rücken gerader als gezeichnet',
    words:
      'aufrecht, sehr aufrecht, aufrechte Haltung, halte mich aufrecht, gerade Haltung, gerader Rücken, flacher Rücken, Rücken flach, flachen Rücken, Rücken ist flach, Rücken gerade, wie ein Soldat, Soldat, Ballett, Ballerina, Tänzerin, kerzengerade, Brust raus, stramme Haltung, stolze Haltung, Rücken wie ein Brett, Stock verschluckt, steife Haltung, Flachrücken, gerade halte, aufgerichtet, Turnerin, stehe gerade, stehe sehr gerade, Besenstiel, bolzengerade, aufrechter Gang, Rücken durchgedrückt, bolzgrad',
  },
  hollowBack: {
    said: 'Rücken hohler als gezeichnet',
    words:
      'Hohlkreuz, hohles Kreuz, Hohlrücken, hohler Rücken, hohlen Rücken, hohles Chrüz, Hohlchrüz, starkes Hohlkreuz, Lordose, Kreuz hohl, Rücken hohl, durchgedrücktes Kreuz, Entenpo, ausgeprägtes Hohlkreuz, geschwungener Rücken, durchgebogen, Rücken biegt nach innen, Po steht heraus, Kreuz durchgedrückt, Rücken geht nach innen, Hohlkreiz',
  },
  hump: {
    said: 'Rundung am Halsansatz',
    words:
      'Witwenbuckel, Nackenbuckel, Stiernacken, Halsbuckel, Nackenhöcker, Nackenwulst, Fettpolster im Nacken, Fettpolster am Hals, Fettpolster, Buckel am Hals, Buckel im Nacken, Nackenpolster, Nackenfett, Speckrolle im Nacken, Speck im Nacken, Höcker im Nacken, Knubbel im Nacken, Hubbel im Nacken, Beule im Nacken, Wirbel steht heraus, Halswirbel steht heraus, herausschauender Wirbel, Halswirbel herausschaut, rausstehender Wirbel, vorstehender Wirbel, Büffelnacken, Stelle unten am Hals, Nackenansatz, Wölbung im Nacken, Hügel im Nacken, Wölbung am Halsansatz, unten am Hals Buckel, dicker Nacken, Handynacken, Rundung im Nacken, Buckel unten am Hals, speckiger Nacken, Witwenhöcker, Wirbel vorsteht, Knochen im Nacken, Geierhals, Kopf nach vorn, Dromedar, Kamel, siebter Halswirbel, Halswirbel, runder Nacken, runden Nacken, Nacken rund, Nacken gepolstert, gepolstert, Hügel, Wirbel am Hals, Knochen unten am Hals, Knochen am Hals, Rundung am Hals, Übergang vom Hals zum Rücken, Buckelchen am Hals, Knubbel unten am Hals, Hubbel am Hals',
  },
  prominentBlades: {
    said: 'Schulterblätter stehen vor',
    words:
      'Schulterblätter stehen heraus, Schulterblätter stehen vor, Schulterblätter stehen ab, abstehende Schulterblätter, vorstehende Schulterblätter, hervorstehende Schulterblätter, knochige Schulterblätter, Engelsflügel am Rücken, spitze Schulterblätter, markante Schulterblätter, herausstehende Schulterblätter, knochiger Rücken, Schulterblätter drücken, ausgeprägte Schulterblätter, Flügelschulterblätter, Schulterblätter schauen heraus, starke Schulterblätter',
  },
  fullBust: {
    said: 'Brust voller als gezeichnet',
    words:
      'große Brust, großer Busen, viel Busen, große Oberweite, üppige Oberweite, vollbusig, üppiger Busen, große Brüste, volle Brust, Oberweite zu groß, großen Busen, viel Oberweite, schwerer Busen, starke Brust, Brustvergrößerung am Schnitt, FBA, D-Körbchen, DD, E-Körbchen, F-Körbchen, Doppel D, viel Holz vor der Hütte, Holz vor der Hütte, üppig bestückt, gut bestückt, stillen, Stillbusen, kurvig oben, mehr Busen, Cup D, Cup E, großbusig, zu viel Busen, mächtige Oberweite, prall gefüllt',
  },
  smallBust: {
    said: 'Brust kleiner als gezeichnet',
    words:
      'kleine Brust, kleiner Busen, wenig Busen, kleine Oberweite, flachbrüstig, kleine Brüste, kaum Busen, flache Brust, wenig Oberweite, nicht viel Holz vor der Hütte, A-Körbchen, AA, kein Busen, kaum Brust, wenig Brust, Bügelbrett, flach wie ein Brett, flach wie ein Bügelbrett, Körbchengröße A, SBA, kleinen Busen, nicht viel Busen, nicht so viel Busen, fast keinen Busen, Mückenstiche, oben nichts, nicht viel oben, kleine Oberweiten, BH-Größe A, Erbsen, Brett mit zwei Erbsen, wenig Holz, Cup A, obenrum nichts, flach vorn, mehr Busen als ich, Brustamputation, chlini Brüscht',
  },
  hollowChest: {
    said: 'Brustkorb oben hohler als gezeichnet',
    words:
      'eingefallene Brust, eingefallener Brustkorb, Brustkorb eingefallen, hohle Brust, Hühnerbrust, Trichterbrust, knochige Brust, hohler Brustkorb, Brustkorb ist hohl, Mulde unterm Schlüsselbein, eingesunkene Brust, eingesunkener Brustkorb, dünn am Schlüsselbein, Kuhle unterm Schlüsselbein, knochig am Schlüsselbein, eher eingefallen, knochig oben, hohle Stelle',
  },
  longWaisted: {
    said: 'länger bis zur Taille als gezeichnet',
    words:
      'langer Oberkörper, langen Oberkörper, lange Taille, langer Rumpf, Oberkörper lang, lang im Oberkörper, ich bin groß, großgewachsen, langer Rücken, lang gebaut, Sitzriese, langes Oberteil nötig, groß gewachsen, langer Körper, lang zwischen Schulter und Taille, tiefe Taille, bin sehr groß, lang im Rücken, langen Rücken',
  },
  shortWaisted: {
    said: 'kürzer bis zur Taille als gezeichnet',
    words:
      'kurzer Oberkörper, kurzen Oberkörper, kurze Taille, kurzer Rumpf, Oberkörper kurz, kurz im Oberkörper, ich bin klein, kleinwüchsig, kurzer Rücken, kurz gebaut, kurz zwischen Schulter und Taille, klein gewachsen, kurzleibig, kurz geraten, Kurzgröße, kurz zwischen Brust und Taille, hohe Taille, bin sehr klein, kurz in der Taille, kurzen Rücken, nur eins fünfundfünfzig',
  },
  looksPregnant: {
    said: 'steht über dem Bauch ab',
    words:
      'schwanger, Schwangere, wie schwanger, hochschwanger, Schwangerschaft, sechster Monat, guter Hoffnung, im sechsten Monat, wann es so weit ist, in Umständen, Umstandsmode, Umstände, schwanger ausseh, wann es so weit, fragen wann, im wievielten Monat, Babybauch vortäuscht, ob ich schwanger',
  },
  widerHips: {
    said: 'Hüfte breiter als gezeichnet',
    words:
      'breite Hüften, breite Hüfte, große Hüften, kräftige Hüften, Birnenform, Birne, Birnenfigur, großer Po, großer Hintern, dicker Hintern, breites Becken, gebärfreudig, kurvige Hüften, Hüften breiter, runde Hüften, viel Po, starke Hüften, ausladende Hüften, breiter Hintern, breiter Po, A-Figur, A-Typ, großes Gesäß, dicker Po, runder Po, kräftiges Gesäß, Po zu groß',
  },
  narrowChest: {
    said: 'Brustkorb schmaler als gezeichnet',
    words:
      'schmaler Brustkorb, schmale Brust, schmalbrüstig, Brustkorb schmal, Brustkorb ist schmal, schmaler Oberkörper, schmal vorn, schmalen Brustkorb, schmaler Oberbau, schmal über der Brust, Vorderbau schmal',
  },
  narrowBack: {
    said: 'Rücken schmaler als gezeichnet',
    words:
      'schmaler Rücken, Rücken schmal, schmalen Rücken, Rücken ist schmal, schmales Kreuz, zierlicher Rücken, dünner Rücken, schmal am Rücken, schmächtiger Rücken, kleiner Rücken',
  },
  broadBack: {
    said: 'Rücken breiter als gezeichnet',
    words:
      'breiter Rücken, breites Kreuz, muskulöser Rücken, breiten Rücken, Rücken ist breit, kräftiger Rücken, starker Rücken, Ruderin, Kletterin, Schwimmerrücken, Kreuz breit, Rücken breit, trainierter Rücken, Rückenmuskeln, viel Rücken, breit im Kreuz',
  },
}
