/** Directions, sides, movements and the words that relate one place to another. */
import type {
  DIRECTIONS as EnglishDirections,
  MOVEMENTS as EnglishMovements,
  RELATIONS as EnglishRelations,
  SIDES as EnglishSides,
} from './ways.words.ts'

export const DIRECTIONS: typeof EnglishDirections = {
  across: {
    said: 'quer, waagerecht',
    words:
      'quer, querlaufend, querverlaufend, querliegend, Querfalte, Querfalten, Querzüge, Querzug, waagerecht, waagrecht, horizontal, quer rüber, quer drüber, in der Breite, von links nach rechts, von Seite zu Seite, von einer Seite zur anderen, querüber, wagrecht, wagerecht, flach liegend, Querrichtung, Querrolle, Querwulst, seitwärts, querwegs, von Armloch zu Armloch, wie ein Gürtel, liegende Falten, von einer Brust zur anderen, horizontale, quere, querdurch',
  },
  upright: {
    said: 'längs, senkrecht',
    words:
      'längs, senkrecht, vertikal, Längsfalten, Längsfalte, von oben nach unten, der Länge nach, längsverlaufend, längslaufend, hochkant, aufrechte Falten, lotrecht, in Längsrichtung, stehende Falten, stehende Falte, aufrecht stehende, Längsrichtung, Orgelpfeifen, Säulen, parallel zur Mitte, rauf und runter, hinauf und hinunter, längsseits, langgezogen, Röhren, vertikale, Säule, längsrum',
  },
  slant: {
    said: 'schräg',
    words:
      'schräg, diagonal, schräge, Schrägfalten, Schrägfalte, Schrägzüge, Schrägzug, schräglaufend, schrägverlaufend, wie ein V, V-förmig, umgedrehtes V, umgekehrtes V, übereck, überkreuz, quer schräg, Diagonale, strahlenförmig, fächerförmig, Fächer, im Winkel, schief verlaufend, schrägen, diagonale, schiefe Falten, schiefe Linien, Diagonalfalten, Diagonalzüge, schief runter, schräg abwärts, kreuz und quer',
  },
  allRound: {
    said: 'rundherum',
    words:
      'rundherum, ringsum, rundum, rund um den Körper, vorn und hinten, vorne und hinten, hinten und vorn, rundumlaufend, umlaufend, einmal rum, einmal herum, rings um, im ganzen Umfang, am ganzen Umfang, auf allen Seiten, ringförmig, wie ein Ring, im Kreis, gleichmäßig, überall gleich, um den ganzen Körper, rund herum, rundrum',
  },
  forward: {
    said: 'nach vorn',
    words:
      'nach vorn, vorwärts, zur Brust hin, zum Bauch hin, Richtung Bauch, zur Vorderseite, Richtung vorn, vornüber, zum Bauch, vorläuft, vorzieht, vorschwingt, vorkippt, nach vornüber, vorrutscht, voraus, gegen vorn, in Richtung Bauch, zum Vorderteil',
  },
  backward: {
    said: 'nach hinten',
    words:
      'nach hinten, rückwärts, zum Rücken hin, Richtung Rücken, Richtung Po, zum Po, zum Po hin, zum Hintern, zurück, hinterwärts, Richtung Hintern, zurückrutscht, zurückschwingt, gegen hinten, hintenüber, zum Gesäß, nach rückwärts, zum Rückenteil, hintenrüber',
  },
  up: { said: 'nach oben', words: 'nach oben, hinauf, aufwärts, empor' },
  down: { said: 'nach unten', words: 'nach unten, hinunter, abwärts, unten, hinab' },
  outward: {
    said: 'nach außen',
    words:
      'nach außen, außen, auswärts, zur Achsel, Richtung Achsel, weit außen, zur Seite, zu den Seiten, Richtung Arm, Richtung Seite, zu weit außen, zur Achsel hin, seitlich weg, zum Arm, zu den Armen, Außenseite, zur Armseite, nach der Seite',
  },
  inward: {
    said: 'nach innen',
    words:
      'nach innen, innen, zur Mitte, Richtung Mitte, einwärts, zur Mitte hin, zu weit innen, Richtung Knopfleiste, zur Knopfleiste, Innenseite, zur vorderen Mitte, zum Brustbein, Richtung Hals, zum Hals hin, zueinander, zum Dekolleté, zur Körpermitte',
  },
}

