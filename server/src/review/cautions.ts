import { translated, type Bundle } from '../wording/bundle.ts'
import { inCatalogue } from '../wording/phrase.ts'

/** Printed with every review and report, whatever it found. */
const cautions = [
  inCatalogue`Panels cannot be switched off in light: their leads are live at full voltage. Cover them or work at dusk, and never open a connector or fuse under load, for an arc of direct current does not go out by itself.`,
  inCatalogue`More than about 60 V of direct current can kill, less where it is wet, and boats and vans are wet, metallic and cramped.`,
  inCatalogue`Thin cable, loose crimps, a missing fuse at the battery and hot spots of cracked or shaded cells start fires. Panels that are glued down get hotter than 85 °C: keep them off fuel, gas, foam and soft plastics.`,
  inCatalogue`Batteries: lead-acid gives off hydrogen and holds acid, so ventilate and keep sparks away. Lithium must not be charged when frozen and needs its management system and a fuse of high breaking capacity. A short circuit of any bank melts tools.`,
  inCatalogue`Wind and sea lift panels, roofs and decks are slippery and high, holes leak into the core, and weight aloft takes stability. Nobody should step on a panel that is not rated for it.`,
  inCatalogue`At sea: tinned copper, sealed joints, drip loops, care with unlike metals and stray currents; controllers can disturb compass and radio.`,
  inCatalogue`Flexible panels last one to five years bonded to a deck (common practice, no source). Inspect them twice a year for yellowing, blisters, cracks and browned spots, and measure their current.`,
  inCatalogue`These figures are an aid. Local codes decide, and a licensed or competent person must check the work: in the US the National Electrical Code (690, 551, 710) and marine council practice; elsewhere IEC 62548, IEC 60364-7-712 and -721, ISO 13297 for small craft, AS/NZS 5033, 3001, 3004. Insurers and class societies have rules too.`,
  inCatalogue`Allowable currents, fuse sizes and battery values that no record gives are guide values, to be confirmed against the local code and the maker’s sheet.`,
  inCatalogue`"Not checked" does not mean in order.`,
] as const

export const cautionsIn = (bundle?: Bundle): readonly string[] => cautions.map((one) => translated(one, bundle))
