/**
 * Efficiency no single-junction cell can exceed in unconcentrated sunlight, front emission only, band gap 1.34 eV [1].
 *
 * @source W. Shockley, H. J. Queisser, J. Appl. Phys. 32 (1961) 510; value for the AM1.5 spectrum: S. Rühle, Solar Energy 130 (2016) 139
 */
export const shockleyQueisser = 0.337

/** The same for silicon with Auger recombination [1]. @source A. Richter, M. Hermle, S. W. Glunz, IEEE J. Photovoltaics 3 (2013) 1184 (from memory) */
export const siliconLimit = 0.294

/** Two junctions, one sun, currents free [1]. Own detailed balance on the ASTM G173 spectrum. */
export const tandemLimit = 0.461
