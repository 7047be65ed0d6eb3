/**
 * What a page says before its scripts have come: the tape, and the heading and sentence of the rail,
 * put into it from the words files of its language. `ui/opening.ts` decides whether she sees them; it
 * is a small script of its own that the first paint waits for, as it waits for the styles. The faces
 * of those words are asked for at once instead of when the styles have come.
 */
import { runnerImport } from 'vite'

const HERE = new URL('..', import.meta.url).pathname
const PLACE = '<div id="app"></div>'
const FACES = [
  'faces/source-sans-3-latin-wght-normal.woff2',
  'faces/brygada-1918-latin-wght-normal.woff2',
]
/** Name of the script; `firstScript` keeps it apart. */
export const OPENING = 'opening'

/**
 * @param {string} language
 * @returns {import('vite').Plugin[]}
 */
export function openingOf(language) {
  return [
    {
      name: 'opening',
      transformIndexHtml: {
        order: 'pre',
        handler: async (html) => {
          const [before = '', after] = html.split(PLACE)
          // The page of the component tests is none of ours.
          if (after === undefined) return html
          return `${before}<div id="app">${await opening(language)}</div>${after}`
        },
      },
    },
    {
      name: 'opening-first',
      apply: 'build',
      transformIndexHtml: {
        order: 'post',
        handler: (html, { bundle = {} }) => {
          const script = Object.values(bundle).find(
            (file) => file.type === 'chunk' && file.name === OPENING,
          )
          if (!script) throw new Error('opening: its script is not among what was built')
          for (const face of FACES)
            if (!bundle[face]) throw new Error(`opening: ${face} is not among what was built`)
          // Scripts run in the order in which they stand, so it stands before that of the screens.
          return html.replace(/(?=<script type="module")/, () => tags(script.fileName))
        },
      },
    },
  ]
}

const tags = (/** @type {string} */ script) =>
  [
    `<script type="module" blocking="render" crossorigin src="./${script}"></script>`,
    ...FACES.map(
      (face) => `<link rel="preload" as="font" type="font/woff2" crossorigin href="./${face}" />`,
    ),
    '',
  ].join('\n    ')

/** Hidden until the script knows where she goes, and no word of it read out: the screens follow. */
async function opening(/** @type {string} */ language) {
  const [{ RAIL_WORDS }, { PLACE_WORDS }, { PLACE_IDS }] = await Promise.all([
    words('src/ui/rail/rail.words', language),
    words('src/ui/tape/tape.words', language),
    imported('src/ui/tape/places.ts'),
  ])
  const places = PLACE_IDS.map((/** @type {string} */ id) => `<li>${text(PLACE_WORDS[id])}</li>`)
  return `<div class="opening" aria-hidden="true" hidden>
  <div class="page" hidden>
    <header><h1>${text(RAIL_WORDS.title)}</h1><div class="tools"></div><p class="q">${text(RAIL_WORDS.about)}</p></header>
  </div>
  <ol>${places.join('')}</ol>
</div>`
}
const words = (/** @type {string} */ file, /** @type {string} */ language) =>
  imported(language === 'en' ? `${file}.ts` : `${file}.${language}.ts`)
const imported = async (/** @type {string} */ file) =>
  /** @type {any} */ ((await runnerImport(HERE + file, { configFile: false, root: HERE })).module)
const text = (/** @type {string} */ sentence) =>
  sentence.replaceAll('&', '&amp;').replaceAll('<', '&lt;')
