/** Opens the page: preferences and work kept on this device, then the screens. All meets here. */
import { mount } from 'svelte'
import { registerSW } from 'virtual:pwa-register'
import { openStore } from './storage/store.ts'
import { Desk } from './ui/example/desk.svelte.ts'
import NoStore from './ui/NoStore.svelte'
import { Offline } from './ui/offline.svelte.ts'
import { asksForDark, pageMemory, pageStore } from './ui/kept-preferences.ts'
import { leaving } from './ui/opening.ts'
import { hungParts } from './ui/rail/hung-parts.svelte.ts'
import { Preferences } from './ui/preferences.svelte.ts'
import Root from './ui/Root.svelte'
import { Session } from './ui/session.svelte.ts'
import './ui/styles/base.css'

const page = document.getElementById('app')
if (page === null) throw new Error('main: the page has no element with the id "app"')
if (!leaving) void begin(page)

/** Not awaited at the top: the parts fetched on the way wait for this script to have run. */
async function begin(target: HTMLElement): Promise<void> {
  await aTask()
  const preferences = new Preferences(pageStore(), asksForDark())
  const opened = await openStore()
  if (!opened.ok) {
    target.replaceChildren()
    mount(NoStore, { target, props: { sentence: opened.sentence } })
    return
  }
  const world = { now: () => new Date(), newId: () => crypto.randomUUID() }
  const session = new Session(opened.store, world)
  await session.open()
  const desk = new Desk(session, world, { memory: pageMemory(), locks: navigator.locks })
  await desk.begin()
  if (desk.shown.garments.length > 0) await hungParts.fetch()
  const opening = [...target.children]
  const oncome = () => opening.forEach((part) => part.remove())
  const offline = new Offline(registerSW)
  await aTask()
  mount(Root, { target, props: { desk, preferences, offline, oncome } })
}

/** What follows runs in a task of its own, so that none of those that open the page is long. */
function aTask(): Promise<void> {
  return new Promise((go) => setTimeout(go))
}
