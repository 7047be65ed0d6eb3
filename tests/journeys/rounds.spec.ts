/**
 * Three rounds with photos in a real browser with the real model: compare the first with the
 * third, go on from the second, close and open again, nothing lost. Photos of an invented figure.
 */
import type { Page } from '@playwright/test'
import { expect, test } from './journey.ts'
import { goTo, INVENTED, tapeAll } from './walk.ts'

const PHOTOS = [1, 2, 3].map(
  (round) =>
    new URL(
      `../photos/figure-${round === 1 ? 'muslin-front' : round === 2 ? 'back' : 'front'}.jpg`,
      import.meta.url,
    ).pathname,
)

async function drawnByHand(page: Page): Promise<void> {
  await goTo(page, 'Cut')
  await page.getByRole('button', { name: 'I have drawn it by hand' }).click()
  await page.getByRole('dialog').getByRole('button', { name: 'It is drawn by hand' }).click()
  await expect(page.getByText(/is on paper and stays as it is/).first()).toBeVisible()
}

test('three rounds with photos, 1 with 3, on from 2, closed and opened: nothing lost', async ({
  page,
}) => {
  await page.goto('/')
  await goTo(page, 'Measure')
  await tapeAll(page, INVENTED)
  await goTo(page, 'Rail')
  await page.getByRole('button', { name: 'Hang a blouse' }).click()

  await test.step('three rounds on paper, each with a front photo of its muslin', async () => {
    for (const [k, photo] of PHOTOS.entries()) {
      if (k > 0)
        await page
          .getByRole('button', { name: `Start round ${k + 1} from here` })
          .first()
          .click()
      await drawnByHand(page)
      await goTo(page, 'Compare')
      await page.getByLabel(`Add a front photo of muslin ${k + 1}`).setInputFiles(photo)
      await expect(page.getByRole('img', { name: `Muslin ${k + 1} from the front` })).toBeVisible()
    }
  })

  const lined = page.getByText(/^Lined up by .* apart by \d+ mm at the shoulders and \d+ mm/)
  await test.step('round 1 with round 3, brought to one scale by the model', async () => {
    await page.getByLabel('Below').selectOption('Round 1')
    await page.getByLabel('On top').selectOption('Round 3')
    await expect(page.getByRole('heading', { level: 1 })).toHaveText('Round 1 with round 3')
    await page.getByRole('button', { name: 'Bring the two photos to one scale' }).click()
    await expect(lined).toBeVisible({ timeout: 400_000 })
    const edge = page.getByRole('slider', { name: 'Straight edge between round 1 and round 3' })
    await edge.focus()
    await page.keyboard.press('ArrowRight')
    await expect(edge).toHaveAttribute('aria-valuenow', '51')
  })

  await test.step('what is judged of muslin 2, and a round that goes on from it', async () => {
    await page.getByRole('combobox', { name: 'Round', exact: true }).selectOption({ index: 1 })
    await page.getByText('wearable as it is', { exact: true }).click()
    await expect(page.getByText('Kept: wearable as it is.')).toBeVisible()
    await page.getByLabel('Notes to round 2').fill('Sleeve edge lies well.')
    await page.getByRole('button', { name: 'Start a round from round 2' }).click()
    await expect(page.getByText('Round 4 goes on from round 2.')).toBeVisible()
  })

  await test.step('another branch while that one is open: it is set aside, and taken up again', async () => {
    const record = page.getByRole('combobox', { name: 'Round', exact: true })
    await record.selectOption({ index: 2 })
    await expect(page.getByText(/^Round 4 is not on paper yet\. It is set aside/)).toBeVisible()
    await page.getByRole('button', { name: 'Start a round from round 3' }).click()
    await expect(page.getByText('Round 5 goes on from round 3.')).toBeVisible()
    await record.selectOption('4, set aside')
    await page.getByRole('button', { name: 'Start a round from round 4' }).click()
    await expect(page.getByText('Round 6 goes on from round 4.')).toBeVisible()
    // It rests on muslin 2, which is what Fit speaks of.
    await goTo(page, 'Fit')
    await expect(page.getByText(/, muslin 2 on the body/)).toBeVisible()
    await goTo(page, 'Compare')
  })

  await test.step('closed and opened again, nothing is lost and nothing is read anew', async () => {
    await page.goto('about:blank')
    await page.goto('/')
    await goTo(page, 'Compare')
    await page.getByLabel('Below').selectOption('Round 1')
    await page.getByLabel('On top').selectOption('Round 3')
    await expect(lined).toBeVisible()
    const record = page.getByRole('combobox', { name: 'Round', exact: true })
    await expect(record.locator('option')).toHaveCount(6)
    await record.selectOption({ index: 1 })
    await expect(page.getByRole('radio', { name: 'wearable as it is' })).toBeChecked()
    await expect(page.getByLabel('Notes to round 2')).toHaveValue('Sleeve edge lies well.')
    await expect(page.getByText(/: drawn by hand$/)).toBeVisible()
  })

  await test.step('a photo let go leaves its day, and the round still draws', async () => {
    await page.getByLabel('Below').selectOption('Round 2')
    await page.getByRole('button', { name: 'Let the front photo of round 2 go' }).click()
    await expect(page.getByText(/^Photo removed on \d{1,2} [A-Z][a-z]+ \d{4}\./)).toBeVisible()
    await expect(
      page.getByRole('group', { name: /^Front, half, round 2 under round 3/ }),
    ).toBeVisible()
  })
})
