/** Opens the page: preferences from this device, then the screens. */
import { mount } from 'svelte'
import App from './ui/App.svelte'
import { pageStore, Preferences } from './ui/preferences.svelte.ts'
import { TapeStanding } from './ui/tape/standing.svelte.ts'
import './ui/styles/base.css'

const target = document.getElementById('app')
if (target === null) throw new Error('main: the page has no element with the id "app"')

const dark = window.matchMedia('(prefers-color-scheme: dark)').matches
mount(App, {
  target,
  props: { preferences: new Preferences(pageStore(), dark), standing: new TapeStanding() },
})
