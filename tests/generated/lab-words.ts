// What labs of six languages print: names, units, methods, rating words, headings, letter lines. Typed from the notes of the trade
// and from posted reports; nothing here comes from the reader's own tables.

export type Language = 'en' | 'es' | 'fr' | 'de' | 'pt' | 'it';
export const LANGUAGES: readonly Language[] = ['en', 'es', 'fr', 'de', 'pt', 'it'];

/** A printed name, and what it says beside the item: the compound, the methods a careful reader may take from it, the unit. */
export type Name = { readonly text: string; readonly form?: string; readonly methods?: readonly (string | null)[]; readonly unit?: string };
const n = (text: string, also: Omit<Name, 'text'> = {}): Name => ({ text, ...also });
const plain = (...texts: string[]): Name[] => texts.map((text) => ({ text }));
const WATER = ['water', null] as const;

type Names = Readonly<Record<string, readonly Name[]>>;
export const NAMES: Readonly<Record<Language, Names>> = {
  en: {
    'ph': [...plain('pH', 'Soil pH', 'pH'), n('pH (water)', { methods: WATER }), n('Water pH', { methods: WATER }), n('pH (1:1, H2O)', { methods: ['1:1', ...WATER] })],
    'ph-salt': [n('pH (CaCl2)', { methods: ['cacl2'] }), n('Salt pH', { methods: ['cacl2', null] }), n('pHs', { methods: ['cacl2', null] }), n('pH (KCl)', { methods: ['kcl'] })],
    'buffer-ph': [...plain('Buffer pH', 'BpH', 'Buffer Index'), n('SMP Buffer pH', { methods: ['smp'] }), n('Sikora Buffer pH', { methods: ['sikora'] }), n('Buffer pH (SMP)', { methods: ['smp'] })],
    'organic-matter': [...plain('Organic Matter', 'Organic matter', 'OM', 'Soil Organic Matter', 'O.M.'), n('Organic Matter (LOI)', { methods: ['loi'] }), n('% Organic Matter', { unit: '%' })],
    'nitrate-n': plain('Nitrate-N', 'NO3-N', 'Nitrate-N (NO3-N)', 'Nitrate Nitrogen'),
    'phosphorus': [...plain('Phosphorus', 'Phosphorus (P)', 'P', 'Available Phosphorus', 'Avail. P', 'Extractable Phosphorus', 'Phos'), n('Olsen P', { methods: ['olsen'] }), n('Bicarb P', { methods: ['olsen'] }), n('Bray P1', { methods: ['bray-1'] }), n('P1 (Weak Bray)', { methods: ['bray-1'] }), n('P2 (Strong Bray)', { methods: ['bray-2'] }), n('Mehlich 3 P', { methods: ['mehlich-3'] }), n('Phosphate (P2O5)', { form: 'P2O5' }), n('P2O5', { form: 'P2O5' }), n('Phosphorus (Olsen)', { methods: ['olsen'] })],
    'potassium': [...plain('Potassium', 'Potassium (K)', 'K', 'K+', 'Available Potassium', 'Exchangeable Potassium', 'Exch. K', 'Avail. K'), n('K2O', { form: 'K2O' }), n('Potash (K2O)', { form: 'K2O' }), n('Potassium (ammonium acetate)', { methods: ['ammonium-acetate'] })],
    'calcium': plain('Calcium', 'Calcium (Ca)', 'Ca', 'Exchangeable Calcium', 'Exch. Ca', 'Ca++'),
    'magnesium': plain('Magnesium', 'Magnesium (Mg)', 'Mg', 'Exchangeable Magnesium', 'Exch. Mg', 'Mg++'),
    'sulphur': plain('Sulfur', 'Sulfur (S)', 'S', 'Sulphur', 'Sulfate-S', 'SO4-S', 'Sulphur (S)'),
    'sodium': plain('Sodium', 'Sodium (Na)', 'Na', 'Exchangeable Sodium'),
    'boron': [...plain('Boron', 'Boron (B)', 'B'), n('Boron (hot water)', { methods: ['hot-water'] })],
    'zinc': [...plain('Zinc', 'Zinc (Zn)', 'Zn'), n('Zinc (DTPA)', { methods: ['dtpa'] })],
    'manganese': plain('Manganese', 'Manganese (Mn)', 'Mn'),
    'copper': plain('Copper', 'Copper (Cu)', 'Cu'),
    'iron': plain('Iron', 'Iron (Fe)', 'Fe'),
    'aluminium': plain('Aluminum', 'Aluminum (Al)', 'Al', 'Aluminium'),
    'lead': plain('Lead', 'Lead (Pb)', 'Pb'),
    'cec': plain('CEC', 'C.E.C.', 'Cation Exchange Capacity', 'Cation Exchange Capacity (CEC)', 'Cation Exch. Capacity', 'ECEC'),
    'salts': [...plain('Soluble Salts', 'EC', 'Electrical Conductivity', 'Electrical Conductivity (EC)'), n('Soluble Salts (1:2)', { methods: ['1:2'] }), n('EC (1:5)', { methods: ['1:5'] }), n('EC 1:1', { methods: ['1:1'] }), n('ECe', { methods: ['paste'] })],
    'acidity': plain('Exchangeable Acidity', 'Exch. Acidity'),
    'carbonate': plain('Calcium Carbonate', 'Free Lime', 'Calcium carbonate (CaCO3)'),
    'sand': plain('Sand'), 'silt': plain('Silt'), 'clay': plain('Clay'),
    'density': plain('Scoop Density', 'Bulk Density'),
    'lime-requirement': plain('Lime Requirement', 'Lime Req.', 'Lime requirement'),
    'saturation-k': plain('Potassium Saturation', 'K Saturation', 'Potassium Base Saturation', 'K-saturation', '% K saturation'),
    'saturation-ca': plain('Calcium Saturation', 'Ca Saturation', 'Calcium Base Saturation', 'Ca-saturation', '% Ca saturation'),
    'saturation-mg': plain('Magnesium Saturation', 'Mg Saturation', 'Magnesium Base Saturation', 'Mg-saturation', '% Mg saturation'),
    'texture': plain('Texture', 'Soil Texture', 'Texture Class'),
  },
  es: {
    'ph': [...plain('pH', 'pH'), n('pH en agua', { methods: WATER }), n('pH (agua)', { methods: WATER })],
    'ph-salt': [n('pH en KCl', { methods: ['kcl'] }), n('pH (KCl)', { methods: ['kcl'] }), n('pH en CaCl2', { methods: ['cacl2'] })],
    'organic-matter': [...plain('Materia orgánica', 'M.O.', 'MO', 'Materia orgánica total', 'Materia Orgánica (MO)')],
    'nitrate-n': plain('Nitrógeno nítrico', 'N-NO3', 'N nítrico'),
    'phosphorus': [...plain('Fósforo', 'Fósforo (P)', 'P', 'Fósforo asimilable', 'Fósforo disponible'), n('Fósforo Olsen', { methods: ['olsen'] }), n('Fósforo asimilable (Olsen)', { methods: ['olsen'] }), n('P Olsen', { methods: ['olsen'] })],
    'potassium': [...plain('Potasio', 'Potasio (K)', 'K', 'Potasio asimilable', 'Potasio de cambio', 'Potasio intercambiable', 'Potasio disponible'), n('Potasio (acetato amónico)', { methods: ['ammonium-acetate'] }), n('K2O', { form: 'K2O' })],
    'calcium': plain('Calcio', 'Calcio (Ca)', 'Ca', 'Calcio de cambio', 'Calcio intercambiable', 'Calcio asimilable'),
    'magnesium': plain('Magnesio', 'Magnesio (Mg)', 'Mg', 'Magnesio de cambio', 'Magnesio intercambiable', 'Magnesio asimilable'),
    'sulphur': plain('Azufre', 'Azufre (S)', 'S', 'Sulfatos (S-SO4)'),
    'sodium': plain('Sodio', 'Sodio (Na)', 'Na', 'Sodio de cambio', 'Sodio intercambiable'),
    'boron': plain('Boro', 'Boro (B)', 'B', 'Boro soluble'),
    'zinc': plain('Zinc', 'Zinc (Zn)', 'Zn', 'Cinc'),
    'manganese': plain('Manganeso', 'Manganeso (Mn)', 'Mn'),
    'copper': plain('Cobre', 'Cobre (Cu)', 'Cu'),
    'iron': plain('Hierro', 'Hierro (Fe)', 'Fe'),
    'aluminium': plain('Aluminio', 'Aluminio (Al)', 'Aluminio intercambiable'),
    'cec': plain('CIC', 'C.I.C.', 'Capacidad de intercambio catiónico', 'Capacidad de intercambio catiónico (CIC)', 'Capacidad de cambio catiónico'),
    'salts': [...plain('Conductividad eléctrica', 'C.E.', 'CE', 'Conductividad', 'Conductividad eléctrica (CE)'), n('Conductividad eléctrica (1:5)', { methods: ['1:5'] }), n('C.E. 1:5', { methods: ['1:5'] })],
    'carbonate': plain('Carbonatos totales', 'Carbonato cálcico', 'Carbonatos'),
    'sand': plain('Arena'), 'silt': plain('Limo'), 'clay': plain('Arcilla'),
    'texture': plain('Textura', 'Clase textural'),
  },
  fr: {
    'ph': [...plain('pH', 'pH'), n('pH eau', { methods: WATER }), n('pH (eau)', { methods: WATER }), n('pH H2O', { methods: WATER })],
    'ph-salt': [n('pH KCl', { methods: ['kcl'] }), n('pH (KCl)', { methods: ['kcl'] }), n('pH CaCl2', { methods: ['cacl2'] })],
    'organic-matter': plain('Matière organique', 'Matières organiques', 'M.O.', 'MO', 'Matière organique (MO)'),
    'nitrate-n': plain('Azote nitrique', 'N-NO3', 'Azote nitrique (N-NO3)'),
    'phosphorus': [...plain('Phosphore', 'Phosphore (P)', 'P', 'Phosphore assimilable'), n('P2O5', { form: 'P2O5' }), n('Phosphore (P2O5)', { form: 'P2O5' }), n('P2O5 Olsen', { form: 'P2O5', methods: ['olsen'] }), n('Phosphore Olsen', { methods: ['olsen'] }), n('Acide phosphorique (P2O5)', { form: 'P2O5' })],
    'potassium': [...plain('Potassium', 'Potassium (K)', 'K', 'Potassium échangeable'), n('K2O', { form: 'K2O' }), n('Potasse (K2O)', { form: 'K2O' }), n('K2O échangeable', { form: 'K2O' }), n('Potassium (K2O)', { form: 'K2O' })],
    'calcium': [...plain('Calcium', 'Calcium (Ca)', 'Ca', 'Calcium échangeable'), n('CaO', { form: 'CaO' }), n('CaO échangeable', { form: 'CaO' }), n('Calcium (CaO)', { form: 'CaO' })],
    'magnesium': [...plain('Magnésium', 'Magnésium (Mg)', 'Mg', 'Magnésium échangeable'), n('MgO', { form: 'MgO' }), n('Magnésie (MgO)', { form: 'MgO' }), n('MgO échangeable', { form: 'MgO' })],
    'sulphur': plain('Soufre', 'Soufre (S)', 'S'),
    'sodium': [...plain('Sodium', 'Sodium (Na)', 'Na', 'Sodium échangeable'), n('Na2O', { form: 'Na2O' })],
    'boron': [...plain('Bore', 'Bore (B)', 'B'), n("Bore (eau bouillante)", { methods: ['hot-water', null] })],
    'zinc': plain('Zinc', 'Zinc (Zn)', 'Zn'),
    'manganese': plain('Manganèse', 'Manganèse (Mn)', 'Mn'),
    'copper': plain('Cuivre', 'Cuivre (Cu)', 'Cu'),
    'iron': plain('Fer', 'Fer (Fe)', 'Fe'),
    'cec': plain('CEC', 'C.E.C.', "Capacité d'échange cationique", 'Capacité d’échange cationique (CEC)'),
    'salts': [...plain('Conductivité', 'Conductivité électrique', 'CE'), n('Conductivité (1:5)', { methods: ['1:5'] })],
    'carbonate': plain('Calcaire total', 'Calcaire total (CaCO3)'),
    'sand': plain('Sable', 'Sables'), 'silt': plain('Limon', 'Limons'), 'clay': plain('Argile', 'Argiles'),
    'texture': plain('Texture'),
  },
  de: {
    'ph': plain('pH', 'pH-Wert'),
    'ph-salt': [n('pH (CaCl2)', { methods: ['cacl2'] }), n('pH-Wert (CaCl2)', { methods: ['cacl2'] }), n('pH-Wert (CaCl₂)', { methods: ['cacl2'] })],
    'organic-matter': plain('Humus', 'Humusgehalt', 'Organische Substanz'),
    'nitrate-n': plain('Nitrat-N', 'NO3-N', 'Nitratstickstoff'),
    'phosphorus': [...plain('Phosphor', 'Phosphor (P)', 'P'), n('Phosphor (P2O5)', { form: 'P2O5' }), n('Phosphat (P2O5)', { form: 'P2O5' }), n('P2O5', { form: 'P2O5' }), n('P2O5 (CAL)', { form: 'P2O5', methods: ['cal'] }), n('Phosphor (CAL)', { methods: ['cal'] }), n('P₂O₅', { form: 'P2O5' })],
    'potassium': [...plain('Kalium', 'Kalium (K)', 'K'), n('Kali (K2O)', { form: 'K2O' }), n('Kalium (K2O)', { form: 'K2O' }), n('K2O', { form: 'K2O' }), n('K2O (CAL)', { form: 'K2O', methods: ['cal'] }), n('Kalium (CAL)', { methods: ['cal'] })],
    'calcium': plain('Calcium', 'Calcium (Ca)', 'Kalzium', 'Ca'),
    'magnesium': [...plain('Magnesium', 'Magnesium (Mg)', 'Mg'), n('Magnesium (CaCl2)', { methods: ['cacl2'] }), n('Mg (CaCl2)', { methods: ['cacl2'] })],
    'sulphur': plain('Schwefel', 'Schwefel (S)'),
    'sodium': plain('Natrium', 'Natrium (Na)', 'Na'),
    'boron': plain('Bor', 'Bor (B)', 'B'),
    'zinc': plain('Zink', 'Zink (Zn)', 'Zn'),
    'manganese': plain('Mangan', 'Mangan (Mn)', 'Mn'),
    'copper': plain('Kupfer', 'Kupfer (Cu)', 'Cu'),
    'iron': plain('Eisen', 'Eisen (Fe)', 'Fe'),
    'lead': plain('Blei', 'Blei (Pb)', 'Pb'),
    'cec': plain('KAK', 'Kationenaustauschkapazität', 'Kationenaustauschkapazität (KAK)'),
    'salts': plain('Leitfähigkeit', 'elektrische Leitfähigkeit', 'Elektrische Leitfähigkeit'),
    'carbonate': plain('Carbonat', 'Kalkgehalt (CaCO3)', 'CaCO3'),
    'sand': plain('Sand'), 'silt': plain('Schluff'), 'clay': plain('Ton'),
    'texture': plain('Bodenart'),
  },
  pt: {
    'ph': [...plain('pH'), n('pH (H2O)', { methods: WATER }), n('pH em água', { methods: WATER }), n('pH H2O', { methods: WATER })],
    'ph-salt': [n('pH (CaCl2)', { methods: ['cacl2'] }), n('pH CaCl2', { methods: ['cacl2'] }), n('pH em CaCl2', { methods: ['cacl2'] })],
    'buffer-ph': [n('pH SMP', { methods: ['smp'] }), n('Índice SMP', { methods: ['smp'] })],
    'organic-matter': plain('Matéria orgânica', 'M.O.', 'MO', 'Matéria Orgânica (MO)'),
    'phosphorus': [...plain('Fósforo', 'Fósforo (P)', 'P', 'Fósforo disponível'), n('P (resina)', { methods: ['resin'] }), n('P resina', { methods: ['resin'] }), n('Fósforo (Mehlich-1)', { methods: ['mehlich-1'] }), n('P Mehlich 1', { methods: ['mehlich-1'] })],
    'potassium': [...plain('Potássio', 'Potássio (K)', 'K', 'K+', 'Potássio trocável')],
    'calcium': plain('Cálcio', 'Cálcio (Ca)', 'Ca', 'Ca2+', 'Cálcio trocável'),
    'magnesium': plain('Magnésio', 'Magnésio (Mg)', 'Mg', 'Mg2+', 'Magnésio trocável'),
    'sulphur': plain('Enxofre', 'Enxofre (S)', 'S', 'S-SO4'),
    'sodium': plain('Sódio', 'Sódio (Na)', 'Na'),
    'boron': plain('Boro', 'Boro (B)', 'B'),
    'zinc': plain('Zinco', 'Zinco (Zn)', 'Zn'),
    'manganese': plain('Manganês', 'Manganês (Mn)', 'Mn'),
    'copper': plain('Cobre', 'Cobre (Cu)', 'Cu'),
    'iron': plain('Ferro', 'Ferro (Fe)', 'Fe'),
    'aluminium': plain('Alumínio', 'Alumínio (Al)', 'Al3+', 'Alumínio trocável'),
    'acidity': plain('H+Al', 'H + Al', 'Acidez potencial (H+Al)', 'Acidez potencial'),
    'cec': plain('CTC', 'C.T.C.', 'Capacidade de troca catiônica', 'CTC (T)', 'CTC a pH 7,0'),
    'salts': plain('Condutividade elétrica', 'CE'),
    'sand': plain('Areia'), 'silt': plain('Silte'), 'clay': plain('Argila'),
    'texture': plain('Textura', 'Classe textural'),
  },
  it: {
    'ph': [...plain('pH', 'Reazione (pH)'), n('pH in acqua', { methods: WATER }), n('pH (H2O)', { methods: WATER })],
    'ph-salt': [n('pH in KCl', { methods: ['kcl'] }), n('pH (KCl)', { methods: ['kcl'] })],
    'organic-matter': plain('Sostanza organica', 'S.O.', 'Sostanza organica (SO)'),
    'nitrate-n': plain('Azoto nitrico', 'N-NO3'),
    'phosphorus': [...plain('Fosforo', 'Fosforo (P)', 'P', 'Fosforo assimilabile'), n('Fosforo assimilabile (Olsen)', { methods: ['olsen'] }), n('Fosforo Olsen', { methods: ['olsen'] }), n('P2O5', { form: 'P2O5' }), n('Fosforo assimilabile (P2O5)', { form: 'P2O5' })],
    'potassium': [...plain('Potassio', 'Potassio (K)', 'K', 'Potassio scambiabile', 'Potassio assimilabile'), n('K2O', { form: 'K2O' }), n('Potassio scambiabile (K2O)', { form: 'K2O' })],
    'calcium': plain('Calcio', 'Calcio (Ca)', 'Ca', 'Calcio scambiabile'),
    'magnesium': [...plain('Magnesio', 'Magnesio (Mg)', 'Mg', 'Magnesio scambiabile'), n('Magnesio scambiabile (MgO)', { form: 'MgO' })],
    'sulphur': plain('Zolfo', 'Zolfo (S)'),
    'sodium': plain('Sodio', 'Sodio (Na)', 'Na', 'Sodio scambiabile'),
    'boron': plain('Boro', 'Boro (B)', 'Boro solubile', 'B'),
    'zinc': plain('Zinco', 'Zinco (Zn)', 'Zn'),
    'manganese': plain('Manganese', 'Manganese (Mn)', 'Mn'),
    'copper': plain('Rame', 'Rame (Cu)', 'Cu'),
    'iron': plain('Ferro', 'Ferro (Fe)', 'Fe'),
    'lead': plain('Piombo', 'Piombo (Pb)'),
    'cec': plain('CSC', 'C.S.C.', 'Capacità di scambio cationico', 'Capacità di scambio cationico (CSC)'),
    'salts': [...plain('Conducibilità elettrica', 'Conducibilità', 'C.E.', 'Conduttività elettrica'), n('Conducibilità (1:5)', { methods: ['1:5'] })],
    'carbonate': plain('Calcare totale', 'Calcare totale (CaCO3)'),
    'sand': plain('Sabbia'), 'silt': plain('Limo'), 'clay': plain('Argilla'),
    'texture': plain('Tessitura', 'Classe tessiturale'),
  },
};

