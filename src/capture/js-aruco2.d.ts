/** js-aruco2 2.0.0 ships no types; these are the parts card-marker.ts and marker-sheet.ts use. */
declare module 'js-aruco2' {
  interface FoundMarker {
    readonly id: number
    /** Clockwise from the marker's own top left, whole pixels. */
    readonly corners: readonly { readonly x: number; readonly y: number }[]
    readonly hammingDistance: number
  }
  interface Detector {
    detect(image: {
      readonly width: number
      readonly height: number
      readonly data: Uint8ClampedArray
    }): FoundMarker[]
    /** What it writes while it looks: lists, empty at first. */
    readonly grey: { data: number[] | Uint8Array }
    readonly thres: { data: number[] | Uint8Array }
    binary: number[] | Int32Array
  }
  interface Dictionary {
    /** One string of 0 and 1 per marker id, row by row; 1 is white. */
    readonly codeList: readonly string[]
  }
  /** CommonJS: the module itself is the default import. */
  const aruco: {
    readonly AR: {
      readonly Detector: new (config: {
        dictionaryName: string
        /** A code is taken when its distance is SMALLER than this. */
        maxHammingDistance: number
      }) => Detector
      readonly Dictionary: new (name: string) => Dictionary
    }
  }
  export default aruco
}
