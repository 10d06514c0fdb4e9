/** The publications of Europe and Turkey, and those of the rates by soil and leaf class that stand nowhere else. */
import type { Source } from './source.ts';

export const SOURCES_EUROPE = {
  'rhs-quince': { title: 'Quince, cultivation notes', publisher: 'Royal Horticultural Society', url: 'https://www.rhs.org.uk/advice/profile?pid=298' },
  'rhs-raspberry': { title: 'Raspberry, cultivation notes', publisher: 'Royal Horticultural Society', url: 'https://www.rhs.org.uk/advice/profile?pid=148' },
  'rhs-medlar': { title: 'Medlar, cultivation notes', publisher: 'Royal Horticultural Society', url: 'https://www.rhs.org.uk/advice/profile?PID=131' },
  'de-lwg-bayern-obstgehoelze': { title: 'Hinweise zur Düngung von Obstgehölzen im Garten', publisher: 'Bayerische Landesanstalt für Weinbau und Gartenbau, Bayerische Gartenakademie', url: 'https://lwg.bayern.de/cms06/gartenakademie/gartendokumente/infoschriften/124869/index.php' },
  'de-lwg-bayern-gartencast': { title: 'Gartencast: Düngung von Obstgehölzen im Garten', publisher: 'Bayerische Landesanstalt für Weinbau und Gartenbau, Bayerische Gartenakademie', year: 2018, url: 'https://lwg.bayern.de/cms06/gartenakademie/gartendokumente/gartencast/186254/index.php' },
  'at-arge-streuobst': { title: 'Düngerempfehlung bei Streuobstbäume', publisher: 'ARGE Streuobst Österreich', year: 2024, url: 'https://argestreuobst.at/blog/2024/03/24/duengerempfehlung-bei-streuobstbaeume' },
  'at-obstwein-technik-marille': { title: 'Besonderheiten bei der Düngung von Obstarten: Marille und Kirsche', publisher: 'Wissen Obstwein Technik, Austria', url: 'https://wissen.obstwein-technik.eu/doku.php?do=export_raw&id=2._pflege-_und_kulturmassnahmen%3A1_naehrstoffversorgung%3A05_besonderheiten_bei_der_duengung_von_obstarten%3A03_marille_und_kirsche' },
  'it-campania-guida': { title: 'Guida alla concimazione', publisher: 'Regione Campania, Assessorato Agricoltura', note: 'read in a copy' },
  'es-espada-frutales': { title: 'Abonado en frutales de hueso y pepita', publisher: 'Gobierno de Aragón, Centro de Transferencia Agroalimentaria', note: 'read in a copy' },

  'kstate-northern-pecans': { title: 'Interpreting pecan leaf analysis results', publisher: 'Northern Pecans, W. Reid, Kansas State University', year: 2013, url: 'http://northernpecans.blogspot.com/2013/08/interpreting-pecan-leaf-analysis-results.html' },
} as const satisfies Record<string, Source>;