/** Spellings of units as labs print them; the first key is the unit of the closed list. */
export const UNIT_TEXTS: Readonly<Record<string, readonly string[]>> = {
  'ppm': ['ppm', 'ppm', 'ppm', 'PPM', 'p.p.m.'],
  'mg/kg': ['mg/kg', 'mg/kg', 'mg kg-1', 'mg/Kg', 'mg·kg⁻¹', 'mg kg⁻¹'],
  'mg/L': ['mg/l', 'mg/L', 'mg/dm3', 'mg/dm³'],
  'mg/100g': ['mg/100 g', 'mg/100g'],
  'lb/acre': ['lb/acre', 'lbs/acre', 'lb/A', 'lbs/A', 'lbs per acre', 'lb/ac', 'lbs./acre', 'pounds per acre'],
  'kg/ha': ['kg/ha', 'kg/ha', 'kg ha-1'],
  'meq/100g': ['meq/100g', 'meq/100 g', 'me/100g', 'Meq/100g', 'meq/100 gm'],
  'cmol/kg': ['cmol/kg', 'cmol(+)/kg', 'cmolc/kg', 'cmol+/kg'],
  'cmol/dm3': ['cmolc/dm3', 'cmolc/dm³'],
  'mmolc/dm3': ['mmolc/dm3', 'mmolc/dm³', 'mmolc dm-3'],
  '%': ['%'],
  'g/kg': ['g/kg', 'g/kg', 'g kg-1'],
  'g/dm3': ['g/dm3', 'g/dm³'],
  'dS/m': ['dS/m', 'dS m-1', 'dS/m'],
  'mS/cm': ['mS/cm'],
  'mmho/cm': ['mmho/cm', 'mmhos/cm'],
  'uS/cm': ['µS/cm', 'uS/cm', 'μS/cm'],
  'mS/m': ['mS/m'],
  'g/cm3': ['g/cm3', 'g/cc', 'g/cm³'],
  'ton/acre': ['tons/acre', 'ton/acre', 'tons per acre', 'T/acre'],
  't/ha': ['t/ha'],
};

