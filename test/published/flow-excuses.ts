/** Rows that nothing here computes, each by its name. */
export const notCovered: Readonly<Record<string, string>> = {
  sampson_dp: 'a hole without length; the laws here start at L/d 0.3, the sum with the tube is dagan_dp',
  poiseuille_dp: 'a tube without ends; the sum with the ends is dagan_dp, the tube alone is white_6_4_Q',
  delta_sampson: 'algebra on sampson_dp',
  force_comp: 'asserted in test/damper, where the force is built',
  'fem_conf_1_0.25':
    'the same cell as the rows of test/reference with 16 % of the bore, with the recovery far downstream that no law here has',
  'fem_conf_1_0.16':
    'the same cell as the rows of test/reference with 16 % of the bore, with the recovery far downstream that no law here has',
  'fem_conf_2_0.16':
    'the same cell as the rows of test/reference with 16 % of the bore, with the recovery far downstream that no law here has',
  'fem_K_0.5_10':
    'the inertial part alone, 6 % of the pressure drop there; the whole is compared in test/reference/hole-reference.test.ts',
  fem_K_1_10:
    'the inertial part alone, 6 % of the pressure drop there; the whole is compared in test/reference/hole-reference.test.ts',
  fem_K_2_10:
    'the inertial part alone, 6 % of the pressure drop there; the whole is compared in test/reference/hole-reference.test.ts',
  fem_K_3_10:
    'the inertial part alone, 6 % of the pressure drop there; the whole is compared in test/reference/hole-reference.test.ts',
  asihmin: 'another correlation that the library does not offer',
  nakayama: 'another correlation that the library does not offer',
  delta_wuest: 'a limit 33 % below Sampson, which the numerical reference refutes',
  Ret_merritt: 'a limit 33 % below Sampson, which the numerical reference refutes',
  wu_1: 'its limit is that of delta_wuest',
  wu_1000: 'a thin plate in turbulent flow; at L/d 0.3 the jet lands on the wall',
  borutzky_join: 'another law that the library does not offer',
  rhg: 'a metering orifice with flange taps, turbulent, Re above 1e4, where the laws here do not reach',
  'round_Rennels_0.02': 'an inlet alone, turbulent, Re above 1e4, where the laws here do not reach',
  'round_Rennels_0.1': 'an inlet alone, turbulent, Re above 1e4, where the laws here do not reach',
  'round_Rennels_0.2': 'an inlet alone, turbulent, Re above 1e4, where the laws here do not reach',
  'round_Idelchik_0.02': 'an inlet alone, turbulent, Re above 1e4, where the laws here do not reach',
  'round_Idelchik_0.05': 'an inlet alone, turbulent, Re above 1e4, where the laws here do not reach',
  'round_Idelchik_0.1': 'an inlet alone, turbulent, Re above 1e4, where the laws here do not reach',
  'round_Swamee_0.02': 'an inlet alone, turbulent, Re above 1e4, where the laws here do not reach',
  'round_Swamee_0.05': 'an inlet alone, turbulent, Re above 1e4, where the laws here do not reach',
  'round_Swamee_0.1': 'an inlet alone, turbulent, Re above 1e4, where the laws here do not reach',
  'round_Swamee_0.2': 'an inlet alone, turbulent, Re above 1e4, where the laws here do not reach',
  'bevel_Idelchik_0.05': 'an inlet alone, turbulent, Re above 1e4, where the laws here do not reach',
  'bevel_Idelchik_0.2': 'an inlet alone, turbulent, Re above 1e4, where the laws here do not reach',
  nurick_Cc_0: 'choking of one hole in turbulent flow; the piston cavitates as a whole first',
  rabinowitsch: 'compared in shear-thinning.test.ts',
  'plate_in_0.1': 'compared in ring-plate.test.ts',
  'plate_in_0.3': 'compared in ring-plate.test.ts',
  'plate_in_0.5': 'compared in ring-plate.test.ts',
  'plate_in_0.7': 'compared in ring-plate.test.ts',
  'plate_roark2e_0.3': 'compared in ring-plate.test.ts',
  'plate_roark2e_0.5': 'compared in ring-plate.test.ts',
  'plate_roark2e_0.7': 'compared in ring-plate.test.ts',
};
