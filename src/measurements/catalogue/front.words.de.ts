import type { FRONT_WORDS as English } from './front.words.ts'

export const FRONT_WORDS: typeof English = {
  sideNeckOverApexToWaist: {
    from: 'der Halspunkt',
    to: 'die Schnur in der Taille, vorn',
    words: 'Vom Halspunkt über den Brustpunkt, dann gerade hinunter bis zur Schnur.',
    alone:
      'Halte das Nullende dorthin, wo die Halsschnur die Schulterlinie kreuzt. Führ das Maßband über den Brustpunkt und lass es gerade zur Schnur fallen. Lies es im Spiegel ab, die Arme hängen.',
    moves: 'die Länge des Vorderteils',
  },
  sideNeckToApex: {
    from: 'der Halspunkt',
    to: 'der Brustpunkt',
    words: 'Vom Halspunkt gerade bis zum Brustpunkt, auf der Haut.',
    alone:
      'Dasselbe Maßband, derselbe Anfang wie bei der Vorderlänge über die Brust; lies am Brustpunkt ab.',
    moves: 'die Abnäherspitze, hinauf und hinunter',
  },
  frontNeckToWaist: {
    from: 'die Halsgrube',
    to: 'die Schnur in der Taille, vordere Mitte',
    words: 'In der vorderen Mitte von der Halsgrube bis zur Schnur.',
    alone:
      'Halte das Nullende in die Halsgrube, lass das Maßband hängen und drück es an der Schnur auf die Haut.',
    moves: 'die vordere Mitte',
  },
  apexSpacing: {
    from: 'der linke Brustpunkt',
    to: 'der rechte Brustpunkt',
    words: 'Gerade von Brustpunkt zu Brustpunkt, ohne dazwischen einzusinken.',
    alone:
      'Halte ein Lineal mit beiden Händen waagerecht an beide Brustpunkte und lies es im Spiegel ab.',
    moves: 'die Abnäherspitze, nach innen und außen',
  },
}