/** Extractants by language, for headings, columns and lines. */
export const METHOD_TEXTS: Readonly<Record<Language, Readonly<Record<string, readonly string[]>>>> = {
  en: { 'mehlich-3': ['Mehlich 3', 'Mehlich-3', 'Mehlich III', 'M3'], 'mehlich-1': ['Mehlich 1', 'Mehlich-1'], 'olsen': ['Olsen'], 'bray-1': ['Bray P1', 'Bray 1'], 'ammonium-acetate': ['Ammonium acetate', 'NH4OAc'], 'modified-morgan': ['Modified Morgan'], 'morgan': ['Morgan'] },
  es: { 'olsen': ['Olsen'], 'ammonium-acetate': ['Acetato amónico', 'Acetato de amonio'], 'mehlich-3': ['Mehlich 3', 'Mehlich-3'], 'bray-1': ['Bray 1'] },
  fr: { 'olsen': ['Olsen'], 'ammonium-acetate': ["Acétate d'ammonium"], 'mehlich-3': ['Mehlich 3', 'Mehlich III'] },
  de: { 'cal': ['CAL', 'CAL-Methode', 'CAL-Auszug'], 'dl': ['DL'] },
  pt: { 'mehlich-1': ['Mehlich-1', 'Mehlich 1'], 'resin': ['Resina'] },
  it: { 'olsen': ['Olsen'], 'ammonium-acetate': ['Acetato d’ammonio', "Acetato d'ammonio", 'Acetato di ammonio'] },
};
/** Extractants that serve phosphorus only, and cations only. */
export const P_ONLY = ['olsen', 'bray-1'];
export const CATIONS_ONLY = ['ammonium-acetate'];

