/** A small system as a person would type it, line by line; its records are those of the sample systems. */
export const littleBoat = `# typed by hand
format: 1
name: Little boat
kind: boat
site: { climate: example-bay, coldest: -5 °C, hottest: 33 °C }
surfaces:
  - id: coachroof
    size: { length: 2.6 m, width: 1.7 m }
    mounting: standoff
    tilt: 0 deg
arrays:
  - id: main
    panels: [{ panel: puffin-115, count: 4, surface: coachroof }]
    wiring: { in_series: 2, in_parallel: 2 }
    controller: example-mppt-30
    cable: { size: 10 mm2, length: 6 m, insulation: 90 °C }
battery:
  battery: example-lfp-100
  in_parallel: 2
  fuse: 60 A
  cable: { size: 25 mm2, length: 1 m }
  autonomy: 2 days
loads:
  - { name: fridge, power: 45 W, hours: 8, supply: dc }
  - name: lights
    current: 1.5 A
    hours: 4
`
