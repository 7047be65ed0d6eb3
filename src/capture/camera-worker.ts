/**
 * The camera road off the main thread: one model, one photograph after the other. Pixels come in
 * by message and a reading of plain data goes back; nothing is sent anywhere else.
 */
import { expose } from 'comlink'
import { findSheet, ID1, refineTaps, type CardOutcome } from './card.ts'
import { findLines } from './find-lines.ts'
import { fetchWeights, type Fetched } from './detector-weights.ts'
import { filesUnder, openDetector, type Detector } from './detector.ts'
import type { CardQuestion, LiveFrame, MuslinRead } from './camera.ts'
import { refused } from './fault.ts'
import { readFolds } from './folds/read-folds.ts'
import { smallPicture } from './live-frame.ts'
import type { Sight } from './live-pose.ts'
import type { Picture } from './picture.ts'
import { partAround, type Person } from './person.ts'
import { placePoints } from './place-points.ts'
import type { View, ViewReading } from './reading.ts'

let detector: Promise<Detector> | undefined

function cardIn(picture: Picture, question: CardQuestion, person?: Person): CardOutcome {
  if (question.how === 'sheet') return findSheet(picture, person && partAround(person, picture))
  const [a, b, c, d, ...more] = question.taps
  if (!a || !b || !c || !d || more.length > 0) return refused('fourTaps')
  return refineTaps(picture, [a, b, c, d], question.size ?? ID1)
}

const road = {
  /** Loads the model, so that the first photograph does not wait for it. */
  async warm(base: string, onFetched?: (fetched: Fetched) => void): Promise<void> {
    detector ??= fetchWeights(filesUnder(base), onFetched).then(openDetector)
    try {
      await detector
    } catch (problem) {
      detector = undefined
      throw problem
    }
  },
  async read(base: string, view: View, picture: Picture, card: CardQuestion): Promise<ViewReading> {
    await road.warm(base)
    const model = await detector
    const person = await model?.find(picture)
    const company = person ? await model?.hasCompany(picture, person) : false
    const seen = person && company ? { ...person, company } : person
    return placePoints(view, picture, seen, cardIn(picture, card, person))
  },
  /** Reading and sight of one look: nothing is asked of the model twice. */
  async muslin(base: string, view: View, picture: Picture): Promise<MuslinRead> {
    await road.warm(base)
    const person = await (await detector)?.find(picture)
    const card = cardIn(picture, { how: 'sheet' }, person)
    const folds = view === 'side' ? {} : { folds: readFolds(view, picture, person, card) }
    const reading = placePoints(view, picture, person, card)
    return { reading, sight: { lines: findLines(picture, person, card), ...folds } }
  },
  /** A frame of the live picture, made small. The mask stays here: the hints need the joints alone. */
  async look(base: string, frame: LiveFrame): Promise<Sight | undefined> {
    const picture = smallPicture(frame)
    frame.close()
    if (!picture) return undefined
    await road.warm(base)
    const person = await (await detector)?.find(picture)
    return person && { joints: person.joints, width: picture.width, height: picture.height }
  },
}
export type CameraRoad = typeof road

expose(road)
