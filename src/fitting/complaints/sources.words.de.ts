/** Where complaints and their corrections come from, in German. */
import type { EVIDENCE_WORDS as Evidences, SOURCE_WORDS as Sources } from './sources.words.ts'

export const SOURCE_WORDS: typeof Sources = {
  R1: (cited) =>
    `${cited}; gesehen: Fadenlauf, Hals und Schulter, Brust und Rücken, Armloch und Ärmel`,
  R2: (cited) => `${cited}; gesehen: Inhalt und Einleitung`,
  R3: (cited) => `${cited}; gesehen: die ersten Seiten`,
  R8: (cited) => `${cited}; gesehen: das Inhaltsverzeichnis`,
  R12: 'Lehrtext der Central Washington University zur Kostümkunde, Kapitel über Mehrweite und Schnittänderungen',
  R13: (cited) => `${cited}, Kapitel 3 bis 5`,
  R14: (cited) => `${cited}, Bände 2, 4 und 9; einzelne Seiten gesehen`,
  R16: (cited) => `${cited}, Lektion über die Kimonojacke`,
  R17: (cited) => `${cited}, Fachbegriffe`,
  R19: (cited) => `${cited}, dazu der Text über eng anliegende Schnitte`,
  R20: (cited) => `${cited}; gesehen: zwei Seiten und das Kapitel über ungleiche Seiten`,
  R21: 'ein Lehrtext zum Zuschneiden von Kleidern, Auszug über die Balance',
  R22: 'Artikel einer Nähzeitschrift über Armlöcher, Schnitte und Ärmel',
  R23: 'ein Nähhandbuch, allgemeine Hinweise zum Anpassen von Schnitten',
  R24: 'eine Lehrseite zum Schnittzeichnen: Beträge für anliegende Stellen, Grundschnitte, Höhe der Armkugel',
  R43: 'ein öffentlicher Nähblog über Falten über der hinteren Taille und was ihnen gleicht',
  PUBLIC: 'öffentliche Nähanleitungen und Blogs',
  CP: 'Handwerksbrauch, ohne Quelle',
  MEM: 'aus dem Gedächtnis',
}

export const EVIDENCE_WORDS: typeof Evidences = {
  operative: 'die Anweisung selbst gelesen',
  partly: 'zum Teil gesehen',
  heading: 'nur die Überschrift gesehen',
  practice: 'Handwerksbrauch',
  memory: 'aus dem Gedächtnis',
}
