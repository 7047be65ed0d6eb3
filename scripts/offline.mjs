/**
 * The service worker and the install card of the built app: page, guide, scripts, styles, faces
 * and WebAssembly are kept for use without a net. The pose model is not among them: 12 MB are fetched
 * once, when she first reads a photo, and kept by `capture/detector-weights.ts`. Photos are never
 * requests (they lie in IndexedDB), so no worker ever sees one.
 */
import { VitePWA } from 'vite-plugin-pwa'

/** The PDF code and its face are the largest files, under 1 MB each. */
const LARGEST_KEPT_BYTES = 3_000_000

/** The install card of each language's page. */
const CARD = {
  en: {
    page: './',
    file: 'manifest.webmanifest',
    description:
      'Draft from your own numbers, sew a muslin, say what you see, and keep every round.',
  },
  de: {
    page: './de.html',
    file: 'manifest.de.webmanifest',
    description:
      'Zeichne aus deinen eigenen Maßen, näh ein Probeteil, sag, was du siehst, und behalte jede Runde.',
  },
}

export function keptForOffline(/** @type {keyof typeof CARD} */ language) {
  const { page, file, description } = CARD[language]
  return VitePWA({
    manifestFilename: file,
    registerType: 'prompt',
    injectRegister: false,
    includeManifestIcons: false,
    manifest: {
      id: './',
      name: 'Tapetrue',
      short_name: 'Tapetrue',
      description,
      start_url: page,
      scope: './',
      display: 'standalone',
      background_color: '#e3decf',
      theme_color: '#e3decf',
      lang: language,
      icons: [
        { src: 'favicon.svg', sizes: 'any', type: 'image/svg+xml' },
        { src: 'icon-192.png', sizes: '192x192', type: 'image/png' },
        { src: 'icon-512.png', sizes: '512x512', type: 'image/png' },
        { src: 'icon-512.png', sizes: '512x512', type: 'image/png', purpose: 'maskable' },
      ],
    },
    workbox: {
      globPatterns: ['**/*.{html,js,css,woff2,ttf,wasm,svg,png,txt}', 'guide/**/*.webp'],
      globIgnores: ['models/**'],
      maximumFileSizeToCacheInBytes: LARGEST_KEPT_BYTES,
      navigateFallback: 'index.html',
      cleanupOutdatedCaches: true,
    },
  })
}