/** A rating word and the ratings a careful reader may take it for. */
export type Word = readonly [text: string, ratings: readonly string[]];
const LOW = ['low', 'very-low'];
const HIGH = ['high', 'very-high'];
const MID = ['medium', 'optimum'];
export const RATING_WORDS: Readonly<Record<Language, { readonly below: readonly Word[]; readonly in: readonly Word[]; readonly above: readonly Word[] }>> = {
  en: { below: [['low', ['low']], ['very low', ['very-low']], ['Low', ['low']], ['Very Low', ['very-low']], ['deficient', LOW], ['below optimum', [...LOW, 'medium']]], in: [['medium', ['medium']], ['optimum', ['optimum']], ['Optimum', ['optimum']], ['Medium', ['medium']], ['adequate', MID], ['sufficient', MID], ['normal', MID], ['optimal', ['optimum']]], above: [['high', ['high']], ['very high', ['very-high']], ['High', ['high']], ['Very High', ['very-high']], ['excessive', HIGH], ['above optimum', HIGH]] },
  es: { below: [['bajo', ['low']], ['muy bajo', ['very-low']], ['Bajo', ['low']], ['deficiente', LOW]], in: [['medio', ['medium']], ['normal', MID], ['óptimo', ['optimum']], ['adecuado', MID]], above: [['alto', ['high']], ['muy alto', ['very-high']], ['Muy alto', ['very-high']], ['excesivo', HIGH]] },
  fr: { below: [['faible', ['low']], ['très faible', ['very-low']], ['Faible', ['low']]], in: [['moyen', ['medium']], ['normal', MID], ['satisfaisant', MID], ['optimal', ['optimum']]], above: [['élevé', ['high']], ['très élevé', ['very-high']], ['Élevé', ['high']]] },
  de: { below: [['niedrig', ['low']], ['sehr niedrig', ['very-low']], ['gering', ['low']]], in: [['mittel', ['medium']], ['optimal', ['optimum']], ['normal', MID]], above: [['hoch', ['high']], ['sehr hoch', ['very-high']], ['Hoch', ['high']]] },
  pt: { below: [['baixo', ['low']], ['muito baixo', ['very-low']], ['Baixo', ['low']]], in: [['médio', ['medium']], ['adequado', MID], ['Médio', ['medium']]], above: [['alto', ['high']], ['muito alto', ['very-high']], ['Alto', ['high']]] },
  it: { below: [['basso', ['low']], ['molto basso', ['very-low']], ['scarso', LOW], ['Basso', ['low']]], in: [['medio', ['medium']], ['normale', MID], ['ottimale', ['optimum']]], above: [['alto', ['high']], ['elevato', ['high']], ['molto alto', ['very-high']], ['molto elevato', ['very-high']]] },
};
/** Letters of a rating column. */
export const LETTERS: Partial<Record<Language, { readonly below: readonly Word[]; readonly in: readonly Word[]; readonly above: readonly Word[] }>> = {
  en: { below: [['L', ['low']], ['VL', ['very-low']]], in: [['M', ['medium']]], above: [['H', ['high']], ['VH', ['very-high']]] },
  de: { below: [['A', ['very-low']], ['B', ['low']]], in: [['C', ['optimum']]], above: [['D', ['high']], ['E', ['very-high']]] },
};

