/** What the cloth does. From memory and common speech. */
import type { SIGNS as English } from './signs.words.ts'

export const SIGNS: typeof English = {
  loose: {
    said: 'locker',
    words:
      'locker, lose, loser, losem, schlabbert, schlabberig, schlabbrig, schlabbern, schlottert, schlottern, schlotterig, schlackert, schlackern, schlaff, labberig, labbrig, flattert, flattern, weit, schlampig, sackartig, wie ein Sack, Kartoffelsack, wie ein Zelt, Zelt, luftig, unförmig, formlos, schwimmt, schwimme, versinke, versinken, hängt lose, hängt herunter, nicht figurnah, nicht auf Figur, wie ein Nachthemd, Nachthemd, Umstandskleid, Mehlsack, sackt rum, bauschig, wabbelig, wabbelt, wabert, baumelt, locker sitzt, nicht eng genug, lummelig, lommelig, schlenkert, flatterig, herumschlabbert, leger, oversized, Luft, Spielraum, enger machen, Gürtel brauchen, wie ein Vorhang, nicht tailliert, keine Form, ohne Form, leger geschnitten, pludert, pludrig, plustert, geht nicht auf die Rippen, Bademantel, schlöttert, schlotteret, lodderig, loddert, lugg, luggi, fließt, schlackrig, locker fällt, zu viel Luft, sackig, zu weite, schlappe, schlapp, hängt gerade herunter, gerade herunterhängt, nicht auf Taille, Taillierung fehlt',
  },
  extra: {
    said: 'zu viel Stoff',
    words:
      'zu viel, viel Stoff, überschüssig, überschüssiger, überflüssig, Überschuss, übrig, Stoff übrig, mehr als genug, zu viel Stoff, Mehrweite, Handvoll, eine Hand voll, Stoffüberschuss, Überfluss, reichlich, massenhaft, Haufen Stoff, jede Menge, Menge Stoff, lauter Stoff, zu viel Weite, Weite zu viel, unnötig, unnötige, überschüssige, Batzen, Stoffmengen, Stoffmasse, Unmengen, Stoff zu viel, üppig, überzählig, so viel Stoff, haufenweise, übriger',
  },
  pinch: {
    said: 'lässt sich wegstecken',
    words:
      'abstecken, wegstecken, abnehmen, wegnehmen, zusammenfassen, greifen, packen, Wäscheklammer, Klammer, Klammern, wegkneifen, kneifen, zusammenraffen, einhalten können, reinnehmen, hineinnehmen, enger nähen, wegfalten, abgesteckt, weggesteckt, wegklammern, fassen, herausnehmen, rausnehmen, raffen, wegzwicken, einnehmen, Handvoll greifen, Stoff greifen, festhalten, wegstecke, Kniff, abnähen, in die Hand nehmen, hineinstopfen, reinstopfen, reinpassen, reinpasst',
  },
  big: {
    said: 'zu groß',
    words:
      'groß, riesig, riesengroß, größer, Nummer zu groß, Größe zu groß, Größen zu groß, Nummern zu groß, gewaltig, enorm, mächtig, überdimensional, viel zu groß, hineinwachsen, zweimal hineinpassen, zu zweit, doppelt reinpassen, Übergröße, XXL, monströs, mordsgroß, großzügig, Kleiderständer, zweimal hinein, ertrinke, ertrinken, zwei Nummern, verloren',
  },
  wide: {
    said: 'zu breit',
    words:
      'breit, breiter, Breite, weit auseinander, auseinander, zu weit auseinander, auseinanderliegen, auseinanderstehen, zu breit, überbreit, weiter auseinander',
  },
  tight: {
    said: 'eng',
    words:
      'eng, zu eng, knapp, stramm, einengt, beengt, engt, einschnürt, schnürt, quetscht, gequetscht, zerquetscht, presst, gepresst, Presswurst, Wurst, wie eine Wurst, Wurstpelle, Pelle, wie ein Korsett, Korsett, Zwangsjacke, eingezwängt, zwängen, hineinzwängen, Panzer, platt gedrückt, plattdrückt, plattgedrückt, zusammendrückt, zusammengedrückt, klemmt, klemmen, abgeklemmt, einklemmt, eingeklemmt, abklemmt, abschnürt, abgeschnürt, Blut abgeschnürt, kein Platz, nicht genug Platz, zu wenig Platz, zu wenig Weite, fehlt Weite, Weite fehlt, Luft bekommen, keine Luft, kaum Luft, Luft anhalten, den Bauch einziehen, Bauch einziehen, nicht atmen, eng anliegt, zu körpernah, hauteng, wie eine zweite Haut, eingepackt, wie eingenäht, einzieht, nicht bewegen, spack, prall, wie in einer Zwinge, Würgegriff, Kompressionsstrumpf, Druckverband, Gummiwurst, eingeschnürt, zu wenig Bewegungsfreiheit, keine Bewegungsfreiheit, bewegungsunfähig, zugeschnürt, satt anliegend, nicht weit genug, eingeengt, atmen, platzt, straff sitzt, nicht genug Weite, zu wenig Mehrweite, eingequetscht, wie Presswurst, steckt, Schraubstock, weiter sein, mehr Weite, zu kleine Weite, knapp bemessen, abgedrückt, abzeichnet, zeichnet sich ab, durchatmen kaum, festgebunden, fest, kneift',
  },
  strain: {
    said: 'gespannt',
    words:
      'spannt, spannen, gespannt, Spannung, straff, straffe, Zugfalten, Zugfalte, Spannfalten, Spannfalte, Spannungsfalten, unter Spannung, Zuglinien, Züge, Zug, zum Zerreißen gespannt, überspannt, gedehnt, Querzüge, Querzug, Schrägzüge, Schrägzug, wie ein Gurt, wie ein Seil, stramme, wie ein Trommelfell, Trommel, Querspannung, Spannungslinien, straffe Linien, strammt, strammen, Zugspannung, gestrafft, angespannt, spannig, Zügen, straffgezogen, Brett vor der Brust, Strahlen, strahlenförmig, sternförmig, Sternfalten, überdehnt, Ziehfalten',
  },
  pull: {
    said: 'zieht',
    words:
      'zieht, ziehen, gezogen, zerrt, zerren, reißt, zupft, wegzieht, herzieht, hinzieht, zieht sich, gezerrt, herunterzieht, hinunterzieht, rüberzieht, zuzieht, verzogen, dagegen zieht, wegzerrt, runterzieht, Ziehen',
  },
  grip: {
    said: 'klemmt fest',
    words:
      'umklammert, klammert, umschließt, festsitzt, festhält, greift, umspannt, festgehalten, umgreift, anklammert, packt',
  },
  dig: {
    said: 'schneidet ein',
    words:
      'einschneidet, einschneiden, schneidet, schneiden, eingeschnitten, drückt, drücken, Druck, Druckstelle, Druckstellen, scheuert, scheuern, reibt, reiben, kratzt, kratzen, zwickt, zwicken, kneift, beißt, pikst, piekst, sticht, weh, tut weh, schmerzt, Schmerzen, wund, aufgescheuert, rote Streifen, roter Streifen, roter Abdruck, Abdruck, Abdrücke, Striemen, Striemen am Arm, rote Striemen, Rille, Furche, einklemmt, juckt, aufreibt, reindrückt, hineindrückt, gräbt, eingräbt, säbelt, sägt, absägt, Strieme, bohrt, ritzt, rubbelt, ribbelt, wetzt, pfetzt, klemmt ein, Rillen, roter Rand, rote Ränder, einschläft, Arm schläft ein, taub, abstirbt, brennt, reinschneidet, hineinschneidet, chrüzt, chratzt, schnürt ein, Blut staut, eingeschlafen, roter Ring',
  },
  small: {
    said: 'zu klein',
    words:
      'klein, zu klein, winzig, kleiner, knapp, zu wenig, Nummer zu klein, Größe zu klein, Größen zu klein, Nummern zu klein, nicht zugeht, nicht zumachen, nicht zugeknöpft, krieg nicht zu, nicht zukriege, kaum zu, krieg kaum zu, nicht zu, nicht schließen, nicht schließt, schließt nicht, geht nicht zu, kaum zubekomme, nicht zubekomme, nicht reinkomme, komme nicht hinein, kaum hinein, nicht hinein, komm kaum hinein, kaum anziehen, nicht anziehen, krieg nicht an, eingegangen, eingelaufen, geschrumpft, Kindergröße, mickrig, Stoff reicht nicht, reicht nicht, nicht genug Stoff, zu wenig Stoff, fehlt Stoff, da fehlt, fehlt, fehlen, mager, nicht zuknöpfen, nicht zubringen, kaum schließen, Puppenkleid, zu sparsam, passe nicht hinein, passt nicht hinein, nicht zuzukriegen, Reißverschluss nicht zu, geht nicht mehr zu, zubekomme, zukriege, zugeht, zubringe, Kinderkleid, Kindergrößen, unterdimensioniert',
  },
  narrow: {
    said: 'zu schmal',
    words:
      'schmal, zu schmal, schmäler, schmaler, nicht breit genug, zu nah beieinander, nah beieinander, beieinander, beisammen, zusammenstehen, eng beieinander, dicht beieinander, zu wenig Breite, Breite fehlt, fehlt Breite, fehlt in der Breite, näher zusammen, eng zusammen, nahe beieinander, enger zusammen, näher beieinander, dicht beisammen, zu eng zusammen, nah zusammen, nahe zusammen, dicht zusammen, nah beisammen',
  },
  burst: {
    said: 'platzt auf',
    words:
      'platzt, platzen, aufplatzt, geplatzt, reißt, einreißt, gerissen, aufspringt, springt auf, Knopf springt, Nähte krachen, kracht, krachen, sprengt, aufreißt, zerreißt, Naht reißt, Naht platzt, wegspringt, abspringt, gesprungen, abplatzt, knackt, aufgeplatzt, aufgesprungen, aufgegangen, abgesprungen, abreißt, zerreißen, Naht geht auf',
  },
  gape: {
    said: 'steht ab',
    words:
      'absteht, abstehen, abstehend, abgestanden, wegsteht, wegstehen, wegstehend, klafft, klaffen, klaffend, aufklafft, aufklaffen, abhebt, abheben, nicht anliegt, nicht anliegen, liegt nicht an, nicht aufliegt, nicht aufliegen, liegt nicht auf, nicht am Körper, liegt nicht am Körper, nicht eng am, Lücke, Spalt, Spalte, Luft dazwischen, hohl, Hohlraum, aufsteht, sperrt, sperren, aufsperrt, schlabbert weg, lose Schlaufe, lockere Schlaufe, Schlaufe, Schlinge, weggeht, zwei Finger, Finger dazwischen, Hand dazwischen, Finger rein, passen Finger, wie eine Tüte, Tüte, absteht wie, flattert weg, nicht glatt anliegt, schließt nicht an, nicht am Hals, nicht am Nacken, nicht auf der Haut, nicht an der Haut, berührt nicht, berührt mich nicht, abgehoben, vom Körper weg, vom Körper ab, nicht am Rücken, stülpt, auffällt, aufgeht, offen steht, offensteht, offenstehend, klafft auf, Abstand, schwebt, schweben, hängt ab, weghängt, nicht fest an, Zwischenraum, wölbt weg, wegwölbt, wegbiegt, gähnt, gähnen, Loch dazwischen, abstaht, sich abhebt, Luftraum, klafft weg, aufbauscht, reinschauen, hineinschauen, reingucken, reinlangen, hineinlangen, zuhalten, festhalten, vorsteht, beult weg, ausbeult, weit weg, steht weg, locker absteht, Finger, Daumen, ganzer Daumen, Hand, Faust, zusammenhalten, weghalten, aufklappt, herausklappt, wie ein Henkel, Schaufelchen, Schaufel, Regenrinne, wie ein Eimer, Eimer, absteht wie ein Ohr',
  },
  open: {
    said: 'öffnet sich',
    words:
      'aufgeht, offen, öffnet, öffnen, aufmacht, auseinanderklafft, auseinandergeht, auseinanderzieht, Guckloch, Gucklöcher, Sicherheitsnadel, Sichtfenster, auseinanderspringt, aufzieht, Rauten, Raute, rautenförmig, Löcher zwischen, Loch zwischen, bleibt nicht zu, nicht geschlossen, hält nicht zu, Fenster, geht auf, Schlitz zwischen, Schlitze, klappt auf, auseinander klafft, aufzwingt, Spalt zwischen',
  },
  stickUp: {
    said: 'steht hoch',
    words:
      'hochsteht, hochstehen, hochgestellt, aufsteht, aufstellt, nach oben absteht, in der Luft, schwebt in der Luft, in der Luft steht, in der Luft hängt, emporsteht, raufsteht, hinaufsteht, wie ein Dach, Dach, Zeltdach, hebt sich ab, abgehoben, aufwölbt, hochwölbt, nicht aufliegt, aufragt, Giebel, hochbeult, steht hoch, aufgestellt, liegt nicht auf, Buckel in der Naht, hoch steht, Tunnel',
  },
  stickOut: {
    said: 'steht heraus',
    words:
      'heraussteht, herausstehen, rausstehen, raussteht, herausragt, rausragt, vorsteht, vorstehen, hervorsteht, seitlich absteht, hinausragt, hinaussteht, übersteht, überragt, auslädt, ausladend, raus steht, seitlich raus, seitlich raussteht, waagrecht absteht, waagerecht absteht, horizontal absteht, wie ein Regal, rausgucken, herausschaut, ausgestellt, Lampenschirm, Schirm, Vordach, waagrecht raus, waagerecht raus, absteht seitlich',
  },
  wing: {
    said: 'wie ein Flügel',
    words:
      'Flügel, wie Flügel, Engelsflügel, Fledermaus, Flugzeug, Flugzeugflügel, Vogel, abhebt gleich, fliegen, wegfliegen, davonfliegen, losfliegen, Segel, Segelflieger, Pinguin, Schmetterling, Superheld, Flossen, Flosse, Haifischflosse, Propeller, Elefantenohren, Elefantenohr, Epauletten, Engel, Batman, Flügerl, Flügeli, flattern wie, Hühnerflügel, Drachen, Raumschiff, heben ab, Möwe, Hexe, wie die Flügel, Huhn, Hühner, Vordach',
  },
  fold: {
    said: 'Falten',
    words:
      'Falte, Falten, Faltenwurf, faltig, Welle quer, Linie, Linien, Knick im Stoff, knittert, zerknittert, Knitter, Längsfalten, Längsfalte, Querfalte, Querfalten, Schrägfalten, Schrägfalte, Knautschfalte, Knautschfalten, Dellen, Stofffalte, Stofffalten, Faltenbildung, Ziehharmonika, Ziehharmonikafalten, Vorhangfalten, hängende Falten, Gardine, Knautsch, Stauchfalten, Stauchfalte, Querrille, Faltn, Plissee, Treppe, umgedrehtes V, Bögen, zerdrückt',
  },
  bunch: {
    said: 'staut sich',
    words:
      'staut, stauen, stauchen, staucht, sich staucht, gestaucht, Wulst, Wülste, Stoffwulst, Rolle, Röllchen, Rollen, rollt, rollen, aufrollt, zusammenrollt, Stoffwurst, Wurst quer, knäult, Knäuel, Knubbel, knubbelt, bauscht, bauschen, aufbauscht, aufgebauscht, Bausch, Stoffbausch, zusammenschiebt, zusammenschieben, sammelt sich, sammelt, sammeln, türmt, auftürmt, schoppt, schoppen, knautscht, Knautsch, zusammenknautscht, zusammengeschoben, schiebt sich, schiebt sich zusammen, häuft, Haufen, Berg, Sack, Säcke, Säcken, Stoffsack, Beutel, Klumpen, klumpt, Polster, knuddelt, zusammengeknüllt, knüllt, zusammenstaucht, zusammenballt, ballt, ballen, hängematte, Hängematte, dicker Stoff, dick, Päckchen, Schwimmring, Rettungsring, Handtuchrolle, Stoffstau, Nest, Bollen, Knödel, übereinander, übereinanderschiebt, zusammensackt, einrollt, hochrollt, zusammenläuft, aufstaut, Batzen Stoff, Gewurschtel, gewurstelt, zusammenwurstelt, knüddelt, drüberbauscht, überbauscht, drübersackt, wurschtelt, Wurstl, Ringe, Pölsterchen, staucht sich, Gebausche, Michelin, Michelinmännchen, Ringen, Schwimmring aus Stoff, Handtuch, Berge, Stoffberge, sackig',
  },
  pucker: {
    said: 'kräuselt sich',
    words:
      'kräuselt, kräuseln, gekräuselt, Kräusel, Kräuselung, Kräuselungen, kraus, krause, Krause, rafft, gerafft, Raffung, Fältchen, kleine Falten, lauter kleine Falten, kleine Fältchen, Rüschen, Rüsche, zusammenzieht, zieht sich zusammen, zusammengezogen, wellt sich an der Naht, gerüscht, geruscht, gesmokt, schrumpelig, schrumpelt, Blümchenrand, Kräuselnaht, Fältelung, gefältelt, fältelt, Dellen an der Naht, Mäusezähnchen, verzieht sich an der Naht, knitterige Naht, wellige Naht, Naht zieht sich, zusammengeschnurrt, eingekräuselt, chrüselet, chruselet, Krauselung, krisselig',
  },
  bubble: {
    said: 'macht eine Blase',
    words:
      'Blase, Bläschen, Blasen, Beule, Beulchen, Beulen, beult, ausbeult, beulen, Grübchen, Delle, Dellchen, Pickel, Knubbel, Luftblase, Luftblasen, bauscht, Puff, Puffärmel, Tüte, Tütchen, Hügel, Hütchen, Zipfelchen, Blob, Dutt, Knöllchen, pufft, aufgepufft, aufgeblasen, bläht, aufgebläht, Ballon, wie ein Ballon, Täschchen, Kugel, Beutel am Ende, Säckchen, Buckelchen, Beulerl, nicht glatt, glatt bügeln, lässt sich nicht bügeln, nicht flach, plustert, Krater, Pocken, Warze, nicht schön ausläuft, Nippel stehen, wegbügeln',
  },
  bulge: {
    said: 'wölbt sich',
    words:
      'wölbt, Wölbung, Buckel, Buckeln, vorwölbt, herauswölbt, rauswölbt, Höcker, Beule, Hubbel, Huckel, gewölbt, Ausbuchtung, ausbuchtet, hügelt, Schwellung, Ausbeulung, beult heraus, herausbeult, bucklig, vorgewölbt, buckelt, Puckel, Verdickung',
  },
  pointy: {
    said: 'spitz',
    words:
      'spitz, spitzig, spitze Brust, spitze Tüte, spitzer, Spitztüte, Kegel, kegelförmig, Tüten, Raketen, Rakete, Madonna, Spitzbusen, sticht, spießt, pikst heraus, Eistüte, Eistüten, Torpedo, Torpedos, Scheinwerfer, Zuckerhut, Pyramide, Hexenhut, Spitz-BH, spitze Abnäher, stechen, herausstechen, heraussticht, stechend, spitz wie, Stachel, Dorn, Dolch, Partyhütchen, Schultüte, Schultüten, zu spitz, Nadel, Spieße, sticht heraus',
  },
  peak: {
    said: 'Ecke oder Delle in der Linie',
    words:
      'Ecke, Zipfel, Knick, Knickstelle, Delle, Kerbe, Zacke, Zacken, Knicks, eckig, keine Rundung, nicht rund, keine schöne Rundung, Absatz, Stufe, Versatz, Nase, Eck, Hörnchen, Horn, Einbuchtung, Einkerbung, Beule in der Linie, nicht in einem Zug, nicht in einem Bogen, kein schöner Bogen, Bogen unterbrochen, Höcker in der Kante, Winkel, Schnabel, Eselsohr, unrund, nicht fließend, kein fließender, Linie nicht glatt, Kurve nicht glatt, zackig, geknickt, treffen nicht aufeinander, laufen nicht ineinander, nicht ineinander über, Öhrchen, Zipfeli, Spitz, keine glatte Linie, Kurve, reingebissen, Sprung, nicht schön ineinander, spitz statt rund, Sprung in der Linie',
  },
  wavy: {
    said: 'wellig',
    words:
      'wellig, wellt, wellen, Wellen, gewellt, Wellenlinie, Salatblatt, Kräuselsalat, ausgedehnt, ausgeleiert, leiert, ausgezogen, gedehnt, dehnt, gewachsen, wellenförmig, schlägt Wellen, wirft Wellen, Rüschenrand, rüschig, verzieht, ausgehängt, ausgehangen, ausgewellt, Lasagne, Lasagneblatt, Kartoffelchip, länger geworden, verlängert, ausleiert, ungleich ausgehängt, aushängt, geschwungen, Welle, Wellele, flattrig, kräuselig, Volant, Salat, wie eine Welle, Kohlblatt, Wellpappe, lätschig, verdehnt',
  },
  sCurve: {
    said: 'biegt sich',
    words:
      'S, S-Form, S-förmig, S-Kurve, Bogen, Bögen, gebogen, biegt, Kurve, kurvig, schlängelt, schlängelnd, Schlangenlinie, Schlange, geschwungen, krumm, Krümmung, Zickzack, wie ein S, macht ein S, Schlangenlinien, wie eine Banane, Banane, ausbiegt, schwingt sich, Klammer, nicht gerade, keine gerade Linie, gekrümmt, Bogens, windet, Ess, verbogen, eiert, eierig, Fragezeichen, mäandert, mal vorn mal hinten, geschlängelt, Schlangenform',
  },
  sag: {
    said: 'sackt',
    words:
      'sackt, absackt, durchsackt, sacken, hängt herunter, hinunterhängt, herunterhängt, runterhängt, durchhängt, durchhängen, durch hängt, senkt, absenkt, abfällt, fällt ab, absinkt, sinkt, sinken, rutscht hinunter, hinunterrutscht, herunterrutscht, runterrutscht, runterzieht, tiefer, hinuntergeht, hinuntersackt, runtersackt, zusammensackt, schlapp, neigt, tropft, hängt tief, tief hängt, nach unten hängt, hängt nach unten, nach unten zieht, nach unten, abwärts, hinunterfällt, runterfällt, herabhängt, hinunterkommt, hängt durch, hinunter, hängt schlaff, sinkt ab, zu tief hängt, abläuft, Hängebauch',
  },
  hang: {
    said: 'hängt',
    words:
      'hängt, hängen, hängend, baumelt, baumeln, fällt, fallen, herumhängt, rumhängt, herunterfällt, hängt herum, Fall',
  },
  rise: {
    said: 'rutscht hoch',
    words:
      'hochrutscht, hochrutschen, hochgerutscht, hochzieht, hochgezogen, hochziehen, hochsteigt, hochklettert, hochkriecht, hochwandert, hochgeht, hochgehen, mit hochgeht, hochkommt, hochkommen, hochschiebt, hochgeschoben, hochschieben, hochspringt, hochhebt, hochklappt, hochkrabbelt, hochkrempelt, steigt, steigen, ansteigt, ansteigen, klettert, klettern, kriecht, kriechen, hinaufrutscht, hinaufzieht, hinaufsteigt, hinaufklettert, hinaufgeht, hinaufschiebt, hinaufgezogen, hinaufkriecht, nach oben rutscht, nach oben zieht, zieht nach oben, rutscht nach oben, wandert nach oben, nach oben gezogen, nach oben wandert, nach oben geht, anhebt, hebt, heben, hebt sich, hebt mit, angehoben, mitkommt, mitgeht, mitkommen, mitzieht, mitgezogen, mithebt, mitwandert, kommt mit, in die Höhe geht, geht in die Höhe, wandert hoch, lüpft, lupft, aufsteigt, raufrutscht, raufzieht, raufgeht, rutscht aus der Hose, aus dem Hosenbund, aus dem Bund, aus dem Rock, bauchfrei, Bauch guckt heraus, schnellt hoch, hochschnellt, rollt hoch, verkürzt, höher, kürzer, alles kommt mit, hüpft, aufsteigen, hochkippt, aufkippt, auffliegt, hochfliegt, hochschlägt, hochdrückt, hochgedrückt, nackter Bauch, Bauch frei, schaut der Bauch, guckt der Bauch, emporsteigt, kürzer wird, wird kürzer, hochhüpft, hochschwingt',
  },
  slide: {
    said: 'rutscht',
    words:
      'rutscht, rutschen, rutschend, verrutscht, verrutschen, wandert, wandern, gewandert, gleitet, gleiten, kriecht, verschiebt, rüberrutscht, wegrutscht, zurückrutscht, zurückziehen, nach vorn ziehen, nach vorne ziehen, zurechtziehen, zurechtzupfen, zupfen, zupf, zupfe, herunterziehen, hinunterziehen, runterziehen, runterzupfen, kippt, kippen, vorkippt, hinunterkippt, überkippt, zerren, abrutscht, rutscht ab, verlagert, hinabgleitet, fällt von den Schultern, herabrutscht, schiebt, bleibt nicht, hält nicht, rückwärts, rücklings, nach vorn fällt, vorfällt, nach vorn kippt, vornüber, kopflastig, rutscht zurück, zurecht, zurechtrücken, richten, ständig ziehen, hochziehen müssen, abwandert, vorrutscht, vorzieht, hinunterrutscht, herunterrutscht, runterrutscht, runterrutschen, hinunterrutschen, herunterrutschen',
  },
  swing: {
    said: 'schwingt',
    words:
      'schwingt, schwingen, läuft weg, wegläuft, läuft, verläuft, wandert, ausschert, abdriftet, driftet, hinläuft, wegdriftet, ausschwingt, vorschwingt, zurückschwingt, schwenkt, pendelt, abweicht, weicht ab, gezogen nach, zieht nach, zieht hin, dreht nach, wandert nach, läuft nach, wegschwingt, zeigt nach, vorläuft, wegzieht, hinzeigt, strebt, zielt nach, abbiegt, biegt ab',
  },
  tilt: {
    said: 'steht schräg',
    words:
      'neigt, geneigt, kippt, gekippt, schräg steht, schräg hängt, nicht senkrecht, nicht lotrecht, aus dem Lot, Schieflage, nicht im Lot, schräg läuft, Neigung, Gefälle, abfällt, abfallend, schräg abfällt, lehnt, verkippt, schräg verläuft, steht nicht senkrecht, abschüssig, Schräge',
  },
  twist: {
    said: 'verdreht sich',
    words:
      'verdreht, dreht, drehen, dreht sich, verdrehen, Spirale, spiralförmig, Korkenzieher, wie ein Korkenzieher, windet, windet sich, wickelt, gedreht, verdrehte, Drehung, Fadenlauf, gegen den Fadenlauf, nicht im Fadenlauf, schräger Fadenlauf, Fadenlauf schief, verzogen, verzieht, verwunden, gewunden, eindreht, ausdreht, herumdreht, rumdreht, wegdreht, schraubt, Schraube, rotiert, verdrillt, drillt, wringt, ausgewrungen, verwindet, dreht mit, mitdreht, Fadenrichtung, Webkante, schraubig, Zuckerstange, um den Arm dreht, wendelt, Stoff liegt schief, Verdrehung, Fadenlauf nicht, windschief, drallt, Drall',
  },
  uneven: {
    said: 'ungleich',
    words:
      'schief, ungleich, ungleichmäßig, ungleichmässig, uneben, unregelmäßig, nicht gerade, nicht gleich, nicht gleich lang, ungleich lang, nicht waagerecht, nicht waagrecht, nicht eben, krumm, asymmetrisch, unsymmetrisch, ungerade, windschief, nicht parallel, verschieden lang, unterschiedlich lang, unterschiedlich, nicht überall gleich, nicht symmetrisch, schepps, schepp, eiert, nicht gleich hoch, unterschiedlich hoch, verschieden, zipfelt, Zipfel, zipfelig, wie besoffen, Kraut und Rüben, nicht auf gleicher Höhe, nicht ausgeglichen, verschieden hoch, hoppelig, ned grad, nicht grad, hängt ungleich, zipflig, nicht ebenmäßig, im Ungleichgewicht, einmal länger, nicht rundherum gleich, Berg und Tal, überall anders lang, anders lang, krumm und schief, nicht überall',
  },
  choke: {
    said: 'würgt',
    words:
      'würgt, würgen, erwürgt, erwürgen, stranguliert, erdrosselt, drosselt, schnürt die Luft ab, Luft ab, ersticke, ersticken, erstick, erstickt, Strick, Schlinge um den Hals, schlucken, nicht schlucken, kaum schlucken, abwürgt, Hundehalsband, Halsband, keine Luft am Hals, Luft abgedrückt, würgend, Luft weg, verstick, ersticke, röcheln, wie am Galgen, Galgen, würg, Halseisen, verwürgt, abgewürgt, erdrückt, röchle, Atemnot, krieg keine Luft, Erstickungsgefühl',
  },
  show: {
    said: 'zeigt, was bedeckt sein soll',
    words:
      'sieht, sehen, sichtbar, herausschaut, rausschaut, herausschauen, rausgucken, rausguckt, herausguckt, herauslugt, blitzt, hervorblitzt, rausblitzt, hervorschaut, hervorguckt, zeigt, hineinsehen, hineinsieht, reinsehen, reinsieht, hineinschauen, hineinschaut, reinschaut, reinschauen, reinguckt, reingucken, Einblick, Einblicke, durchsieht, Durchblick, entblößt, unbedeckt, nackt, nackte, füreluegt, fürelueg, füreluege, guckt, gucken, lugt, rauslugt, vorblitzt, hervorlugt, man sieht, sieht man, zu sehen, alles sehen, freizügig, unanständig, freigibt, frei liegt, peinlich, Einsicht, durchschauen, schaut heraus, Blick frei, hineinspechten, sieht jeder, jeder sieht, offenbart, preisgibt, inneluege, ineluege, ineluegt, vorguckt, sehe, zum Vorschein, Peepshow, einsehen, einsieht, durchguckt, tief blicken, blicken, blitzt hervor, durchschaut, einblicken',
  },
  empty: {
    said: 'steht leer',
    words:
      'leer, steht leer, leerer, hohl, einfällt, eingefallen, fällt ein, fällt zusammen, zusammenfällt, eingesunken, einsinkt, ausfüllen, nicht ausfülle, füllt nicht aus, nicht gefüllt, nicht ausgefüllt, nichts drin, nichts zum Füllen, eingedrückt, eindellt, einsackt, Luftschloss, nicht füllen, unausgefüllt, Füllung fehlt, ausgestopft, ausstopfen, ausgefüllt, fülle, ausfülle, fülle nicht aus, füll nicht aus, eingedellt, einknickt, einbricht, nichts drinnen, hohle, reinstopfen, hineinstopfen, nichts drin ist, einfallen, fällt in sich zusammen, leere',
  },
  flat: {
    said: 'flach',
    words:
      'flach, platt, flachgedrückt, plattgedrückt, abgeflacht, niedrig, zu flach, zu niedrig, plättet, wie ein Brett, flacher, Brett',
  },
  long: {
    said: 'zu lang',
    words:
      'lang, zu lang, überlang, zu viel Länge, Länge zu viel, viel Länge, länger, Überlänge, Länge, Längenüberschuss, zu viel Höhe, viel Höhe, kürzer machen, Höhe zu viel, zu viel in der Länge, zu große Länge, überschüssige Länge',
  },
  short: {
    said: 'zu kurz',
    words:
      'kurz, zu kurz, fehlt Länge, Länge fehlt, zu wenig Länge, fehlt in der Länge, nicht lang genug, kürzer als, verlängern, verlängert, mehr Länge, reicht nicht bis, zu wenig hoch, Stück fehlt, fehlt ein Stück, Höhe fehlt, fehlt Höhe, zu wenig Höhe, nicht hoch genug, länger sein, hört auf vor, zu kurz geraten, fehlen Zentimeter, braucht Länge',
  },
  high: {
    said: 'zu hoch',
    words:
      'hoch, zu hoch, höher, zu weit oben, weit oben, viel zu weit oben, oben sitzt, sitzt zu hoch, zu hoch sitzt, höher als, tiefer setzen, tiefer sitzen, tiefer liegen, zu weit hinauf, hoch oben, tiefer sein, weiter nach unten, weiter unten sein, weiter hinunter, oberhalb meiner, weiter oben als, rundum zu hoch',
  },
  low: {
    said: 'zu tief',
    words:
      'tief, zu tief, tiefer, zu weit unten, weit unten, viel zu weit unten, sitzt zu tief, tiefer als, höher setzen, höher sitzen, höher liegen, niedriger, niedrig, tief unten, tief ausgeschnitten, zu weit ausgeschnitten, höher sein, weiter nach oben, weiter oben sein, weiter hinauf, unterhalb meiner, weiter unten als, bis zur Taille, auf halbem Weg',
  },
  past: {
    said: 'läuft darüber hinaus',
    words:
      'über hinaus, hinaus, darüber hinaus, vorbei, drüber hinaus, hinausgeht, hinausläuft, hinausreicht, hinausragt, zu spät, hört zu spät auf, früher aufhören, eher aufhören, früher enden, überschreitet, überläuft, hört nicht auf, geht weiter, läuft weiter, geht zu weit, drüberläuft, drüber, endet zu spät, reicht zu weit, über den Brustpunkt, über die Brustspitze, über die Brustwarze, bis auf die Brustwarze, bis auf den Brustpunkt, drüberreicht, drübergeht, hinausschießt, schießt über',
  },
  misses: {
    said: 'trifft nicht',
    words:
      'trifft nicht, verfehlt, daneben, vorbei, zielt, zielen, zeigt, zeigen, daneben zielt, schielt, schielen, falsche Stelle, falsche Höhe, falscher Stelle, falscher Höhe, falsch platziert, am falschen Platz, falsche Richtung, in die falsche Richtung, nicht an der richtigen Stelle, landet, landen, verfehlen, vorbeizielt, vorbeiläuft, vorbeigeht, trifft, treffen, statt auf, deutet, weist, verschoben, versetzt, danebenliegt, falsch positioniert, falsch gesetzt, sitzt falsch, zielt nicht, zeigt nicht, nicht richtig platziert, glaubt, woanders',
  },
  catches: {
    said: 'bleibt hängen',
    words:
      'hängen bleibt, hängenbleibt, bleibt hängen, hängen geblieben, stecken bleibt, steckenbleibt, bleibt stecken, verhakt, hakt, verfängt, klemmt fest, nicht hinunterrutscht, rutscht nicht hinunter, kaum über, nicht über, geht nicht über, krieg nicht über, krieg kaum über, aufsitzt, aufsteht, festhängt, hockt auf, bleibt an der, rutscht nicht drüber, nicht drüber, hinüber, bleibt auf',
  },
  ease: {
    said: 'einzuhalten',
    words:
      'einhalten, eingehalten, Einhalteweite, Einhaltweite, einsetzen, einzusetzen, einnähen, eingenäht, einarbeiten, Mehrweite im Ärmel, Einsetzen, hineinkriegen, reinkriegen, reinkriege, hineinbringen, reinbringen, unterbringen, einzuhalten, einheften, eingeheftet, ins Armloch nähen, verteilen, größer als das Armloch, länger als das Armloch, Weite einhalten, einreihen, eingereiht, eingesetzt, angenäht, zu viel Einhalteweite, zu viel Mehrweite, Einreihfaden, einhaltet, reinzwängen, hineinpassen',
  },
  angleFlat: {
    said: 'waagerecht in der Luft',
    words:
      'waagrecht raus, waagerecht hinaus, waagrecht in der Luft, waagrecht absteht, waagerecht absteht, horizontal absteht, seitlich raus, seitlich hinaus, waagrecht wegsteht, waagerecht heraus',
  },
  cannot: {
    said: 'geht nicht',
    words:
      'kann nicht, nicht heben, kaum heben, nicht hochheben, nicht hochbekomme, nicht hochkriege, geht nicht, unmöglich, nicht bewegen, kaum bewegen, komm nicht, komme nicht, kann kaum, nicht möglich, behindert, eingeschränkt, Bewegungsfreiheit, hindert, blockiert, gefesselt, krieg nicht hoch, krieg kaum hoch, nicht hoch, kaum hoch, nicht nach vorn, nicht beugen, kaum beugen, nicht abwinkeln, niemanden, nicht strecken, lässt mich nicht, lässt mich kaum, kann keinen, kann niemanden, nicht umarmen, schaffe es nicht, lässt sich nicht, lässt nicht, krieg nicht, nicht mehr, krieg den Arm nicht, festgehalten, hochbekomme, hochkriege, angebunden, Vogelscheuche, wie ein Roboter',
  },
  more: {
    said: 'es fehlt etwas',
    words:
      'mehr, zugeben, dazugeben, weiter machen, auslassen, herauslassen, rauslassen, braucht mehr, bräuchte mehr, fehlt, fehlen, ergänzen, zusätzlich, bräuchte',
  },
  smooth: { said: 'glatt', words: 'glatt, ordentlich, sauber' },
  new: {
    said: 'jetzt anders',
    words:
      'anders, plötzlich, neue Falten, jetzt, verändert, nicht mehr passt, passt nicht mehr, passt nimmer, nimmer, schlechter, sitzt anders, fällt anders, verhält sich anders, Katastrophe, ruiniert, auf einmal, hinterher, ganz anders, neu, neue, nachher, nicht so wie, sitzt nicht, passt nicht, aber nicht, sitzt nimmer, misslungen, stimmt nicht mehr',
  },
  stiff: {
    said: 'steif',
    words:
      'steif, steifer, brettig, starr, bockig, wie Pappe, Pappe, Karton, fällt nicht weich, sperrig, bretthart',
  },
  soft: { said: 'weich', words: 'weich, weiche, sanft, leicht fallend' },
}
