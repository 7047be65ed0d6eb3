import type { AROUND_WORDS as English } from './around.words.ts'

const SAME_PLACE = 'dieselbe Stelle, einmal herum'

export const AROUND_WORDS: typeof English = {
  bustGirth: {
    from: 'der Brustpunkt der volleren Seite',
    to: 'derselbe Brustpunkt, einmal herum',
    words: 'Waagerecht um den Körper, über beide Brustpunkte und die Schulterblätter.',
    alone:
      'Trag den BH, den du unter dem Stück tragen wirst. Führ das Maßband hinter dir herum, leg es waagerecht über die Brustpunkte und prüf es in zwei Spiegeln, von vorn und von der Seite. Atme aus, dann lies ab.',
    moves: 'die Weite und den Abnäher',
  },
  highBustGirth: {
    from: 'hoch unter dem linken Arm',
    to: SAME_PLACE,
    words: 'Hinten waagerecht auf Achselhöhe, unter beiden Armen durch, vorn oberhalb der Brust.',
    alone:
      'Leg zuerst eine Schnur hoch unter den Armen herum und richte sie hinten im Spiegel waagerecht aus. Leg das Maßband auf die Schnur, lass die Arme hängen, atme aus, dann lies ab.',
    moves: 'die Schulterbreite und die Größe des Abnähers',
  },
  underbustGirth: {
    from: 'unter der linken Brust',
    to: SAME_PLACE,
    words: 'Waagerecht um die Rippen, direkt unter der Brust.',
    alone:
      'Schieb das Maßband hoch, bis es an die Brust stößt. Richte es im Spiegel waagerecht aus, atme aus, lies ab.',
    moves: 'die Tiefe des Abnähers unter der Brust',
  },
  waistGirth: {
    from: 'die Schnur in der Taille, vordere Mitte',
    to: SAME_PLACE,
    words: 'Auf der Schnur, die die natürliche Taille zeigt, einmal ganz herum.',
    alone:
      'Binde ein schmales Gummiband um die Taille und beuge dich zu beiden Seiten, bis es seinen Platz findet. Leg das Maßband darauf, atme aus, lies ab. Lass das Gummiband für jede Länge an, die in der Taille endet.',
    moves: 'die Taillenabnäher',
  },
  highHipGirth: {
    from: 'der Hüftknochen an der Seite',
    to: SAME_PLACE,
    words: 'Waagerecht um den Körper, über die Oberkante der Hüftknochen.',
    alone:
      'Taste nach der Oberkante des Hüftknochens, zeichne sie an und richte das Maßband dort im Spiegel waagerecht aus.',
    moves: 'die Weite unter der Taille',
  },
  hipGirth: {
    from: 'die Seite, an der stärksten Stelle des Gesäßes',
    to: SAME_PLACE,
    words: 'Waagerecht um den Körper, von der Seite gesehen über die stärkste Stelle des Gesäßes.',
    alone:
      'Stell dich seitlich zum Spiegel, Füße zusammen. Such die stärkste Stelle des Gesäßes, halte das Maßband dort waagerecht, lies ab.',
    moves: 'die Saumweite',
  },
  neckBaseGirth: {
    from: 'der Nackenpunkt',
    to: 'derselbe Punkt, einmal herum',
    words: 'Um den Halsansatz, über den Nackenpunkt und die Halsgrube.',
    alone:
      'Leg eine feine Kette oder Schnur dorthin, wo eine Halskette liegt, über den Nackenpunkt. Zeichne an, wo ihre Enden sich treffen, nimm sie ab und leg sie gerade an ein Lineal. Binde sie nie eng zu.',
    moves: 'den Halsausschnitt',
  },
  headGirth: {
    from: 'die Stirn',
    to: 'die Stirn, einmal herum',
    words: 'Um den Kopf über den Ohren, wo er am größten ist, das Haar wie immer.',
    alone: 'Schieb das Maßband am Hinterkopf auf und ab und behalte die größte Ablesung.',
    moves: 'die Öffnung am Hals',
  },
  upperArmGirth: {
    from: 'die Außenseite des Oberarms',
    to: SAME_PLACE,
    words: 'Um den Oberarm direkt unter der Achsel, rechtwinklig zum Arm, der Arm hängt.',
    alone:
      'Halte das Maßband mit einer Klammer zur Schlinge geschlossen, schieb sie mit der anderen Hand hoch, lass den Arm hängen, zieh die Schlinge, bis sie anliegt, lies im Spiegel ab.',
    moves: 'die Öffnung des Ärmels',
  },
  armholeGirth: {
    from: 'der Schulterpunkt',
    to: 'derselbe Punkt, einmal herum',
    words: 'Über den Schulterknochen, vorn hinunter, unter dem Arm durch und hinten hinauf.',
    alone:
      'Kleb das Nullende mit Pflaster auf den Schulterknochen, führ das Maßband unter dem Arm durch und wieder hinauf. Lass den Arm hängen, bevor du im Spiegel abliest.',
    moves: 'die Tiefe der Ärmelöffnung',
  },
  slipThroughGirth: {
    from: 'eine geschlossene Schlinge aus dem Maßband',
    to: 'dieselbe Schlinge, einmal herum',
    words: 'Die kleinste geschlossene Schlinge, die über Kopf, erhobene Arme und Brust geht.',
    alone:
      'Schließ das Maßband mit einer Klammer, die nicht rutscht, zur Schlinge. Zieh sie wie eine Bluse über Kopf, erhobene Arme und Brust. Mach sie kleiner, bis sie nicht mehr durchgeht, dann einen Schritt zurück. Hör auf, wenn du sie nicht leicht wieder abbekommst.',
    moves: 'den Verschluss, falls einer nötig ist',
  },
}
