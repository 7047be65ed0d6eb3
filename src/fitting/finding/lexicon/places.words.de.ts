/** Where on the body or the muslin. From memory and common speech. */
import type { PARTS as EnglishParts, PLACES as EnglishPlaces } from './places.words.ts'

export const PLACES: typeof EnglishPlaces = {
  neck: {
    said: 'Halsausschnitt',
    words:
      'Hals, Halsausschnitt, Ausschnitt, Halsloch, Halsrand, Halskante, Halslinie, Halsöffnung, Halsnaht, Halsumfang, Halsweite, Kopfloch, Ausschnittkante, Ausschnittrand, Ausschnittlinie, Loch für den Kopf, Öffnung für den Kopf, Rundhals, Rundausschnitt, U-Boot-Ausschnitt, Bootsausschnitt, Carmenausschnitt, Decolleté, Dekolleté, Dekolletee, Dekolte, Dekoltee, Halsbündchen, Halsblende, Halsbereich, Rollkragen, Halspartie, Halsbeleg, Halsausschnittkante, Ausschnittweite, Kragenloch, Halsgegend, Kragenausschnitt, Rundhalsausschnitt',
  },
  vNeck: {
    said: 'V-Ausschnitt',
    words:
      'V-Ausschnitt, V Ausschnitt, Vausschnitt, V-Hals, Wickelausschnitt, spitzer Ausschnitt, Spitze vom Ausschnitt, Wickelbluse, Wickelkleid, Wickeloberteil, V-Neck',
  },
  throat: {
    said: 'Kehle',
    words:
      'Kehle, Kehlkopf, Gurgel, Luftröhre, Adamsapfel, Drosselgrube, Halsgrube, Halsgrübchen, Schlund, Kinn, unterm Kinn, Rachen, vorn am Hals, vorne am Hals, Halsvorderseite',
  },
  nape: {
    said: 'Nacken',
    words:
      'Nacken, Genick, Nackenpunkt, Nackenbereich, Nackenrand, Nackenansatz, Nackenwirbel, Haaransatz, Hinterkopf, hinten am Hals, hinten beim Hals, hinterer Hals, hintere Halsausschnitt, hintere Halsrand, hinterer Ausschnitt, Halsausschnitt hinten, Ausschnitt hinten, Hals hinten, hinten am Ausschnitt, hinten am Kragen, Kragen hinten, Rückenausschnitt, hinten am Halsausschnitt, hinterm Hals, hinter dem Hals, am Hals hinten, Halswirbel, hinterer Halsausschnitt, hinterer Kragen, Etikett, Halsausschnitt am Rücken, rückwärtiger Halsausschnitt, rückwärtiger Ausschnitt, hinten in den Haaren, Blusenkragen hinten, Kragen im Nacken, Halsbereich hinten',
  },
  frontNeck: {
    said: 'Ausschnitt vorn',
    words:
      'vorderer Halsausschnitt, Halsausschnitt vorn, Ausschnitt vorn, vorn am Ausschnitt, vorn am Halsausschnitt, vordere Halsrand, vorderer Halsrand, Halsrand vorn, vorderer Ausschnitt, Hals vorn, vordere Halskante, vorderer Kragen, Dekolleté, Decolleté, Dekoltee, vorn beim Ausschnitt, Ausschnitt an der Brust, in den Ausschnitt',
  },
  neckSide: {
    said: 'Seite des Halses',
    words:
      'Halspunkt, Halsseite, Halsansatz, seitlich am Hals, Seite vom Hals, neben dem Hals, neben dem Kragen, beim Hals, am Hals, in Halsnähe, Halsnähe, nahe am Hals, Halsspitze, Trapezmuskel, Halsmuskel, Schulter am Hals, nah am Hals, Hals Schulter Punkt, dicht am Hals, direkt am Hals, gegen den Hals',
  },
  collar: {
    said: 'Kragen',
    words:
      'Kragen, Stehkragen, Kragensteg, Hemdkragen, Bubikragen, Kragenansatz, Kragennaht, Kragenkante, Umlegekragen, Blusenkragen, Kragenrand',
  },
  collarbone: {
    said: 'Schlüsselbein',
    words: 'Schlüsselbein, Schlüsselbeine, Brustbein, Schlüsselbeinen, Sternum, Schlüsselknochen',
  },
  shoulder: {
    said: 'Schulter',
    words: 'Schulter, Schultern, Schulterbereich, Schulterpartie, Schultere, Schultergürtel',
  },
  shoulderTip: {
    said: 'Schulterpunkt',
    words:
      'Schulterpunkt, Schulterspitze, Schulterknochen, Schulterende, Schulterecke, Schulterkugel, Schultergelenk, Ende der Schulter, Spitze der Schulter, Rand der Schulter, außen an der Schulter, äußere Schulter, Schulter außen, äußere Ende der Schulter, äußerer Schulterpunkt, Schulterkante, Schultereck, Knochen der Schulter, Knochen an der Schulter, Schulterhöhe, außen auf der Schulter, Schulterrand, Achselpunkt, Enden der Schultern, Schulterenden, Ecken der Schultern, Schulterrundung, armseitig',
  },
  shoulderSeam: {
    said: 'Schulternaht',
    words:
      'Schulternaht, Schulternähte, Achselnaht, Naht auf der Schulter, Naht an der Schulter, Schulterlinie, Naht oben auf der Schulter, Naht über der Schulter, Naht oben, obere Naht, Schulterverbindung, Naht der Schulter, Schulter Naht, Schultersaum, Schulterstepp',
  },
  shoulderLength: {
    said: 'Schulterlänge',
    words:
      'Schulterlänge, Schulterbreite, Länge der Schulter, Breite der Schulter, Schultermaß, Schulterstück, Stück Schulter, Schulternahtlänge, Schulterweite',
  },
  armhole: {
    said: 'Armloch',
    words:
      'Armloch, Armlöcher, Armausschnitt, Armausschnitte, Armöffnung, Armlochrand, Armlochkante, Armlochnaht, Armlochlinie, Armlochbogen, Loch für den Arm, Armrand, Armlochkurve, Armlochrundung, Armausschnittkante, Armlöchern, Armloches, Loch wo der Arm rauskommt, Armkante, Armlochumfang, Ärmelloch, Ärmelausschnitt, Öffnung für den Arm',
  },
  frontArmhole: {
    said: 'Armloch vorn',
    words:
      'vorderes Armloch, vorderer Armausschnitt, Armloch vorn, vorn am Armloch, vorn beim Armloch, Armausschnitt vorn, vordere Armlochkante, vorderer Armlochrand, vordere Rand vom Armloch, Armloch an der Brust, Armloch zur Brust, Armloch neben der Brust, vorn am Armausschnitt, Vorderarmloch, vor dem Arm, vor den Armen, vorn am Arm, vorn beim Arm, vordere Armloch, vordere Armausschnitt, vorderen Armloch, vordere Ärmelkante',
  },
  backArmhole: {
    said: 'Armloch hinten',
    words:
      'hinteres Armloch, hinterer Armausschnitt, Armloch hinten, hinten am Armloch, hinten beim Armloch, Armausschnitt hinten, hintere Armlochkante, hinterer Armlochrand, Armloch am Rücken, Armloch am Schulterblatt, Armloch überm Schulterblatt, hinten am Armausschnitt, rückwärtiges Armloch, hinterm Arm, hinter dem Arm, hinten am Arm, hinten beim Arm, hinten bei den Armen, hintere Armloch, hintere Armausschnitt, hinteren Armloch, Rückenarmloch, hintere Ärmelkante, hinten beim Ärmel, hinten bei den Ärmeln',
  },
  underarm: {
    said: 'Achsel',
    words:
      'Achsel, Achseln, Achselhöhle, Achselhöhlen, Achselgrube, unterm Arm, unter dem Arm, unter den Armen, unter den Achseln, unter der Achsel, Achselpunkt unten, Achselbereich, unterhalb vom Arm, unterhalb der Achsel, Deo, Üchse, unterem Arm, Achselbeuge, Achselfalte, Achselpartie, unterste Punkt vom Armloch, Unterarmpunkt, Achselnähe, Achslen, Achselchen',
  },
  arm: { said: 'Arm', words: 'Arm, Arme, Armen, Ärmchen' },
  upperArm: {
    said: 'Oberarm',
    words:
      'Oberarm, Oberarme, Bizeps, Trizeps, Armumfang, Oberarmweite, Winkearme, Muskeln am Arm, Armmuskeln, dicke Arme, kräftige Arme, starke Arme, Oberärmel, Ärmelweite, Ärmelumfang, Oberarmumfang, Oberarmmuskel, oben am Arm, muskulöse Arme, Arme zu dick, Arm nicht in den Ärmel, Arme nicht in die Ärmel, um den Arm, Muckis, rund um den Arm',
  },
  elbow: {
    said: 'Ellbogen',
    words:
      'Ellbogen, Ellenbogen, Armbeuge, Armbeugen, Ellbeuge, Ellbogens, Musikantenknochen, Armgelenk, Ellbogenbeuge',
  },
  wrist: {
    said: 'Handgelenk',
    words:
      'Handgelenk, Handgelenke, Manschette, Manschetten, Unterarm, Unterarme, Bündchen, unterer Ärmel, Ärmelende am Handgelenk',
  },
  sleeve: {
    said: 'Ärmel',
    words: 'Ärmel, Ärmeln, Einsatzärmel, eingesetzter Ärmel, langer Ärmel, Langarm',
  },
  sleeveCap: {
    said: 'Armkugel',
    words:
      'Armkugel, Ärmelkugel, Ärmelkopf, Armkugeln, Kugel, Ärmelkrone, oben am Ärmel, Ärmel oben, Kugelhöhe, Armkugelhöhe, oberes Ende vom Ärmel, Ärmelansatz, oben auf dem Ärmel, Kopf vom Ärmel, Kugel vom Ärmel, Kugelnaht, Ärmelkuppe, Kuppe, ganz oben am Ärmel, Ärmelrundung, Kuppel vom Ärmel, Puffärmel, Ärmelscheitel',
  },
  sleeveHem: {
    said: 'Ärmelsaum',
    words:
      'Ärmelsaum, Ärmelkante, Ärmelrand, Ärmelabschluss, Ärmelende, Saum vom Ärmel, Rand vom Ärmel, Kante vom Ärmel, unten am Ärmel, Ärmel unten, Ärmelöffnung, Abschluss vom Ärmel, Ende vom Ärmel, Ärmelsäume, Saum am Ärmel, Saum der Ärmel, Saum des Ärmels, Ärmelausgang, untere Kante vom Ärmel, Ärmelschluss, Ärmelbündchen, Rand am Ärmel, Armsaum, Ärmelweite unten, untere Ärmelkante, Öffnung vom Ärmel, Ärmelenden',
  },
  sleeveSeam: {
    said: 'Ärmelnaht',
    words:
      'Ärmelnaht, Ärmelnähte, Naht vom Ärmel, Naht am Ärmel, Ärmelansatznaht, Ärmeleinsatznaht, wo der Ärmel angenäht ist, wo der Ärmel eingesetzt ist, untere Ärmelnaht, Naht im Ärmel, Naht unterm Ärmel, Ansatznaht, Einsetznaht',
  },
  cutInSleeve: {
    said: 'angeschnittener Ärmel',
    words:
      'angeschnittener Ärmel, angeschnitten, Kimonoärmel, Kimono, Fledermausärmel, Flügelärmel, überschnitten, überschnittene Schulter, überschnittener Ärmel, Ärmel in einem Stück, Ärmel aus einem Stück, Kappenärmel, Dolmanärmel, Fledermausbluse, Fledermausshirt, Drapierung, drapierter Ärmel, Fall vom Ärmel, Ärmelfall, Kaftan, Tunikaärmel, Ärmelchen, kurzer Ärmel, Flatterärmel, Glockenärmel, weiter Ärmel, weite Ärmel, drapiert, Ärmel ohne Naht, ohne Armlochnaht, Raglan, Drapee, Poncho, Volantärmel, Schmetterlingsärmel, Kimonobluse, Kimonoschnitt, Fledermaus, Ärmel am Vorderteil dran, mitgeschnittener Ärmel, Ärmel mit angeschnitten, Flügelchen, fließender Ärmel, Ärmeldrapierung, dazugeschnitten',
  },
  overarm: {
    said: 'Oberarmnaht',
    words:
      'Oberarmnaht, Naht über dem Arm, Naht auf dem Arm, Naht oben am Arm, obere Ärmelnaht, Naht über Schulter und Arm, Oberkante vom Ärmel, obere Kante vom Ärmel, obere Linie vom Ärmel, Naht den Arm entlang',
  },
  upperChest: {
    said: 'über der Brust',
    words:
      'oberhalb der Brust, oberhalb vom Busen, oberhalb des Busens, obere Brust, oberer Brustbereich, Brustbreite, Vorderbreite, vordere Breite, zwischen Schlüsselbein und Brust, zwischen Hals und Brust, zwischen Schulter und Brust, oben vorn, vorn oben, Vorderteil oben, oberes Vorderteil, unterm Schlüsselbein, unter dem Schlüsselbein, unterhalb vom Schlüsselbein, über dem Busen liegt, zwischen den Armlöchern vorn, vorn zwischen den Armen, vorn zwischen den Armlöchern, oben über der Brust, über der Brust oben, oberer Brustkorb, oben an der Brust, oberhalb der Oberweite, Oberkante Brust, Brust oben, zwischen den Armen vorn, zwischen den Armlöchern, von Armloch zu Armloch, von Achsel zu Achsel, unterm Hals, ober der Brust, ober dem Busen',
  },
  chest: {
    said: 'Brustkorb',
    words: 'Brustkorb, Brustkasten, Brustraum, Thorax, Oberkörper vorn, Vorderfront',
  },
  bust: {
    said: 'Brust',
    words:
      'Brust, Busen, Brüste, Brüsten, Oberweite, Büste, Möpse, Titten, Brustweite, Brustumfang, Brustlinie, Busenhöhe, Brusthöhe, Brustbereich, Busenbereich, Brustpartie, Vorbau, obenrum, oben rum, oben herum, Oberbau, Balkon, Dekolletee gefüllt, Atombusen, Herzbusen, Buseli, Brüstli, Oberweiten, Brustteil, Holz vor der Hütte, Holz vor der Hüttn, Busenpartie',
  },
  apex: {
    said: 'Brustpunkt',
    words:
      'Brustpunkt, Brustpunkte, Brustspitze, Brustspitzen, Brustwarze, Brustwarzen, Nippel, Spitze der Brust, höchster Punkt der Brust, höchste Stelle der Brust, vollste Stelle, stärkste Stelle der Brust, Brusthöhepunkt, Mitte der Brust, Spitze vom Busen, Brustpunktabstand, Warze, Warzen, Busenspitze, Busenpunkt, höchster Punkt, stärkste Stelle, Brustabstand, Abstand der Brustspitzen, Brustspitzenabstand',
  },
  cup: {
    said: 'Körbchen',
    words: 'Körbchen, Cup, Cups, Körbchengröße, Schale, Schalen, BH-Körbchen',
  },
  underBust: {
    said: 'unter der Brust',
    words:
      'Unterbrust, Unterbrustbereich, unterhalb der Brust, unterhalb vom Busen, unterhalb des Busens, unter dem Busen, unter der Brust, unterm Busen, Rippen, Rippenbogen, unterm BH, Zwerchfell, zwischen Brust und Taille, Unterbrustumfang, Unterbrustweite, Empirelinie, Magen, Magengegend, an den Rippen, Busenansatz unten, unter den Brüsten, Brustkorb unten, unterer Brustkorb, Rippenbereich, vom Busen abwärts, ab dem Busen, ab der Brust',
  },
  bustDart: {
    said: 'Brustabnäher',
    words:
      'Brustabnäher, seitlicher Abnäher, Seitenabnäher, Abnäher an der Brust, Abnäher am Busen, Busenabnäher, Abnäher von der Seite, vorderer Abnäher, waagerechter Abnäher, Brustnaht, Abnäher vorn',
  },
  waistDart: {
    said: 'Taillenabnäher',
    words:
      'Taillenabnäher, Abnäher an der Taille, Abnäher in der Taille, senkrechter Abnäher, Längsabnäher, Rückenabnäher',
  },
  fishEye: {
    said: 'Abnäher mit zwei Spitzen',
    words:
      'Abnäher mit zwei Spitzen, doppelter Abnäher, Doppelabnäher, Rautenabnäher, Fischabnäher, langer Abnäher, lange Abnäher, durchgehender Abnäher, unteres Ende vom Abnäher, untere Spitze vom Abnäher, untere Ende vom Taillenabnäher, Abnäher unter der Taille, Abnäher unterhalb der Taille, Abnäher über die Taille, untere Abnäherspitze, zweispitziger Abnäher, Linsenabnäher, Spindelabnäher, untere Spitze, unteres Ende, Abnäher geht unter der Taille, Abnäher unten, langen Abnäher',
  },
  dart: { said: 'Abnäher', words: 'Abnäher, Abnähern, Abnähers, Abneher, eingenähte Falte, Keil' },
  dartTip: {
    said: 'Abnäherspitze',
    words:
      'Abnäherspitze, Abnäherspitzen, Spitze vom Abnäher, Ende vom Abnäher, Abnäherende, wo der Abnäher aufhört, wo der Abnäher endet, wo der Abnäher ausläuft, Spitze des Abnähers, Ende des Abnähers, Auslauf vom Abnäher, Spitzen der Abnäher, Brustabnäherspitze, Spitze vom Brustabnäher, Ende vom Brustabnäher, Abnäherauslauf, letzter Stich vom Abnäher, am Ende der Abnäher, vorn am Abnäher, Abnäher ausläuft, Abnäher endet, Abnäher aufhört',
  },
  back: {
    said: 'Rücken',
    words:
      'Rücken, Rückenteil, hinten, Rückseite, Rückteil, hintere, hinteres Teil, Hinterseite, Kehrseite, rückwärtig, hintere Mitte, Hinterteil vom Kleid, hinterm Rücken',
  },
  upperBack: {
    said: 'oberer Rücken',
    words:
      'oberer Rücken, Rücken oben, oben am Rücken, hinten oben, oben hinten, Rückenbreite, Rückenbreiten, Rückenweite, Schulterpartie hinten, zwischen den Schultern, zwischen den Armen hinten, quer über den Rücken, Sattel, Rückenteil oben, oberes Rückenteil, obere Rücken, oben im Rücken, von Arm zu Arm, Rücken in der Breite, oberer Rückenbereich, am oberen Rücken',
  },
  blade: {
    said: 'Schulterblatt',
    words:
      'Schulterblatt, Schulterblätter, Schulterblättern, Schulterblattes, Schulterblättli, zwischen den Schulterblättern, Flügelknochen, Schulterblat, Blatt',
  },
  lowerBack: {
    said: 'Kreuz',
    words:
      'Kreuz, Hohlkreuz, unterer Rücken, im Kreuz, Lendenbereich, Lende, Lenden, Lendenwirbel, Steißbein, Steiß, hohles Kreuz, Nierengegend, Nieren, über dem Po, überm Po, oberhalb vom Po, über dem Hintern, überm Hintern, oberhalb vom Gesäß, über dem Gesäß, Rücken unten, unten am Rücken, Höhle im Rücken, Mulde im Rücken, unterer Rückenbereich, Kreuzbein, Rückenmulde, Rückenhöhlung, unten im Rücken, Hohlrücken',
  },
  backWaist: {
    said: 'Taille hinten',
    words:
      'hintere Taille, Taille hinten, hinten an der Taille, hinten in der Taille, Rückentaille, Taille am Rücken, hinterer Bund, Bund hinten, hintere Taillenlinie, am Rücken in Taillenhöhe, hinten um die Taille, Taillennaht hinten, hinterer Taillenbereich, Rücken in der Taille, Taillenhöhe hinten, hinten überm Bund, hinten über der Taille, Hosenbund',
  },
  frontWaist: {
    said: 'Taille vorn',
    words:
      'vordere Taille, Taille vorn, vorn an der Taille, vorn in der Taille, Taillenlinie vorn, vorderer Bund, Bund vorn, vordere Taillenlinie, Taillennaht vorn, vorn am Bund',
  },
  spine: {
    said: 'Wirbelsäule',
    words: 'Wirbelsäule, Rückgrat, Wirbel, oberster Wirbel, Halswirbelsäule, Rückenwirbel',
  },
  waist: {
    said: 'Taille',
    words:
      'Taille, Taillenlinie, Taillennaht, Bund, Taillenbund, Mitte vom Körper, Taillenweite, Taillenhöhe, Taillenbereich, Tallie, Taile, Taillie, Talje, Gürtel, Gummi, Gürtellinie, um die Mitte, Körpermitte, um die Mitte rum, um den Bauch herum, Taillenumfang, Bauchmitte, Taillenband, schmalste Stelle, Taillenpartie, Gummiband, Gürtelhöhe, Leibesmitte, um die Körpermitte',
  },
  hip: {
    said: 'Hüfte',
    words:
      'Hüfte, Hüften, Hüftweite, Hüftumfang, Hüftbereich, Hüftlinie, Hüftknochen, Oberschenkel, hohe Hüfte, Becken, Hüftgold, Hüftpartie, Reiterhosen, Hüfthöhe, Hüftspeck, Hüftgegend, Schenkel, untenrum, unten rum, unten herum',
  },
  seat: {
    said: 'Gesäß',
    words:
      'Po, Popo, Hintern, Gesäß, Hinterer, Arsch, Allerwertester, Allerwertesten, Pobacken, Sitzfleisch, Pöpsch, Popsch, Füdli, Gesäßbereich, Pobereich, Steiss, Hinterpartie, Pobacke',
  },
  tummy: {
    said: 'Bauch',
    words:
      'Bauch, Bäuchlein, Bäuchle, Bauchansatz, Babybauch, Bauchbereich, Bauchnabel, Nabel, Wampe, Wampen, Bierbauch, Ranzen, Unterbauch, Bauchspeck, Plauze, Bauches, Speckrolle, Schürze, Kugelbauch, Bauchgegend, Leib, Kaiserschnitt',
  },
  hem: {
    said: 'Saum',
    words:
      'Saum, Säume, Saumkante, Unterkante, untere Kante, Saumlinie, unterer Rand, Rocksaum, Kleidersaum, Blusensaum, unterer Saum, Zipfel, Saumrand, Länge unten, Saumabschluss, Saumweite, Rand unten, Kante unten',
  },
  frontHem: {
    said: 'Saum vorn',
    words:
      'vorderer Saum, Saum vorn, vorn am Saum, Vorderkante unten, vordere Saum, vordere Saumkante, vorderer Rand unten, Saum in der vorderen Mitte, Saum über dem Bauch, vorn der Saum, Vorderteilsaum, Vordersaum',
  },
  backHem: {
    said: 'Saum hinten',
    words:
      'hinterer Saum, Saum hinten, hinten am Saum, hintere Saum, hintere Saumkante, Rückensaum, Saum am Rücken, hinten der Saum, Saum in der hinteren Mitte, Rückenteilsaum, Hintersaum',
  },
  skirt: {
    said: 'Rockteil',
    words: 'Rock, Rockteil, Rockbahn, Rockbahnen, Jupe, Rockes, Kittel, Kleiderrock',
  },
  front: {
    said: 'vorn',
    words:
      'vorn, vordere, Vorderteil, Vorderseite, vorderes Teil, Front, Vorderteils, frontal, Vorderfront, vordere Hälfte, vornherum, Vorderkante, vorn rum, vorder',
  },
  centre: {
    said: 'Mitte',
    words:
      'Mitte, vordere Mitte, mittig, Mittellinie, mittlere, Mittelnaht, in der Mitte, Körpermittellinie, Zentrum',
  },
  side: {
    said: 'Seite',
    words:
      'Seite, Seiten, seitlich, seitwärts, Flanke, Flanken, Körperseite, seitliche, an den Seiten',
  },
  sideSeam: {
    said: 'Seitennaht',
    words:
      'Seitennaht, Seitennähte, Seitennähten, Naht an der Seite, seitliche Naht, seitliche Nähte, Nähte an der Seite, Nähte an den Seiten, Naht auf der Seite, Seitenlinie, Naht seitlich, Seitnaht, Nahtverlauf an der Seite, Seite Naht',
  },
  placket: {
    said: 'Knopfleiste',
    words:
      'Knopfleiste, Knopf, Knöpfe, Knöpfen, Knopfreihe, Knopfloch, Knopflöcher, Knopflöchern, Druckknöpfe, Druckknopf, Verschluss, Verschlussleiste, Übertritt, Knopfverschluss, Haken, vordere Kante, Vorderkante Verschluss, Hemdverschluss, Schließe, zwischen den Knöpfen, Leiste, Blusenverschluss, Hemdleiste, Knopfleisten, Knöpfli, Chnöpf, Knöpf, zugeknöpft, Knopfpartie',
  },
}