export const HEADS: Readonly<Record<Language, { name: readonly string[]; value: readonly string[]; unit: readonly string[]; rating: readonly string[]; range: readonly string[]; method: readonly string[]; sample: readonly string[]; before: readonly string[] }>> = {
  en: { name: ['Test', 'Analysis', 'Nutrient', 'Parameter', 'Analyte'], value: ['Result', 'Value', 'Found', 'Results', 'Level found'], unit: ['Unit', 'Units'], rating: ['Rating', 'Interpretation', 'Level'], range: ['Optimum range', 'Desired range', 'Range', 'Normal range', 'Sufficiency range'], method: ['Method'], sample: ['Sample', 'Sample ID', 'Field'], before: ['Previous', 'Last year', 'Previous result'] },
  es: { name: ['Parámetro', 'Determinación', 'Análisis'], value: ['Resultado', 'Valor', 'Resultados'], unit: ['Unidad', 'Unidades'], rating: ['Interpretación', 'Valoración', 'Nivel'], range: ['Rango óptimo', 'Valores de referencia', 'Rango'], method: ['Método'], sample: ['Muestra', 'Parcela'], before: ['Anterior', 'Resultado anterior'] },
  fr: { name: ['Paramètre', 'Analyse', 'Élément'], value: ['Résultat', 'Valeur', 'Teneur', 'Résultats'], unit: ['Unité', 'Unités'], rating: ['Appréciation', 'Interprétation'], range: ['Plage optimale', 'Valeurs de référence', 'Plage souhaitée'], method: ['Méthode'], sample: ['Échantillon', 'Parcelle'], before: ['Précédent', 'Résultat précédent'] },
  de: { name: ['Parameter', 'Untersuchung', 'Nährstoff'], value: ['Ergebnis', 'Messwert', 'Wert', 'Gehalt'], unit: ['Einheit'], rating: ['Bewertung', 'Einstufung', 'Gehaltsklasse', 'Stufe'], range: ['Zielbereich', 'Optimalbereich', 'Sollbereich'], method: ['Methode'], sample: ['Probe', 'Schlag'], before: ['Vorjahr', 'Vorheriger Wert'] },
  pt: { name: ['Parâmetro', 'Determinação', 'Análise'], value: ['Resultado', 'Valor', 'Teor'], unit: ['Unidade', 'Unidades'], rating: ['Interpretação', 'Classe', 'Nível'], range: ['Faixa adequada', 'Faixa ideal', 'Valores de referência'], method: ['Método', 'Extrator'], sample: ['Amostra', 'Talhão'], before: ['Anterior', 'Resultado anterior'] },
  it: { name: ['Parametro', 'Determinazione', 'Analisi'], value: ['Risultato', 'Valore', 'Risultati'], unit: ['Unità', 'Unità di misura', 'U.M.'], rating: ['Giudizio', 'Valutazione', 'Interpretazione'], range: ['Intervallo ottimale', 'Valori di riferimento', 'Valori ottimali'], method: ['Metodo'], sample: ['Campione', 'Appezzamento'], before: ['Precedente', 'Risultato precedente'] },
};

