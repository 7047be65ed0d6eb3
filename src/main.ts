/** Opens the page: preferences and work kept on this device, then the screens. All meets here. */
import { mount } from 'svelte'
import { registerSW } from 'virtual:pwa-register'
import { openStore } from './storage/store.ts'
import App from './ui/App.svelte'
import NoStore from './ui/NoStore.svelte'
import { Offline } from './ui/offline.svelte.ts'
import { pageStore, Preferences } from './ui/preferences.svelte.ts'
import { Session } from './ui/session.svelte.ts'
import { TapeStanding } from './ui/tape/standing.svelte.ts'
import './ui/styles/base.css'

const target = document.getElementById('app')
if (target === null) throw new Error('main: the page has no element with the id "app"')

const dark = window.matchMedia('(prefers-color-scheme: dark)').matches
const preferences = new Preferences(pageStore(), dark)
const opened = await openStore()
if (opened.ok) {
  const session = new Session(opened.store, {
    now: () => new Date(),
    newId: () => crypto.randomUUID(),
  })
  await session.open()
  const standing = new TapeStanding()
  mount(App, {
    target,
    props: { preferences, session, standing, offline: new Offline(registerSW) },
  })
} else {
  mount(NoStore, { target, props: { sentence: opened.sentence } })
}