export const PARTS: typeof EnglishParts = {
  zip: {
    said: 'Reißverschluss',
    words: 'Reißverschluss, Reissverschluss, Zipp, Zip, Reißer, Zippverschluss, RV',
  },
  bra: {
    said: 'BH',
    words:
      'BH, Büstenhalter, Unterwäsche, Wäsche drunter, Bustier, Unterhemd, BH-Band, BH-Verschluss, Spitzenbh, Sport-BH, Dessous, Leibchen',
  },
  strap: {
    said: 'Träger',
    words:
      'Träger, Trägern, BH-Träger, BH-Trägern, Spaghettiträger, Trägerli, Trägerle, BH Träger, Trägerchen, BH-Riemen, Riemen, Bänder vom BH',
  },
  seam: {
    said: 'Naht',
    words: 'Naht, Nähte, Nähten, Nahtlinie, Stepplinie, Steppnaht, Nahtverlauf',
  },
  edge: { said: 'Kante', words: 'Kante, Kanten, Rand, Ränder, Rändern, Umrandung' },
  facing: { said: 'Beleg', words: 'Beleg, Belege, Schrägband, Schrägstreifen, Besatz, Einfassung' },
  bodice: {
    said: 'Oberteil',
    words:
      'Oberteil, Oberteile, Leib vom Kleid, Oberkörper, Rumpf, Mieder, oberer Teil, obere Hälfte, Rumpfteil, Torso',
  },
  skin: { said: 'Haut', words: 'Haut, Fleisch, Körper anliegend' },
  sleeveless: {
    said: 'ärmellos',
    words:
      'ärmellos, ärmellose, ärmelloses, ohne Ärmel, Top, Trägertop, ärmelfrei, Tanktop, Shelltop, Etuikleid ohne Ärmel, Weste',
  },
  tip: { said: 'Spitze', words: 'Spitze, Spitzen, Ende, Enden' },
  bone: { said: 'Knochen', words: 'Knochen, Gelenk, knochig' },
  garment: {
    said: 'Stück',
    words:
      'Bluse, Kleid, Hemd, Teil, Stück, Shirt, Kleidungsstück, Etuikleid, Tunika, Hemdbluse, Kleidung, Sommerkleid, Jacke',
  },
  whole: {
    said: 'das ganze Stück',
    words:
      'überall, alles, das ganze Teil, die ganze Bluse, das ganze Kleid, ganzes Stück, gesamt, gesamte, insgesamt, komplett, komplette, vollständig, von oben bis unten, an allen Ecken, an allen Ecken und Enden, hinten und vorn, vorn und hinten zu, ganze Ding, das Ding, alles an, die ganze Chose, jede Naht, alle Nähte, ganze Stück, rundherum alles, durchgehend, generell, allgemein, von Kopf bis Fuß, in jeder Hinsicht, nirgends, an jeder Stelle, ganzes Kleid, in allen Richtungen',
  },
  cloth: { said: 'Stoff', words: 'Stoff, Stoffe, Gewebe, Material, Tuch, Stöffchen, Ware, Zeug' },
  toile: {
    said: 'Probeteil',
    words:
      'Probeteil, Nessel, Nesselmodell, Probekleid, Probebluse, Probestück, Nesselprobe, Testteil, Probemodell, Toile, Prototyp, Molino, Testversion, Testkleid, Testbluse, Probenessel, Probeversion, Baumwollnessel, Anprobeteil, Probestoff, Test, erste Version, Bettlaken, Leintuch, Musterteil, Probe, Probeschnitt, Probeexemplar, Muslin, Rohling, altes Laken, Nesselbluse, Nesselkleid, Nesselteil, billiger Stoff, Billigstoff, Versuchsteil',
  },
  realCloth: {
    said: 'richtiger Stoff',
    words:
      'richtiger Stoff, richtigen Stoff, Originalstoff, endgültiger Stoff, guter Stoff, guten Stoff, gute Stoff, schöner Stoff, echter Stoff, Seide, Leinen, Viskose, Satin, Wolle, Samt, Krepp, Crepe, Chiffon, fertiges Teil, fertige Kleid, fertige Bluse, fertiges Kleid, fertiges Stück, Original, Modestoff, teurer Stoff, teuren Stoff, teure Stoff, aus dem anderen Stoff, anderer Stoff, anderen Stoff, feiner Stoff, echten Stoff, Endstück, eigentliche Stoff, eigentlichen Stoff, Popeline, Musselin, endgültige Version, endgültige Bluse, Endversion, im fertigen Zustand, schönen Stoff, Taft, Tencel, Popelin, Kleid aus Seide, definitive Stoff, definitiven Stoff, Jersey',
  },
}
