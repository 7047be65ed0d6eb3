/**
 * Version 10: photos are found by their garment, so that opening her work reads none of them and a
 * round only its own. Rows stay as they are; a photo of the body belongs to no garment, and is in no
 * index.
 */
export const V10 = { version: 10, stores: { photos: 'sha256, garmentId' } } as const
