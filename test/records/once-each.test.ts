import { expect, test } from 'vitest'
import { onceEach } from '../../server/src/records/once-each.ts'

const counted = () => {
  const asked: object[] = []
  const of = onceEach((key: { readonly n: number }) => {
    asked.push(key)
    if (key.n < 0) throw new RangeError('below nothing')
    return key.n === 0 ? undefined : key.n
  })
  return { asked, of }
}

test.each([1, 0])('the answer for %s is worked out once', (n) => {
  const { asked, of } = counted()
  const key = Object.freeze({ n })
  expect([of(key), of(key)]).toEqual([n || undefined, n || undefined])
  expect(asked).toEqual([key])
})

test('equal objects and copies have answers of their own, and nothing is seen of them', () => {
  const { asked, of } = counted()
  const key = { n: 1 }
  of(key)
  expect(of({ ...key, n: 2 })).toBe(2)
  expect(asked).toHaveLength(2)
  expect(Reflect.ownKeys(key)).toEqual(['n'])
})

test('two functions keep their answers apart', () => {
  const key = { n: 3 }
  const [one, other] = [onceEach(({ n }: typeof key) => n + 1), onceEach(({ n }: typeof key) => n + 2)]
  expect([one(key), other(key), one(key)]).toEqual([4, 5, 4])
})

test('what failed is tried again', () => {
  const { asked, of } = counted()
  const key = { n: -1 }
  for (const _ of [1, 2]) expect(() => of(key)).toThrow('below nothing')
  expect(asked).toHaveLength(2)
})
