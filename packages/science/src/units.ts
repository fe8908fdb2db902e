/**
 * Exact conversion factors between what the engine keeps (STYLE section 3) and what people say.
 *
 * Factors of the yard, the pound and the gallons are exact by definition; the few that are rounded say so on their line.
 */

// Length. The international yard is exactly 0.9144 m (NIST SP 811, from memory).
export const cm_per_inch = 2.54;
export const m_per_foot = 0.3048;
export const m_per_mile = 1609.344;

// Mass. The avoirdupois pound is exactly 453.59237 g (NIST SP 811, from memory).
export const g_per_pound = 453.59237;
export const g_per_ounce = g_per_pound / 16;

// Volume. The US gallon is exactly 231 cubic inches, 1 in³ = 16.387064 mL (NIST SP 811, from memory).
export const mL_per_US_gallon = 231 * 16.387064;
export const mL_per_US_quart = mL_per_US_gallon / 4;
export const mL_per_US_cup = mL_per_US_gallon / 16;
export const mL_per_US_fluid_ounce = mL_per_US_gallon / 128;
export const mL_per_US_tablespoon = mL_per_US_gallon / 256;
export const mL_per_US_teaspoon = mL_per_US_gallon / 768;
// Metric kitchen measures, exact by custom.
export const mL_per_metric_tablespoon = 15;
export const mL_per_metric_teaspoon = 5;
// The imperial gallon is exactly 4546.09 mL (NIST SP 811, from memory).
export const mL_per_imperial_gallon = 4546.09;
export const mL_per_imperial_fluid_ounce = mL_per_imperial_gallon / 160;

// Temperature.
export const kelvinOffset_C = 273.15;

// Speed.
export const m_s_per_km_h = 1 / 3.6;
export const m_s_per_mile_h = m_per_mile / 3600;
export const m_s_per_knot = 1852 / 3600;

// Pressure. 1 atm = 101.325 kPa exactly; the conventional inch of mercury is 3.386389 kPa (NIST SP 811, from memory).
export const kPa_per_hPa = 0.1;
export const kPa_per_bar = 100;
export const kPa_per_mmHg = 101.325 / 760;
export const kPa_per_inHg = 3.386389;

// Energy and radiation: arithmetic of the second, the hour and the day.
export const MJ_m2_d_per_W_m2 = 0.0864;
export const MJ_m2_h_per_W_m2 = 0.0036;
// One langley is one calorie per cm²; the station records quoted in checks/ use the International Table calorie, 4.1868 J.
export const MJ_m2_per_langley = 0.041868;
export const MJ_per_kWh = 3.6;

// Evaporation. Latent heat 2.45 MJ kg⁻¹; FAO-56 rounds its inverse to 0.408 in every equation.
export const latentHeat_MJ_kg = 2.45;
export const evaporation_mm_per_MJ_m2 = 0.408;

// Light. Photosynthetic photons of daylight (Thimijan & Heins 1983, from memory).
export const sunlight_umol_per_J = 4.57;

// Illuminance. One foot-candle is one lumen per square foot, exactly by definition.
export const lx_per_footcandle = 1 / (m_per_foot * m_per_foot);

// Angle.
export const rad_per_deg = Math.PI / 180;
