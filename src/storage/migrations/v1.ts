/** Version 1: the first tables. A string names the key; what follows it is searched by. */
export const V1 = {
  version: 1,
  stores: {
    book: 'id',
    garments: 'id',
    rounds: 'id, garmentId',
    photos: 'sha256',
    pixels: 'sha256',
    settings: 'key',
    aside: '++id',
  },
} as const
