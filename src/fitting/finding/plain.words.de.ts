/**
 * Words that are left as they are, so that no everyday word is taken for a misspelt trade word.
 * Common German, from memory; the list need not be complete, only cover what lies near the
 * lexicon by letters.
 */
import { evened } from './evened.words.de.ts'
import type {
  NOT_IN_PATHS as EnglishNotInPaths,
  PLAIN_WORDS as EnglishPlain,
  SMALL_WORDS as EnglishSmall,
} from './plain.words.ts'

const setOf = (words: string): ReadonlySet<string> => new Set(words.split(' ').map(evened))

export const SMALL_WORDS: typeof EnglishSmall = setOf(
  'der die das den dem des ein eine einen einem einer eines mein meine meinen meinem meiner meines ' +
    'dein deine sein seine seinen ihr ihre ihren ihrem unser ich du er sie es wir mich mir dich dir ' +
    'ihm ihn uns euch sich man wer wen wem ist bin bist sind war waren wäre wird werden wurde würde ' +
    'worden habe hast hat haben hatte hätte kann könnte konnte muss müssen musste darf soll will ' +
    'so sehr ganz ziemlich wirklich richtig echt voll total etwas bisschen wenig und oder aber als ' +
    'wie wenn weil dass ob denn da dann dort hier dabei daran darauf davon dazu dafür damit darum ' +
    'deshalb also auch noch schon nur eben halt mal gar doch ja nun einfach irgendwie irgendwo ' +
    'irgend eigentlich leider bitte hilfe danke immer wieder dauernd ständig meistens manchmal oft ' +
    'beim bei am im an in ins aufs ans vom von zum zur zu nach mit für gegen um durch auf aus bis ' +
    'hin her hinein heraus heran sobald solange während obwohl damit wo was welche welcher welches ' +
    'dies diese dieser dieses diesen jede jeder jedes jeden alle allem selbst selber gerade jetzt ' +
    'heute gleich bald fast beinahe ungefähr etwa circa mehr viel viele vielen macht mache machen ' +
    'gemacht tut tun getan scheint sieht aussieht fühlt finde glaube denke weiß weiss sage sagt ' +
    'meine lässt lassen lasst bleibt bleiben kommt kommen bildet bilden entsteht entstehen gibt ' +
    'ergibt wirft krieg habe dran drin drauf drum drüber drunter dahin daher damals nämlich bloß ' +
    'eher so solche solcher lauter lauten recht arg gscheit recht glaub hätt wär wirds ists hats ' +
    'liegen liegt sitzt sitzen stehe drei zwei gewisse ihnen zudem außerdem sozusagen ' +
    'quasi irgendein irgendeine irgendwas eins wollte möchte mag gern gerne',
)
/** Never part of a path: they may stand anywhere between the words of a phrase. */
export const NOT_IN_PATHS: typeof EnglishNotInPaths = setOf(
  'der die das den dem des mein meine meinen meinem meiner meines ist sind und es sich ich so da ' +
    'vom am im in',
)
export const PLAIN_WORDS: typeof EnglishPlain = setOf(
  'abend abends acht achten ahnung allein alt alte anfang anfangen angst anzug apfel arbeit arbeiten ' +
    'arzt auge augen auto bad bahn bald ball bank bauen baum beginn bein beine beispiel bekannte ' +
    'beruf besser beste besuch bett bier bild bilder bitte blatt blau bleiben blick blume blumen boden ' +
    'böse brauche braucht brief brot bruder buch büro bus chef dame damen dank dauer decke denken ' +
    'deutsch dick dicke ding dinge doktor dorf drei dunkel dünn dünne ecke ehe ei eier eigen eile ' +
    'einmal eltern ende endlich ernst erst erste essen euro fahren fahrrad fall familie fangen farbe ' +
    'fehler feier fein feld fenster ferien fertig fest feuer film finden fisch flasche fleisch ' +
    'fliegen fluss folgen frage fragen frau frauen frei fremd freund freundin frisch froh früh ' +
    'fuß füße garten gast geben gefühl gehören geld gemüse genau geschäft geschenk geschichte gesicht ' +
    'gestern gesund gewinn glas glauben glück gold gott grau grün gruppe gut gute guten haare haben ' +
    'halb halbe hälfte hand hände handy hart haus hause heft heiß heißt helfen hell hemd herbst herr ' +
    'herz heute hilfe himmel hof holen holz hören hose hosen hotel hund hunger hut idee immer jacke ' +
    'jahr jahre junge jung kaffee kalt kälte karte kasse katze kaufen kennen kette kind kinder kino ' +
    'kirche kissen klar klasse kochen koffer kollege kollegin kommen kopf körper kosten krank kreis ' +
    'küche kuchen kugelschreiber kunde kundin kunst kurs lachen laden lampe land laufen laut leben ' +
    'leder legen lehrer leicht leid leider leise lernen lesen letzte leute licht lieb liebe lied linie ' +
    'luft lust machen mädchen mal mama mann männer mantel maschine meer mehr meinung meist mensch ' +
    'merke messen meter milch minute minuten mode modell möglich moment monat morgen müde mund musik ' +
    'mutter nacht nadel nadeln nähen nähe näherin genäht nähmaschine name nase natürlich nehmen neu ' +
    'neue neuer nochmal norden normal nummer oma ofen ohr ohren öl onkel opa ordnung ort paar papa ' +
    'papier park passen passt patient pause pfeffer pferd pflanze platz plötzlich polizei post preis ' +
    'problem probleme punkt rad rat raum rechnung regen reich reihe reis reise rennen rest richtig ' +
    'ring rot rote ruhe sache sachen saft sagen salat salz sand schere schiff schlafen schlecht ' +
    'schlimm schloss schlüssel schnee schnell schnitt schnittmuster schokolade schön schöne schrank ' +
    'schreiben schritt schuh schuhe schule schwarz schwer schwester see sekunde selten sicher silber ' +
    'singen sohn sommer sonne spaß spät spiel spielen sport sprache stadt stark stein stelle stern ' +
    'stimme stimmt stock straße stück stuhl stunde stunden suche suchen süden tag tage tante tasse ' +
    'telefon teller termin teuer text thema tisch tochter tod toll topf tragen trage trägt traum traurig ' +
    'treffen trinken tun tür uhr urlaub vater verein verkauf verlieren versuch versuche viel vier vogel ' +
    'vorhang vorsicht wagen wahl wahr wald wand warm warten warum wäsche wasser weg wein weiß welt ' +
    'weniger werk wert wetter wichtig wiese wind winter wissen woche wochen wohnung wolke wolle wort ' +
    'wunder zahl zahlen zahn zeigen zeit zeitung zimmer zucker zug zufrieden zwei probiert ' +
    'anprobe anprobiert passform spiegel nichte neffe puppe größe größen nummer beruf kleider kleider ' +
    'muster faden fäden stich stiche bügeln gebügelt bügel kundin schneiderin ärger geärgert nerv nervt ' +
    'stört störend komisch komische seltsam hässlich blöd blöde doof dumm furchtbar schrecklich ' +
    'unbequem bequem angenehm unangenehm aussehen schaue schauen anschauen foto fotos bewegen bewegung ' +
    'gehe laufe trage getragen anziehen angezogen ausziehen anhabe anhaben drinnen draußen nähkurs ' +
    'jedes jedesmal tagsüber mittags morgens selber jemand niemand andere anderen anderer anderes ' +
    'ander zeigt zeigen sodass sogar spür spüre merkt stelle stellen bereich gegend länger mach ' +
    'frag fragt ehrlich gesagt sagen schuld grund gründe warum weshalb wieso wohl woran wohin woher ' +
    'bekannten nachbarin freundinnen schwägerin tragen kauf gekauft letzten letztes letzter vorher ' +
    'nachher danach zuerst später früher schließlich endlich erstens zweitens dritten vierte meinem ' +
    'lieber liebe lieben bitte hallo servus grüezi guten danke schnittteil vorlage anleitung',
)
