#include <nlohmann/json.hpp>

#include "gritwright/formats/csv_text.hpp"
#include "gritwright/formats/recall_file.hpp"
#include "gritwright/report/recall_report.hpp"
#include "gritwright/workbook/trace.hpp"
#include "json_out.hpp"
#include "log_request.hpp"

namespace gritwright::cli {

namespace {

std::string role_text(const TraceStep& step) {
  if (step.role == "screened") return "screened";
  if (step.role == "tipped") return "tipped into a bin";
  if (step.role == "mixed") return "mixed into a batch";
  if (step.role == "potted") return "potted";
  if (step.role == "remains") return "left in the pot";
  if (step.role == "designed") return "by design";
  if (step.role == "reclaimed") return "reclaimed";
  return "used";
}

std::string indented_text(const Trace& walked) {
  std::vector<std::size_t> depth(walked.steps.size());
  std::vector<std::vector<std::size_t>> below(walked.steps.size());
  for (std::size_t i = 1; i < walked.steps.size(); ++i) {
    depth[i] = depth[*walked.steps[i].from] + 1;
    below[*walked.steps[i].from].push_back(i);
  }
  std::string text;
  std::vector<std::size_t> open{0};
  while (!open.empty()) {
    const std::size_t index = open.back();
    open.pop_back();
    const TraceStep& step = walked.steps[index];
    text += std::string(depth[index] * 2, ' ') + ref_text(step.ref);
    if (!step.title.empty()) text += "  " + step.title;
    if (index != 0) {
      text += "  (" + role_text(step);
      if (!step.day.empty()) text += " " + step.day;
      if (!step.until.empty()) text += ", until " + step.until;
      if (!step.certain) text += ", may contain";
      if (step.deleted) text += ", removed";
      text += ")";
    }
    text += '\n';
    open.insert(open.end(), below[index].rbegin(), below[index].rend());
  }
  return text;
}

Json trace_json(const Trace& walked) {
  const auto or_null = [](const std::string& text) { return text.empty() ? Json(nullptr) : Json(text); };
  Json json{{"of", ref_text(walked.steps.front().ref)},
            {"direction", walked.direction == TraceDirection::back ? "back" : "forward"},
            {"steps", Json::array()}};
  for (const TraceStep& step : walked.steps)
    json["steps"].push_back({{"record", ref_text(step.ref)},
                             {"title", or_null(step.title)},
                             {"by", or_null(step.role)},
                             {"from", step.from ? Json(ref_text(walked.steps[*step.from].ref)) : Json(nullptr)},
                             {"day", or_null(step.day)},
                             {"until", or_null(step.until)},
                             {"certain", step.certain},
                             {"deleted", step.deleted}});
  return json;
}

Exit shared(LogCall& call) {
  std::optional<std::vector<Id<Tree>>> trees;
  for (const std::string& name : call.request.operands) {
    if (!trees) trees.emplace();
    const auto ref = ref_named(name);
    trees->push_back({ref && ref->kind == RecordKind::tree ? ref->id : name});
  }
  const auto answer = shared_traits(call.workbook, std::move(trees));
  if (!answer) return refuse(answer.problems(), call.streams.err);
  call.streams.out << (call.options.json ? write_shared_json(*answer) : call.request.csv ? write_shared_csv(*answer) : shared_text(*answer));
  return Exit::done;
}

Exit trace_back(LogCall& call, const RecordRef& start) {
  const auto walked = trace(call.workbook, start, TraceDirection::back);
  if (!walked) return refuse(walked.problems(), call.streams.err);
  if (call.options.json) {
    call.streams.out << trace_json(*walked).dump(2, ' ', false, Json::error_handler_t::replace) << '\n';
  } else if (call.request.csv) {
    call.streams.out << csv_row({"record", "title", "by", "from", "day", "until", "certain"});
    for (const TraceStep& step : walked->steps)
      call.streams.out << csv_row({ref_text(step.ref), step.title, step.role, step.from ? ref_text(walked->steps[*step.from].ref) : "",
                                   step.day, step.until, step.certain ? "yes" : "may"});
  } else {
    call.streams.out << indented_text(*walked);
  }
  return Exit::done;
}

}  // namespace

Exit log_trace(LogCall& call) {
  if (call.request.shared) return shared(call);
  if (call.request.operands.size() != 1) {
    call.streams.err << "log trace wants one number, like K-07; --shared takes several trees or none\n";
    return Exit::wrong_usage;
  }
  const auto start = ref_asked_for(call.workbook, call.request.operands.front());
  if (!start) return refuse(start.problems(), call.streams.err);
  // What a tree stands in is the question one has of a tree.
  if (call.request.back || start->kind == RecordKind::tree) return trace_back(call, *start);
  const auto list = recall_list(call.workbook, *start);
  if (!list) return refuse(list.problems(), call.streams.err);
  call.streams.out << (call.options.json  ? write_recall_json(*list)
                       : call.request.csv ? write_recall_csv(*list)
                                          : recall_text(*list, call.options.units));
  return Exit::done;
}

}  // namespace gritwright::cli