export const SIDES: typeof EnglishSides = {
  oneSide: {
    said: 'auf einer Seite',
    words:
      'links, rechts, linke, rechte, linker, rechter, linken, rechten, eine Seite, auf einer Seite, einseitig, nur links, nur rechts, nur auf einer Seite, linke Seite, rechte Seite, andere Seite, auf der anderen, einerseits, als die andere, eine Schulter, einer Seite, Taschenseite, linkerhand, rechterhand, linksseitig, rechtsseitig, Tasche, Handtasche, Umhängetasche, immer auf derselben Seite, auf der gleichen Seite',
  },
  bothSides: {
    said: 'auf beiden Seiten',
    words:
      'beide, beiden, beide Seiten, auf beiden Seiten, beidseitig, beidseits, links und rechts, auf jeder Seite, rechts und links, beider, mal links, zu beiden Seiten, symmetrisch, beidi, bede',
  },
}

export const MOVEMENTS: typeof EnglishMovements = {
  reach: {
    said: 'beim Vorgreifen',
    words:
      'Arme nach vorn, Arme vor, nach vorn greifen, vorgreifen, vorstrecken, Arme ausstrecken, ausstrecken, umarmen, umarme, Umarmung, umarmt, Auto fahren, Autofahren, Lenkrad, Steuer, am Steuer, lenken, Fahrrad, Fahrradfahren, radeln, Radfahren, Velo, Velofahren, Lenker, Kinderwagen, Computer, Tastatur, tippen, tippe, Arme verschränken, verschränke, verschränken, nach vorn mit den Armen, mit den Armen nach vorn, Arme kreuzen, schieben, Einkaufswagen, vorbeugen mit Armen, nach vorn strecken, Baby halten, Kind tragen, Kind hochhebe, Kuchenteig, klatschen, greife, greifen nach, nach etwas greifen, Klavier, staubsaugen, abwaschen, Arme nach vorne, Arme nach vorn nehme, vor der Brust, knuddeln, Enkel, Schuhe binden, Bewegung nach vorn, vornehme, vorstrecke, Schreibtisch, am Rechner, putzen, Armen nach vorn, rudern, Lenkstange, in den Arm nehme, in den Arm nehmen, stricken, häkeln',
  },
  armsUp: {
    said: 'beim Heben der Arme',
    words:
      'Arm heben, Arme heben, heb den Arm, hebe den Arm, Arm hebe, Arme hebe, den Arm hebe, Arm hoch, Arme hoch, Arme nach oben, Arm nach oben, hochstrecken, strecke, strecken, nach oben strecken, winken, winke, Winken, Regal, oberste Regal, Schrank oben, oberes Fach, Hochschrank, Haare machen, kämmen, Wäsche aufhängen, Wäscheleine, aufzeigen, melden, sich melden, aufstrecken, über Kopf, über den Kopf, Hand heben, Hand hoch, Hände hoch, Arme in die Luft, Haltestange, festhalten im Bus, im Bus, Armheben, beim Heben, gehobener Arm, gehobenen Arm, Arm oben, Arme oben, Yoga, Turnen, turnen, nicht heben, hochgreifen, hinaufgreifen, hochlangen, nach oben greifen, obere Regal, Arm anhebe, anhebe, hochhebe, Arme hochnehme, hochnehme, hochnehmen, hinauflange, hinauflangen, Arm anheben, Arme anheben, hochheben, Arm in die Höhe, Arme in die Höhe, Haare föhnen, föhnen, Tanzen, tanzen, tanze, Vorhang aufhängen, Fenster putzen, aufhebe, ufhebe, lupfe, lupfen, recken, recke, Taxi, hochreiße, Küchenschrank, Zopf, Haare waschen, streckt, Hutablage, Gepäckablage, Oberschrank, Lampe wechseln, Glühbirne, Arm nicht hoch, Arm kaum hoch, hochkriege, hochbekomme, Arm hinauf, in die Luft strecke',
  },
  bendElbow: {
    said: 'beim Beugen des Ellbogens',
    words:
      'Arm beugen, Arm beuge, beuge den Arm, Ellbogen beugen, abwinkeln, abwinkle, abgewinkelt, anwinkeln, anwinkle, angewinkelt, beim Beugen, Arm abwinkeln, telefonieren, telefoniere, Telefonieren, Handy am Ohr, trinken, trinke, Tasse, Kaffeetasse, beim Essen, Gabel, Löffel, Zähne putzen, Zähneputzen, gebeugt, gebeugter Arm, krumm machen, Arm krumm, beugen, beuge, schminken, Lippenstift, ans Ohr, zum Mund, Selfie, Hörer, gebeugten Arm, Kaffee trinken, Bierglas, Glas heben, Arm knicke, knicke, einknicken, Nase kratzen, biegen, biege, anziehe den Arm, aufstütze, aufstützen',
  },
  sit: {
    said: 'beim Sitzen',
    words:
      'sitzen, Sitzen, hinsetze, hinsetzen, setze, setzen, sitze, im Sitzen, Stuhl, Sessel, Sofa, am Tisch, hocke, hocken, Autositz, wenn ich sitze, beim Sitzen, hinsitze, hinsitzen, absitze',
  },
  bendOver: {
    said: 'beim Bücken',
    words:
      'bücke, bücken, vorbeuge, vorbeugen, nach vorn beuge, beuge mich, beuge mich vor, vornüberbeuge, beim Bücken, Bücken, vorgebeugt, vorlehne, hinunterbeuge, runterbeuge, Gartenarbeit, Garten arbeiten, bücket, bück, nach vorn lehne, vorneige',
  },
  walk: {
    said: 'beim Gehen',
    words:
      'beim Gehen, beim Laufen, Schritt, Schritte, spazieren, Treppe steigen, Treppensteigen, beim Spazieren, marschieren, wenn ich gehe, wenn ich laufe, im Gehen',
  },
  breathe: {
    said: 'beim Atmen',
    words:
      'atmen, atme, einatmen, tief einatmen, tief atmen, Luft holen, durchatmen, Atem, beim Atmen, einatme, durchschnaufen, schnaufen, schnuufe, Atemzug',
  },
  armsDown: {
    said: 'bei hängenden Armen',
    words:
      'Arme hängen lasse, Arme hängen, Arm hängt, hängender Arm, hängende Arme, Arm herunterhängt, Arme herunterhängen, Arm hinunterhängt, Arme hinunterhängen, Arme unten, Arm unten, hängendem Arm, hängenden Armen, in Ruhe, ruhig stehe, Arme locker, Arm hängen lasse, stillstehe, Arm senke, Arme an der Seite, Arm am Körper, Arme am Körper, stehe ruhig, Arm runterhängt, runter hängt, Armen hängend, Arm hängen, Arme hängenlasse, lockere Arme',
  },
  shoulderBack: {
    said: 'beim Zurücknehmen der Arme',
    words:
      'Schultern zurück, Schultern zurücknehme, zurücknehme, zurücknehmen, Arme nach hinten, Brust raus, Brust heraus, Schultern nach hinten, Arme zurück, hinter dem Rücken, aufrichte, Mantel anziehen, Jacke anziehen, Arme hinter, zurückziehe, nach hinten strecke, nach hinten nehme, Arm nach hinten, BH zumachen, zurückdehne, Schulterblätter zusammen',
  },
  meal: {
    said: 'nach dem Essen',
    words:
      'nach dem Essen, Essen, gegessen, Mittagessen, Abendessen, Mahlzeit, Schnitzel, satt, voller Bauch, vollem Bauch, Zmittag, Znacht, Jause, Kuchen, Pizza, Weihnachtsessen, Völlegefühl, aufgebläht, Blähbauch, nach dem Mittag, esse, essen',
  },
  hung: {
    said: 'nach dem Aushängen',
    words:
      'über Nacht, ausgehängt, aushängen, am Bügel, Bügel, Kleiderbügel hing, auf dem Bügel, einen Tag hängen, hängen lassen, nach dem Aushängen, Nacht, aufgehängt, eine Nacht, Schneiderpuppe, hängen gelassen, Haken hing',
  },
  washed: {
    said: 'nach dem Waschen',
    words:
      'gewaschen, Waschen, Wäsche, waschen, Waschmaschine, Trockner, nach dem Waschen, eingelaufen, eingegangen, erste Wäsche, Waschgang, Reinigung, Tumbler, im Trockner, gekocht, 60 Grad, Kochwäsche, nach der Wäsche, geschrumpft',
  },
  wornOn: {
    said: 'beim Tragen',
    words:
      'den ganzen Tag, ständig, dauernd, beim Tragen, im Laufe des Tages, nach einer Stunde, alle fünf Minuten, immer wieder, mit der Zeit, nach kurzer Zeit, am Abend, ununterbrochen, permanent, andauernd, alle paar Minuten, pausenlos, bis zum Abend, tagsüber, fortwährend',
  },
}

