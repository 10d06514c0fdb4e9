/** The publications behind the lime requirements. */
import type { Source } from './source.ts';

export const SOURCES_LIME = {
  'oregon-em9057': { title: 'EM 9057, Applying Lime to Raise Soil pH for Crop Production (Western Oregon)', publisher: 'Oregon State University Extension', year: 2013, url: 'https://extension.oregonstate.edu./catalog/pub/em-9057-applying-lime-raise-soil-ph-crop-production-western-oregon', note: 'recalled' },
  'kansas-mf2586': { title: 'MF-2586, Soil Test Interpretations and Fertilizer Recommendations', publisher: 'Kansas State University', note: 'recalled' },
  'minnesota-fo5956': { title: 'FO-5956, Lime Needs in Minnesota', publisher: 'University of Minnesota Extension', url: 'https://extension.umn.edu/node/7726', note: 'recalled' },
  'ontario-811': { title: 'Factsheet 91-086 and Publication 811, soil acidity and liming', publisher: 'Ontario Ministry of Agriculture', url: 'https://www.topcropmanager.com/understanding-lime-10449/', note: 'recalled' },
  'brazil-cqfs': { title: 'Manual de adubação e calagem', publisher: 'Comissão de Química e Fertilidade do Solo, RS and SC', note: 'recalled' },
  'brazil-base-saturation': { title: 'Calagem by base saturation, teaching pages', publisher: 'agronomy teaching pages, Brazil', url: 'https://agronomia.hi7.co/saiba-como-calcular-a-necessidade-de-calagem-58328011a6bf4.html' },
  'brazil-aluminium': { title: 'Calcular necessidade de calagem', publisher: 'agronomy teaching pages, Brazil', year: 2014, url: 'http://agronomiacomgismonti.blogspot.com/2014/06/calcular-necessidade-de-calagem-sem.html' },
  'teagasc-lime': { title: 'Calculating Lime Advice', publisher: 'Teagasc', year: 2023, url: 'https://www.teagasc.ie/about/farm-advisory/advisory-regions/cork-east/farm-advice/calculating-lime-advice/' },
  'alabama-adams-evans': { title: 'Adams-Evans buffer for lime requirement', publisher: 'Auburn University', url: 'https://studylib.net/doc/7626375/adams-evans-buffer-for-lime-requirement', note: 'read in a copy' },
  'north-carolina-bufftab': { title: 'Buffer factor page', publisher: 'North Carolina Department of Agriculture, Agronomic Division', url: 'http://www.ncagr.gov/agronomi/bufftab1.htm' },
  'north-carolina-lime-needs': { title: 'Soil testing: lime and fertilizer requirements', publisher: 'North Carolina Department of Agriculture, Agronomic Services', url: 'https://ncagr.gov/agronomic-services-soil-testing-lime-and-fertilizer-requirements' },
  'georgia-lbc': { title: 'Determining lime requirement using the equilibrium lime buffer capacity', publisher: 'University of Georgia', url: 'https://aesl.ces.uga.edu/sera6/FACT/SERA-6-FS-3.html' },
  'midwest-base-saturation': { title: 'CEC and base saturation of a soil report, by milliequivalents', publisher: 'a soil laboratory in the Midwest', url: 'https://www.spectrumanalytic.com/doc/library/articles/state_lime_specifications' },
  'uk-lime-rule': { title: 'Lime time', publisher: 'a farmers\' buying group in the United Kingdom', url: 'https://www.dblbuyinggroup.co.uk/news/lime-time/' },
  'uk-lime-factors': { title: 'pH and lime requirements, lime factors', publisher: 'UK Agricultural Lime Association', url: 'https://aglime.org.uk/tech/ph_value_and_lime_requirements.php', note: 'recalled' },
  'uk-rb209-lime': { title: 'Nutrient Management Guide RB209, lime recommendations', publisher: 'AHDB', note: 'recalled' },
  'ahdb-lime-targets': { title: 'Soil pH and liming recommendations for arable and grass systems', publisher: 'AHDB', url: 'https://ahdb.org.uk/knowledge-library/soil-ph-and-liming-recommendations-for-arable-and-grass-systems' },
  'vdlufa-humus': { title: 'Target pH and maintenance liming by humus, after the VDLUFA', publisher: 'top agrar', url: 'https://www.topagrar.com/heftplus/hohe-naehrstoffeffizienz-ph-wert-11581429.html' },
  'australia-lime-texture': { title: 'Lime application rates', publisher: 'a lime supplier in Australia', year: 2019, url: 'https://pacificfertiliser.com/2019/03/lime-application-rates', note: 'weak page' },
  'iung-lime': { title: 'Assessment of liming demands', publisher: 'Institute of Soil Science and Plant Cultivation, Poland', url: 'https://dpr.iung.pl/en/assessment-of-liming-demands' },
  'nsw-ac19-lime': { title: 'Agfact AC.19, lime rates by exchange capacity', publisher: 'New South Wales Department of Primary Industries', note: 'recalled' },
  'missouri-lime-law': { title: 'Agricultural liming materials', publisher: 'Missouri Agricultural Experiment Station, Fertilizer and Ag Lime Control Services', url: 'http://aes.missouri.edu/pfcs/index.stm' },
  'alabama-texture': { title: 'Choosing effective liming materials', publisher: 'Alabama Cooperative Extension', url: 'https://www.aces.edu/blog/topics/crop-production/choosing-effective-liming-materials/' },
} as const satisfies Record<string, Source>;
