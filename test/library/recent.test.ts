import { expect, test } from 'vitest'
import { createLibrary } from '../../server/src/library/create.ts'
import { Recent } from '../../server/src/library/recent.ts'

test('what was used lately is kept, and at most twice as many', () => {
  const recent = new Recent<number>(10)
  for (let i = 0; i < 1000; i++) {
    recent.set(`${i}`, i)
    expect(recent.get('0')).toBe(0)
  }
  const kept = Array.from({ length: 1000 }, (_, i) => recent.get(`${i}`)).filter((value) => value !== undefined)
  expect(kept.length).toBeGreaterThanOrEqual(10)
  expect(kept.length).toBeLessThanOrEqual(20)
  expect(recent.get('999')).toBe(999)
  recent.delete('999')
  expect(recent.get('999')).toBeUndefined()
})

test('a library that keeps few records as they were read says the same of all', () => {
  const libraries = [createLibrary(), createLibrary(3)]
  for (const library of libraries) {
    library.put('/a/wattproof.yaml', 'format: 1\ncurrency: USD\n')
    for (let i = 0; i < 50; i++) library.put(`/a/tern-${i}.panel.yaml`, `format: 1\nname: Tern ${i}\nfamily: Tern\n`)
    library.put('/a/tern-7.panel.yaml', 'format: 1\nname: Wader\nfamily: Tern\n')
    library.drop('/a/tern-8.panel.yaml')
  }
  const [all, few] = libraries.map((library) =>
    library.paths().map((path) => {
      const file = library.file(path)!
      return [path, file.fields.get('/name')?.text, library.noted(path, ({ record }) => record.family?.text)]
    }),
  )
  expect(few).toEqual(all)
  expect(all).toHaveLength(50)
})