export const RELATIONS: typeof EnglishRelations = {
  from: {
    said: 'von',
    words: 'von, vom, ab, ausgehend, ausgehend von, aus, beginnt, anfängt, fängt an, beginnend',
  },
  toPlace: {
    said: 'zu',
    words:
      'bis, bis zu, bis zum, bis zur, zur, zum, Richtung, hin zu, gegen, in Richtung, bis unter',
  },
  above: {
    said: 'oberhalb',
    words: 'oberhalb, oberhalb von, oben auf, ober, weiter oben, darüber',
  },
  below: {
    said: 'unterhalb',
    words:
      'unter, unterhalb, unterhalb von, direkt unter, gleich unter, darunter, knapp unter, unterm, unters',
  },
  than: { said: 'als', words: 'als, im Vergleich, verglichen mit, statt, anstatt, anstelle' },
  between: { said: 'zwischen', words: 'zwischen, dazwischen, zwischendrin, zwischenzue, zwüsche' },
  beside: {
    said: 'neben',
    words:
      'neben, nahe, seitlich von, entlang, um, rund um, nahe bei, in der Nähe, nebendran, längs der, nah bei',
  },
  over: { said: 'über', words: 'über, auf' },
  behindOf: {
    said: 'hinter',
    words:
      'hinter dem Knochen, hinter der Schulter, hinter dem Schulterknochen, hinter, hinter meiner Schulter, hinter dem Schulterpunkt, liegt hinter, sitzt hinter, hinter der Achsel, auf dem Rücken liegt, hinten auf dem Rücken',
  },
  aheadOf: {
    said: 'vor',
    words:
      'vor dem Knochen, vor der Schulter, vor dem Schulterknochen, vor dem Arm, vor der Achsel, vor, liegt vor, sitzt vor, vorn an der Achsel, vorderen Achsel, vordere Achsel, Achsel vorn, auf dem Schlüsselbein, in der vorderen Achsel',
  },
  want: {
    said: 'sollte',
    words:
      'sollte, müsste, müssten, sollten, brauche, braucht, bräuchte, gehört, gehörte, wünsche, will, wollte, hätte gern, hätte gerne, möchte, soll, muss, wäre besser, besser wäre, gehören, wünschte',
  },
  fine: {
    said: 'sitzt gut',
    words:
      'passt, sitzt gut, gut, perfekt, super, prima, stimmt, in Ordnung, okay, ok, sitzt super, wunderbar, tadellos, einwandfrei, tiptop, bestens, sitzt perfekt, richtig sitzt, sitzt richtig, passt gut, wie angegossen, gepasst, saß gut, super gesessen, gesessen, saß, klasse, spitze gesessen, kein Problem, alles gut, ideal, hervorragend, toll, sitzt alles, bassd, fein, sitzt tadellos, schön sitzt, war gut, gut gesessen, genau richtig',
  },
  borrowed: {
    said: 'wie von jemand anderem',
    words:
      'geliehen, ausgeliehen, von meinem Mann, Männerhemd, Herrenhemd, Papas Hemd, vom Vater, vom Bruder, von meinem Bruder, großen Bruder, von meinem Freund, großer Schwester, geerbt, von Papa, von meinem Vater, jemand anderem, Football, Footballspieler, Achtziger, achtziger Jahre, 80er, Schulterpolstern aus, Boxer, Verkleidung, meines Mannes, Möbelpacker',
  },
}
