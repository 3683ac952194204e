/** 0 °C in kelvin, exact (ISO 80000-5). */
export const zeroCelsius = 273.15;

/** Standard atmosphere in pascal, exact (ISO 2533). */
export const standardAtmosphere = 101_325;

/** Molar gas constant in J/(mol·K), exact since the 2019 SI (CODATA 2018). */
export const molarGasConstant = 8.314_462_618_153_24;

/** Standard acceleration of gravity in m/s², exact (ISO 80000-3). */
export const standardGravity = 9.806_65;
