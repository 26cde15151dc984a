using ShopClass.Core.Measure;

namespace ShopClass.Web.Features.Courses;

/// <summary>What is asked for to begin a course.</summary>
public sealed record NewCourseEntry(string Name, UnitSystem Unit);
