using System.Reflection;
using System.Text;
using ShopClass.Core.Courses;
using ShopClass.Core.Lessons;
using ShopClass.Core.Lumber;
using ShopClass.Core.Measure;
using ShopClass.Core.Orders;
using ShopClass.Core.Planning;
using ShopClass.Core.Progress;
using ShopClass.Core.Projects;
using ShopClass.Core.Remakes;
using ShopClass.Data.Access;
using ShopClass.Data.Orders;
using ShopClass.Data.Students;
using ShopClass.Data.Tests.Orders;
using ShopClass.Data.Tools;
using static ShopClass.Data.Access.Deed;

namespace ShopClass.Data.Tests.Access;

// What each call is about, and what is handed to it.
public sealed partial class RoleMatrixTests
{
    // These are about the viewer, or about nothing yet; other tests ask them.
    private static readonly string[] NotOfACourse =
    [
        "CourseStore.CreateAsync",
        "Invitations.DaysAsync",
        "Invitations.UseAsync",
        "TodayStore.FindAsync",
    ];

    private static readonly Dictionary<string, (Deed Deed, Students Students)> Expected = new(
        StringComparer.Ordinal
    )
    {
        ["BoardEntryStore.DropAsync"] = (LogWork, Students.Self),
        ["BoardEntryStore.FindAsync"] = (LogWork, Students.Self),
        ["BoardEntryStore.KeepAsync"] = (LogWork, Students.Self),
        ["BoardEntryStore.KeepPhotoAsync"] = (LogWork, Students.Self),
        ["BoardEntryStore.LogAsync"] = (LogWork, Students.Self),
        ["BoardEntryStore.PhotoAsync"] = (LogWork, Students.Self),
        ["BoardStore.AddAsync"] = (LogWork, Students.Self),
        ["BoardStore.FindAsync"] = (SeeClass, Students.Self),
        ["BoardStore.ListAsync"] = (SeeClass, Students.Self),
        ["BoardStore.RemoveAsync"] = (LogWork, Students.Self),
        ["BoardStore.SaveAsync"] = (LogWork, Students.Self),
        ["BoardYesStore.IsWantedAsync"] = (SeeCourse, Students.Class),
        ["BoardYesStore.OfAsync"] = (SeeClass, Students.Self),
        ["BoardYesStore.PhotoAsync"] = (SeeClass, Students.Self),
        ["BoardYesStore.SayAsync"] = (LogWork, Students.None),
        ["BoardYesStore.WantAsync"] = (ChangeSettings, Students.None),
        ["CourseFileStore.ExportCourseAsync"] = (CarryFiles, Students.None),
        ["CourseFileStore.ExportProjectAsync"] = (CarryFiles, Students.None),
        ["CourseFileStore.ImportAsync"] = (CarryFiles, Students.None),
        ["CourseStore.ArchiveAsync"] = (ChangeSettings, Students.None),
        ["CourseStore.FindAsync"] = (SeeCourse, Students.Class),
        ["CourseStore.FindForAsync"] = (LogWork, Students.None),
        ["CourseStore.ListAsync"] = (SeeCourse, Students.Class),
        ["CourseStore.RenameAsync"] = (ChangeSettings, Students.None),
        ["CourseStore.SaveRulesAsync"] = (ChangeSettings, Students.None),
        ["CourseStore.SaveTechniqueAsync"] = (ChangeSettings, Students.None),
        ["CourseStore.TechniqueNotesAsync"] = (SeeCourse, Students.Class),
        ["DoorStore.AdmitAsync"] = (RunTheDoor, Students.None),
        ["DoorStore.CloseAsync"] = (RunTheDoor, Students.None),
        ["DoorStore.DevicesAsync"] = (RunTheDoor, Students.None),
        ["DoorStore.EndAsync"] = (RunTheDoor, Students.None),
        ["DoorStore.FindAsync"] = (RunTheDoor, Students.None),
        ["DoorStore.NewStudentCodeAsync"] = (RunTheDoor, Students.None),
        ["DoorStore.OpenAsync"] = (RunTheDoor, Students.None),
        ["KeepingStore.FindAsync"] = (KeepAndErase, Students.None),
        ["KeepingStore.SaveAsync"] = (KeepAndErase, Students.None),
        ["KitStore.DeskAsync"] = (PrintForClass, Students.None),
        ["KitStore.FindAsync"] = (BuyMaterials, Students.None),
        ["KitStore.MarkAsync"] = (BuyMaterials, Students.None),
        ["KitStore.SaveDeskAsync"] = (PrintForClass, Students.None),
        ["KitStore.SaveSuppliesAsync"] = (BuyMaterials, Students.None),
        ["LessonPlanStore.BasisAsync"] = (PlanLessons, Students.None),
        ["LessonPlanStore.FindAsync"] = (SeeLessons, Students.Class),
        ["LessonPlanStore.NewestAsync"] = (SeeLessons, Students.Class),
        ["LessonPlanStore.SaveAsync"] = (PlanLessons, Students.None),
        ["LessonStore.AddAsync"] = (PlanLessons, Students.None),
        ["LessonStore.FindAsync"] = (SeeLessons, Students.Class),
        ["LessonStore.RemoveAsync"] = (PlanLessons, Students.None),
        ["LessonStore.SaveAsync"] = (PlanLessons, Students.None),
        ["LessonStore.SaveShopAsync"] = (PlanLessons, Students.None),
        ["OrderStore.AskAsync"] = (BuyMaterials, Students.None),
        ["OrderStore.FindAsync"] = (BuyMaterials, Students.None),
        ["OrderStore.KeepAgainAsync"] = (BuyMaterials, Students.None),
        ["OrderStore.NewestAsync"] = (BuyMaterials, Students.None),
        ["OrderStore.SaveArrivedAsync"] = (BuyMaterials, Students.None),
        ["OrderStore.SaveAsync"] = (BuyMaterials, Students.None),
        ["PaceStore.AreFirstCutsTimedAsync"] = (SeeClass, Students.None),
        ["PaceStore.FindAsync"] = (SeeClass, Students.None),
        ["PaceStore.PacedAsync"] = (SeeClass, Students.Self),
        ["PaceStore.TimeFirstCutsAsync"] = (ChangeSettings, Students.None),
        ["PeopleStore.FindAsync"] = (ChoosePeople, Students.None),
        ["PeopleStore.InviteHelperAsync"] = (ChoosePeople, Students.None),
        ["PeopleStore.InviteStandInAsync"] = (ChoosePeople, Students.None),
        ["PeopleStore.RemoveAsync"] = (ChoosePeople, Students.None),
        ["PeopleStore.TakeBackAsync"] = (ChoosePeople, Students.None),
        ["PlanStore.FindAsync"] = (SeeClass, Students.Self),
        ["PlanStore.NewestAsync"] = (SeeClass, Students.Self),
        ["PlanStore.RequestAsync"] = (SeeClass, Students.Self),
        ["PlanStore.SaveAsync"] = (LogWork, Students.Self),
        ["PlanStore.StatesAsync"] = (SeeClass, Students.Class),
        ["ProgressStore.CurrentAsync"] = (SeeClass, Students.Self),
        ["ProgressStore.FindAsync"] = (SeeClass, Students.Self),
        ["ProgressStore.RoomAsync"] = (WorkTheRoom, Students.None),
        ["ProgressStore.SayAsync"] = (WorkTheRoom, Students.Self),
        ["ProjectStore.AddPartsAsync"] = (ChangeProjects, Students.None),
        ["ProjectStore.CreateAsync"] = (ChangeProjects, Students.None),
        ["ProjectStore.FindAsync"] = (SeeCourse, Students.Class),
        ["ProjectStore.ListAsync"] = (SeeCourse, Students.Class),
        ["ProjectStore.MovePartAsync"] = (ChangeProjects, Students.None),
        ["ProjectStore.PutJointAsync"] = (ChangeProjects, Students.None),
        ["ProjectStore.PutSizeCheckAsync"] = (ChangeProjects, Students.None),
        ["ProjectStore.RemoveAsync"] = (ChangeProjects, Students.None),
        ["ProjectStore.RemoveJointAsync"] = (ChangeProjects, Students.None),
        ["ProjectStore.RemovePartAsync"] = (ChangeProjects, Students.None),
        ["ProjectStore.RemoveSizeCheckAsync"] = (ChangeProjects, Students.None),
        ["ProjectStore.SaveAsync"] = (ChangeProjects, Students.None),
        ["ProjectStore.SavePartAsync"] = (ChangeProjects, Students.None),
        ["RackStore.AddAsync"] = (BuyMaterials, Students.None),
        ["RackStore.ListAsync"] = (BuyMaterials, Students.None),
        ["RackStore.RemoveAsync"] = (BuyMaterials, Students.None),
        ["RackStore.ReturnAsync"] = (BuyMaterials, Students.None),
        ["RackStore.ReturnedAsync"] = (BuyMaterials, Students.None),
        ["RackStore.SaveAsync"] = (BuyMaterials, Students.None),
        ["RemakeStore.OfPlanAsync"] = (SeeClass, Students.Self),
        ["RemakeStore.SaveAsync"] = (LogWork, Students.Self),
        ["SellerStore.AddAsync"] = (BuyMaterials, Students.None),
        ["SellerStore.FindAsync"] = (BuyMaterials, Students.None),
        ["SellerStore.ListAsync"] = (BuyMaterials, Students.None),
        ["SellerStore.RemoveAsync"] = (BuyMaterials, Students.None),
        ["SellerStore.SaveAsync"] = (BuyMaterials, Students.None),
        ["SellerStore.SaveStockAsync"] = (BuyMaterials, Students.None),
        ["StartStore.FindAsync"] = (ChangeSettings, Students.None),
        ["StartStore.LeaveAsync"] = (ChangeSettings, Students.None),
        ["StartStore.TakeAsync"] = (ChangeSettings, Students.None),
        ["StudentExport.WriteAsync"] = (KeepAndErase, Students.Self),
        ["StudentStore.AddAsync"] = (ChangeClass, Students.None),
        ["StudentStore.FindAsync"] = (SeeClass, Students.Self),
        ["StudentStore.ListAsync"] = (SeeClass, Students.Class),
        ["StudentStore.RemoveAsync"] = (ChangeClass, Students.None),
        ["StudentStore.SaveAsync"] = (ChangeClass, Students.None),
        ["ToolStore.FindAsync"] = (BuyMaterials, Students.None),
        ["ToolStore.LogAsync"] = (BuyMaterials, Students.None),
        ["ToolStore.SaveAsync"] = (BuyMaterials, Students.None),
        ["ToolStore.SharpenedAsync"] = (BuyMaterials, Students.None),
    };