/** Words before a range in brackets. */
export const RANGE_WORDS: Readonly<Record<Language, readonly string[]>> = {
  en: ['', 'optimum ', 'normal ', 'optimum range ', 'range ', 'normal is ', 'desired '],
  es: ['', 'óptimo ', 'rango óptimo ', 'normal '],
  fr: ['', 'optimum ', 'plage optimale ', 'normal '],
  de: ['', 'Zielbereich ', 'Optimum ', 'Soll '],
  pt: ['', 'ideal ', 'faixa adequada '],
  it: ['', 'ottimale ', 'valori normali '],
};
export const RANGE_TO: Readonly<Record<Language, readonly string[]>> = { en: ['-', ' - ', ' to ', '–'], es: ['-', ' - ', ' a ', '–'], fr: ['-', ' - ', ' à ', '–'], de: ['-', ' - ', ' bis ', '–'], pt: ['-', ' - ', ' a ', '–'], it: ['-', ' - ', ' – '] };

/** An older value in brackets; # stands for the number. */
export const OLD: Readonly<Record<Language, readonly string[]>> = {
  en: ['(2019: #)', '(was #)', '(last year #)', '(3 years ago this was #)', '(previous: #)', '(# in 2021)', '(up from #)'],
  es: ['(2019: #)', '(anterior: #)', '(antes #)'],
  fr: ['(2019 : #)', '(précédent : #)'],
  de: ['(2019: #)', '(Vorjahr: #)', '(vorher #)'],
  pt: ['(2019: #)', '(anterior: #)'],
  it: ['(2019: #)', '(precedente: #)'],
};

/** No number was found, or none was asked for. */
export const TRACE: Readonly<Record<Language, readonly string[]>> = { en: ['trace', 'Trace', 'not detected', 'ND', 'none detected', 'undetectable'], es: ['trazas', 'no detectado'], fr: ['traces', 'non détecté'], de: ['Spuren', 'nicht nachweisbar', 'n.n.'], pt: ['traços', 'não detectado'], it: ['tracce', 'non rilevato'] };
export const NOT_ASKED: Readonly<Record<Language, readonly string[]>> = { en: ['not requested', 'This value not requested.', 'n/a', 'not tested', 'not analyzed', '-'], es: ['no solicitado', 'no analizado', '-'], fr: ['non demandé', 'non analysé', '-'], de: ['nicht beauftragt', 'nicht untersucht', '-'], pt: ['não solicitado', 'não analisado', '-'], it: ['non richiesto', 'non analizzato', '-'] };

export const TEXTURES: Readonly<Record<Language, readonly string[]>> = { en: ['sandy loam', 'Sandy Loam', 'silt loam', 'loam', 'clay loam'], es: ['franco arenoso', 'franco', 'franco arcilloso'], fr: ['limon sableux', 'limon argileux'], de: ['sandiger Lehm', 'lehmiger Sand'], pt: ['franco arenoso', 'argilosa', 'média'], it: ['franco sabbioso', 'franco argilloso'] };

