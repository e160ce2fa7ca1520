// The steps of a build; each takes a structure and returns one.
#include "compile/compile.h"

#include "bench/budget.h"
#include "bench/measurements.h"
#include "bench/rescue.h"
#include "substitute/examples.h"

namespace benchlore {

std::unique_ptr<Compiled> compile(const CompileInput& input, Failure& failure) {
  auto compiled = std::make_unique<Compiled>();
  const auto content = disk_files(input.content);
  const auto schema_files = disk_files(input.schema);
  if (!content->is_folder("")) {
    failure.message = "there is no content folder `" + input.content + "`; name one with --content";
    return nullptr;
  }
  auto schema = read_schema({{*schema_files, ""}, {*content, "schema/"}}, compiled->sources, compiled->report);
  if (schema && !run_shop_examples(*schema, compiled->report)) schema.reset();
  if (!schema) {
    failure.message = "the schema (`" + input.schema + "`, and `schema` beside the notes if there is one) cannot be " +
                      "used; nothing was checked";
    failure.partial = std::move(compiled);
    return nullptr;
  }
  compiled->schema = std::move(*schema);
  compiled->shop = link_shop(*content, "", compiled->schema, compiled->sources, compiled->report);
  compiled->judged = judge_shop(compiled->shop);
  report_judgements(compiled->shop, compiled->judged, compiled->report);
  report_measurements(compiled->shop, compiled->report);
  report_budgets(compiled->shop, compiled->report);
  report_rescues(compiled->shop, compiled->report);
  compiled->report.sort(compiled->sources);
  return compiled;
}

} // namespace benchlore