    private Dictionary<Type, Func<object?>> Samples(ParameterInfo parameter) =>
        new()
        {
            [typeof(string)] = () => parameter.Name == "currency" ? "USD" : "New",
            [typeof(byte[])] = () => new byte[] { 1, 2, 3 },
            [typeof(Deed)] = () => LogWork,
            [typeof(int)] = () => 1,
            [typeof(DateTime)] = () => null,
            [typeof(DateOnly)] = () => new DateOnly(2031, 1, 1),
            [typeof(CourseRules)] = () => CourseRules.DefaultsFor(UnitSystem.Inch),
            [typeof(Joint)] = () => parameter.Name == "was" ? null : Wood.Nailed(),
            [typeof(SizeCheck)] = () => parameter.Name == "was" ? null : Wood.EqualWidths(),
            [typeof(Part)] = () => Wood.Side("D"),
            [typeof(IReadOnlyList<Part>)] = () => new[] { Wood.Side("D") },
            [typeof(Board)] = () => Wood.Pine(),
            [typeof(StudentCard)] = () => new StudentCard("Dov", "", false),
            [typeof(CheckedPlan)] = () => staff.Shop.Plan,
            [typeof(Mishap)] = () => staff.Shop.Spoiled,
            [typeof(RemakeOption)] = () => staff.Shop.Remade,
            [typeof(Lesson)] = () => Shop.AnEvening,
            [typeof(StationCounts)] = () => StationCounts.Usual,
            [typeof(IReadOnlyList<SkillMinutes>)] = () => Array.Empty<SkillMinutes>(),
            [typeof(LessonRequest)] = () => staff.Shop.LessonPlan.Request,
            [typeof(LessonPlan)] = () => staff.Shop.LessonPlan.Plan,
            [typeof(Stream)] = () =>
                new MemoryStream(Encoding.UTF8.GetBytes(staff.Shop.ProjectFile)),
            [typeof(StepAction)] = () => new StepAction(Guid.NewGuid(), "1", StepActionKind.Note),
            [typeof(RackPiece)] = () => OrderSamples.Piece("Rack 2"),
            [typeof(IReadOnlyList<PricedStock>)] = () => Array.Empty<PricedStock>(),
            [typeof(IReadOnlyList<Arrived>)] = () => Array.Empty<Arrived>(),
            [typeof(OrderChoices)] = () => OrderSamples.Choices,
            [typeof(ClassOrder)] = () => staff.Order,
            [typeof(IReadOnlyList<Supply>)] = () => Array.Empty<Supply>(),
            [typeof(KitMark)] = () => new KitMark(staff.Shop.Student.Id, KitState.Ready),
            [typeof(RackReturn)] = () => Staff.AReturn(Guid.NewGuid()),
            [typeof(ToolsView)] = () => staff.Tools,
            [typeof(PrintDeskView)] = () => staff.Desk,
        };
}