export const SAMPLE_HEADS: Readonly<Record<Language, readonly string[]>> = {
  en: ['Sample #: @', 'Sample: @', 'Sample ID: @', 'Sample #: @'], es: ['Muestra: @', 'Muestra #: @'], fr: ['Échantillon : @', 'Échantillon #: @'], de: ['Probe: @', 'Probe #: @'], pt: ['Amostra: @', 'Amostra #: @'], it: ['Campione: @', 'Campione #: @'],
};
export const PLOTS: Readonly<Record<Language, readonly string[]>> = { en: ['Lower terrace', 'Top strip', 'Old orchard', 'Bed 3'], es: ['Huerto alto', 'Bancal viejo', 'La vega', 'Finca sur'], fr: ['Verger haut', 'Clos neuf', 'Le pré', 'Parcelle sud'], de: ['Obstwiese', 'Hanggarten', 'Hofgarten', 'Beet 3'], pt: ['Pomar velho', 'Talude', 'Horta', 'Gleba 2'], it: ['Frutteto alto', 'Orto', 'Terrazza', 'Campo sud'] };

/** Lines of a lab's letter that name no reading. */
export const CHATTER: Readonly<Record<Language, readonly string[]>> = {
  en: ['Thank you for your order.', 'Davis, CA 95616', '410 N Main St, Suite 12', '1420 K Street NW', 'P.O. Box 1180', 'Tel. 555-0142', 'Phone: (555) 010-4471', 'Lab No. 23-04471', 'Lab ID: H623', 'Page 1 of 2', 'Date received: 3/14/2025', 'Report date: March 14, 2025', 'Sampled 11 Oct 2025', 'Grower: P. Kowalski', 'Crop: Apples', 'Area: 0.5 acre', 'County: Lake', 'Client 20318', 'Invoice 88121', 'Order # 55190', 'SOIL TEST REPORT', 'Soil Analysis Report', 'ISO 17025 accredited', 'www.example.org/soil', 'results@example.org', 'Approved by: B. Smith', 'Questions? Call us Monday to Friday 8-5.', 'Results apply to the sample as received.', 'ppm x 2 = lb/acre', '1 ppm = 2 lb/acre', 'VL = very low, L = low, M = medium, H = high', 'Number of cores: 12', 'Sample depth: 6 in', 'Depth 0-8 inches', '-----', '* not accredited', 'See back of page for details.', 'MEMBER SINCE 1998'],
  es: ['Gracias por su confianza.', 'Calle Mayor 14, 3.º B', 'Tel. 955 010 447', 'N.º de muestra 20318', 'Fecha: 14/03/2025', 'Página 1 de 2', 'Análisis de suelo', 'Cultivo: manzano', 'Superficie: 0,5 ha', 'Cliente: P. Romero', 'Profundidad: 30 cm', 'Laboratorio acreditado ISO 17025'],
  fr: ['Merci de votre confiance.', '14, rue de la Gare', '45000 Orléans', 'Tél. 02 55 01 04 47', 'Dossier n° 20318', 'Date : 14/03/2025', 'Page 1 sur 2', 'Analyse de terre', 'Culture : pommier', 'Surface : 0,5 ha', 'Client : P. Martin', 'Profondeur : 30 cm'],
  de: ['Mit freundlichen Grüßen', 'Hauptstraße 14', '97070 Würzburg', 'Tel. 0931 555014', 'Auftrag Nr. 20318', 'Datum: 14.03.2025', 'Seite 1 von 2', 'Bodenuntersuchung', 'Kultur: Apfel', 'Fläche: 0,5 ha', 'Kunde: P. Meier', 'Entnahmetiefe: 30 cm'],
  pt: ['Agradecemos a preferência.', 'Rua das Flores, 14', 'Tel. (11) 5550-1447', 'Laudo n.º 20318', 'Data: 14/03/2025', 'Página 1 de 2', 'Análise de solo', 'Cultura: maçã', 'Área: 0,5 ha', 'Cliente: P. Souza', 'Profundidade: 0-20 cm'],
  it: ['Cordiali saluti', 'Via Roma 14', '38010 San Michele', 'Tel. 0461 555014', 'Rapporto n. 20318', 'Data: 14/03/2025', 'Pagina 1 di 2', 'Analisi del terreno', 'Coltura: melo', 'Superficie: 0,5 ha', 'Cliente: P. Rossi', 'Profondità: 30 cm'],
};

/** Lines that name an item and a number, yet give no result of the test. */
export const ADVICE: Readonly<Record<Language, readonly string[]>> = {
  en: ['Apply 2 lb of nitrogen per 1000 sq ft in April.', 'Recommendation: 3 lb K2O per 1000 sq ft', 'Apply 50 lb of limestone per 1000 sq ft.', 'Optimum pH for apples is 6.0 to 6.8.', 'Raise pH to 6.5 with lime before planting.', 'Use 10-10-10 at 20 lb per 1000 sq ft.', 'Nitrogen is not tested; apply 1 lb per 1000 sq ft.', 'Broadcast 120 lb/acre of potash.'],
  es: ['Aportar 60 kg/ha de nitrógeno en primavera.', 'Se recomienda aplicar 80 kg/ha de K2O.', 'El pH óptimo del manzano es de 6,0 a 6,8.'],
  fr: ['Apporter 60 kg/ha d’azote au printemps.', 'Conseil : 80 kg/ha de K2O', 'Le pH optimal du pommier est de 6,0 à 6,8.'],
  de: ['Düngeempfehlung: 60 kg N/ha im Frühjahr', 'Empfehlung: 80 kg/ha K2O', 'Der optimale pH-Wert für Apfel liegt bei 6,0 bis 6,8.'],
  pt: ['Aplicar 60 kg/ha de N na primavera.', 'Recomendação: 80 kg/ha de K2O', 'O pH ideal da macieira é de 6,0 a 6,8.'],
  it: ['Apportare 60 kg/ha di azoto in primavera.', 'Si consiglia di apportare 80 kg/ha di K2O.', 'Il pH ottimale del melo è 6,0 - 6,8.'],
};

