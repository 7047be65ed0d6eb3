import { svelte } from '@sveltejs/vite-plugin-svelte'
import { playwright } from '@vitest/browser-playwright'
import { defineConfig } from 'vitest/config'
import { arucoModule } from './scripts/aruco-module.mjs'
import { contentSecurityPolicy } from './scripts/csp.mjs'
import { firstScripts } from './scripts/first-script.mjs'
import { openingOf } from './scripts/opening.mjs'
import { pdfScript } from './scripts/pdf-script.mjs'
import { keptForOffline } from './scripts/offline.mjs'
import { copyModelRuntime } from './scripts/model-runtime.mjs'
import { languageOf, otherLanguages, wordsOf } from './scripts/words.mjs'
import { CHROMIUM_FLAGS, findChromium } from './scripts/chromium.mjs'
import { CAMERA_ROAD } from './scripts/estimate/mode.mjs'

const here = (path: string): string => new URL(path, import.meta.url).pathname

/**
 * pose-detection imports two packages we never run: @mediapipe/pose (whose build has no export
 * a bundler can see) and the WebGPU backend. Both are answered by small modules of our own.
 */
const alias = {
  '@mediapipe/pose': here('./src/capture/absent/mediapipe-pose.ts'),
  '@tensorflow/tfjs-backend-webgpu': here('./src/capture/absent/webgpu-backend.ts'),
}

export default defineConfig(({ mode }) => {
  const language = languageOf(mode)
  const english = language === 'en'
  // The page of the camera road alone, which the commands build for themselves beside the app.
  const cameraRoad = mode === CAMERA_ROAD
  return {
    base: './',
    plugins: [
      wordsOf(language),
      svelte(),
      arucoModule(),
      copyModelRuntime(),
      contentSecurityPolicy(),
      ...(english && !cameraRoad ? [otherLanguages()] : []),
      ...(cameraRoad ? [] : [openingOf(language), keptForOffline(language)]),
    ],
    optimizeDeps: { exclude: ['js-aruco2'] },
    resolve: { alias },
    worker: {
      format: 'es',
      plugins: () => [wordsOf(language), arucoModule()],
      rolldownOptions: { output: { codeSplitting: { groups: [pdfScript] } } },
    },
    build: {
      target: 'es2022',
      emptyOutDir: english,
      copyPublicDir: english,
      chunkSizeWarningLimit: 2000,
      // The faces keep their names, so that the stylesheet of the guide can ask for them too.
      rolldownOptions: {
        input: here(english ? './index.html' : `./${language}.html`),
        output: {
          codeSplitting: {
            groups: [
              ...firstScripts(here('./src/main.ts'), here('./src/ui/opening.ts')),
              pdfScript,
            ],
          },
          assetFileNames: ({ names }) =>
            names[0]?.endsWith('.woff2')
              ? 'faces/[name][extname]'
              : 'assets/[name]-[hash][extname]',
        },
      },
    },
    test: {
      // A loaded machine is no fault: nothing here measures time.
      testTimeout: 300_000,
      hookTimeout: 300_000,
      expect: { poll: { timeout: 60_000 } },
      // The order of the files is not that of what the last run took, and two runs do not write one file.
      cache: false,
      projects: [
        {
          extends: true,
          test: {
            name: 'unit',
            include: ['tests/**/*.test.ts'],
            exclude: ['tests/**/*.svelte.test.ts', 'tests/**/*.de.test.ts', 'tests/journeys/**'],
            environment: 'node',
            isolate: false,
          },
        },
        {
          extends: true,
          plugins: [wordsOf('de')],
          test: {
            name: 'german',
            include: ['tests/**/*.de.test.ts'],
            environment: 'node',
            isolate: false,
          },
        },
        {
          extends: true,
          test: {
            name: 'components',
            include: ['tests/**/*.svelte.test.ts'],
            browser: {
              enabled: true,
              headless: true,
              screenshotFailures: false,
              provider: playwright({
                launchOptions: {
                  executablePath: findChromium() ?? 'chromium',
                  args: CHROMIUM_FLAGS,
                },
              }),
              instances: [{ browser: 'chromium' }],
            },
          },
        },
      ],
    },
  }
})
