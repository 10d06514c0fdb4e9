declare module '*.hbs' {
  const spec: TemplateSpecification;
  export default spec;
}
