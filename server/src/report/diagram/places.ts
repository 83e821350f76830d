/** Where the columns of a one-line diagram are [px]. */
export const width = 684
export const generatorAt = 26
export const stringFuseAt = 120
export const arrayCable = { from: 150, to: 250 }
export const disconnectAt = 268
export const controllerAt = 320
export const outputFuseAt = 382
export const outputCable = { from: 396, to: 444 }
export const bus = 452
export const busFuseAt = 476
export const busCable = { from: 498, to: 586 }
export const endAt = 606
export const rowHeight = 80