/** Results that come now and then: name, unit, lowest, highest, and the item if it is one of the list. Organic carbon is no organic matter. */
export const OTHERS: Readonly<Record<Language, readonly (readonly [text: string, unit: string, low: number, high: number, item?: string])[]>> = {
  en: [['Ca:Mg ratio', '', 2, 12], ['Ca/Mg Ratio', '', 2, 12], ['K/Mg Ratio', '', 0.1, 0.9], ['C:N ratio', '', 8, 14], ['Molybdenum', 'ppm', 0.1, 0.9], ['Chloride', 'ppm', 5, 60], ['Chloride (Cl)', 'ppm', 5, 60], ['Nickel (Ni)', 'ppm', 0.1, 0.9], ['Cadmium', 'ppm', 0.1, 0.9], ['Organic Carbon', '%', 1, 3, 'organic-carbon'], ['Total Organic Carbon', '%', 1, 3, 'organic-carbon'], ['Est. Nitrogen Release', 'lb/acre', 40, 120], ['ENR', 'lb/acre', 40, 120], ['Moisture', '%', 10, 30], ['Ammonium-N', 'ppm', 1, 20, 'ammonium-n'], ['Total Nitrogen', '%', 0.1, 0.4, 'nitrogen'], ['Base Saturation', '%', 30, 95, 'base-saturation']],
  es: [['Relación C/N', '', 8, 14], ['Relación Ca/Mg', '', 2, 12], ['Carbono orgánico', '%', 1, 3, 'organic-carbon'], ['Cloruros', 'mg/kg', 5, 60], ['Humedad', '%', 10, 30], ['Molibdeno', 'mg/kg', 0.1, 0.9], ['Nitrógeno total', '%', 0.1, 0.4, 'nitrogen'], ['Caliza activa', '%', 1, 9, 'active-carbonate'], ['Saturación de bases', '%', 30, 95, 'base-saturation']],
  fr: [['Rapport C/N', '', 8, 14], ['Rapport K/Mg', '', 0.1, 0.9], ['C/N', '', 8, 14], ['Carbone organique', 'g/kg', 8, 30, 'organic-carbon'], ['Molybdène', 'mg/kg', 0.1, 0.9], ['Refus', '%', 10, 30], ['Azote total', 'g/kg', 0.8, 3, 'nitrogen'], ['Calcaire actif', '%', 1, 9, 'active-carbonate']],
  de: [['C/N-Verhältnis', '', 8, 14], ['Corg', '%', 1, 3, 'organic-carbon'], ['Organischer Kohlenstoff', '%', 1, 3, 'organic-carbon'], ['Molybdän', 'mg/kg', 0.1, 0.9], ['Cadmium', 'mg/kg', 0.1, 0.9], ['Trockensubstanz', '%', 75, 95], ['Gesamtstickstoff', '%', 0.1, 0.4, 'nitrogen']],
  pt: [['Relação Ca/Mg', '', 2, 12], ['Saturação por bases (V%)', '%', 30, 90, 'base-saturation'], ['V%', '', 30, 90, 'base-saturation'], ['Soma de bases (SB)', 'mmolc/dm3', 20, 80], ['Carbono orgânico', '%', 1, 3, 'organic-carbon'], ['Molibdênio', 'mg/L', 0.1, 0.9]],
  it: [['Rapporto C/N', '', 8, 14], ['Rapporto Ca/Mg', '', 2, 12], ['Carbonio organico', '%', 1, 3, 'organic-carbon'], ['Molibdeno', 'mg/kg', 0.1, 0.9], ['Umidità', '%', 10, 30], ['Azoto totale', '%', 0.1, 0.4, 'nitrogen'], ['Calcare attivo', '%', 1, 9, 'active-carbonate']],
};

/** An American state lab's index numbers, and what stands beside them. Humic matter is no organic matter. */
export const INDEX_NAMES: Names = {
  'ph': plain('pH'), 'phosphorus': plain('P-I', 'P Index', 'Phosphorus Index'), 'potassium': plain('K-I', 'K Index', 'Potassium Index'), 'sulphur': plain('S-I', 'S Index'), 'manganese': plain('Mn-I', 'Mn Index'), 'zinc': plain('Zn-I', 'Zn Index'), 'copper': plain('Cu-I', 'Cu Index'), 'cec': plain('CEC'), 'acidity': plain('Ac', 'Exchangeable Acidity'), 'density': plain('W/V'),
};
/** Headings over shares of the exchange sites. */
export const SATURATION_HEADS = ['Base Saturation (%)', 'Percent Base Saturation', 'Base Saturation, %', 'Cation Saturation', '% Base Saturation'];

/** Slips that people are known to make. */
export const SLIPS: Readonly<Record<string, readonly string[]>> = { 'Phosphorus': ['Phosphurus', 'Phosporus', 'Phosphorous'], 'Potassium': ['Potasium', 'Pottasium'], 'K2O': ['K20'], 'P2O5': ['P205'], 'Magnesium': ['Magnesuim', 'Magnesiun'], 'Calcium': ['Calcuim', 'Calicum'], 'Organic Matter': ['Organic Mater'], 'Manganese': ['Manganeese', 'Maganese'], 'Sulfur': ['Sulpher', 'Sufur'], 'Materia orgánica': ['Materia organca'], 'Kalium': ['Kallium'], 'Magnésium': ['Magnesuim'], 'Fósforo': ['Fosfóro'], 'Potassio': ['Potasio'], 'Zinc': ['Zink'], 'Boron': ['Borom'], 'Humus': ['Humuss'] };
