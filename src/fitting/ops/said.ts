/** An operation in a few plain words and its amount, for lists, steps and work on paper. */
import { mm, type Mm } from '../../units/length.ts'
import type { Operation } from './operation.ts'
import { operationWords } from './said.words.ts'

export interface OperationSaid {
  readonly words: string
  readonly amount: Mm
}

export const operationSaid = (op: Operation): OperationSaid => ({
  words: operationWords(op),
  amount: mm(Math.abs(amountOf(op))),
})

function amountOf(op: Operation): number {
  switch (op.op) {
    case 'ROT':
    case 'SPLIT':
      return op.width
    case 'MOVE':
    case 'GROUP':
      return Math.hypot(op.out, op.down)
    default:
      return op.by
  }
}
