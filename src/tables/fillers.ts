/** Words that may stand between a name and its value and say nothing: articles, prepositions, "test", "level", "extractable". Accents left off. */
export const FILLERS: ReadonlySet<string> = new Set([
  'is', 'are', 'at', 'of', 'in', 'by', 'about', 'around', 'approx', 'approximately', 'only', 'just', 'came', 'out', 'back', 'level', 'levels', 'result', 'results',
  'value', 'values', 'reading', 'rating', 'test', 'tests', 'soil', 'extractable', 'available', 'exchangeable', 'extract', 'total', 'the', 'a', 'an', 'content', 'range',
  'estimated', 'est', 'stufe', 'klasse', 'class', 'gehalt', 'gehaltsklasse', 'methode', 'method', 'verfahren', 'extrakt', 'auszug', 'nach', 'als', 'verfugbar',
  'pflanzenverfugbar', 'using', 'via', 'with', 'extraction', 'extractant', 'en', 'im', 'de', 'del', 'to', 'for', 'and', 'y', 'e', 'et', 'und', 'stands', 'stood', 'now',
  'currently', 'up', 'its', 'it', 's', 'do', 'da', 'dos', 'das', 'di', 'della', 'des', 'du', 'le', 'la', 'el', 'los', 'las', 'les', 'o', 'os', 'der', 'die', 'den', 'auf',
  'em', 'no', 'na', 'as', 'sehr', 'current', 'found', 'measured', 'your',
  'liegt', 'liegen', 'betragt', 'mit', 'bei', 'ein', 'eine', 'einen', 'sind', 'ist', 'sale', 'salen', 'un', 'una', 'uno', 'une', 'hay', 'anda', 'andan', 'por', 'es', 'son', 'tiene', 'esta', 'est', 'sont', 'risulta', 'pari', 'il', 'lo', 'i', 'gli',
  'assimilabile', 'scambiabile', 'solubile', 'totale', 'echangeable', 'assimilable', 'disponible', 'intercambiable', 'cambiable', 'soluble', 'trocavel', 'disponivel', 'troca', 'austauschbar', 'austauschbares', 'loslich', 'loslicher', 'extraible', 'extraivel',
  'actual', 'boden', 'reading', 'measured', 'plant', 'plants', 'readily', 'water-soluble', 'form', 'as', 'neutral', 'mean', 'average', 'figure', 'number', 'came',
  'solo', 'solamente', 'apenas', 'nur', 'seulement', 'soltanto', "c'est", 'so',
  'exch', 'avail', 'sol', 'ech', 'assim',
]);
