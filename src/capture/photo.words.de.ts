import type { PHOTO_WORDS as English } from './photo.words.ts'

export const PHOTO_WORDS: typeof English = {
  empty: 'Diese Datei ist leer. Kopier das Foto noch einmal von der Kamera.',
  tooSmall: (width, height, least) =>
    `Dieses Foto hat nur ${width} mal ${height} Pixel. Wähl das Originalfoto, mindestens ${least} Pixel hoch.`,
  tooLarge: (megapixels, most) =>
    `Dieses Foto hat ${megapixels} Megapixel; höchstens ${most} lassen sich öffnen. Nimm es kleiner auf, oder speichere eine kleinere Kopie als JPEG.`,
  noRoom:
    'Dieser Browser hatte keinen Platz, das Foto zu öffnen. Schließ andere Tabs und versuch es noch einmal.',
  noRoomReload:
    'Dieser Browser hatte keinen Platz, das Foto zu öffnen. Schließ andere Tabs, lade die Seite neu und versuch es noch einmal.',
  heic: 'Das ist ein HEIC-Foto, das dieser Browser nicht öffnen kann. Öffne es auf dem Handy und exportiere oder teile es als JPEG; oder stell die Kamera auf JPEG (manche nennen es „maximale Kompatibilität“) und nimm es noch einmal auf. Wähl dann diese Datei.',
  damaged:
    'Dieses Foto ist beschädigt oder nur halb kopiert. Kopier es noch einmal von der Kamera, oder speichere es neu als JPEG.',
  notAPhoto: 'Diese Datei ist kein Foto, das dieser Browser kennt. Wähl eine JPEG- oder PNG-Datei.',
}
